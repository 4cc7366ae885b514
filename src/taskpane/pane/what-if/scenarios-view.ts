import { words } from "../../words";
import { element, type Child } from "../element";
import { amountText, moneyText } from "../number-text";
import { button } from "../parts/button";
import { broadTable, columnHead } from "../parts/broad-table";
import { textField } from "../parts/field";
import { section } from "../parts/text";
import type { PaneState } from "../state";
import { keepScenario, nameScenario, removeScenario, useScenario } from "./actions";
import { caseFrom } from "./case";
import { profitOf } from "./profit";
import { quantities, quantityFacts } from "./quantities";
import { saidAt } from "./said";
import type { Scenario } from "./state";

const say = words.whatIf;

/** What was kept, a column each. */
export function scenariosView(state: PaneState): HTMLElement {
  const { kept, scenarioName } = state.whatIf;
  return section(
    "what-if-scenarios",
    say.scenariosHead,
    kept.scenarios.length === 0 ? element("p", { class: "hint" }, say.noScenarios) : table(kept.scenarios, state),
    textField({ id: "what-if-name", label: say.scenarioName, text: scenarioName, action: nameScenario.name }),
    button(keepScenario, state),
    saidAt("keep", state.whatIf),
  );
}

function table(scenarios: readonly Scenario[], state: PaneState): HTMLElement {
  const row = (label: Child, cell: (scenario: Scenario, index: number) => Child) =>
    element(
      "tr",
      {},
      element("th", { scope: "row" }, label),
      scenarios.map((scenario, index) => element("td", {}, cell(scenario, index))),
    );
  return broadTable({
    label: say.scenarioTable,
    look: "side-by-side-table",
    head: [say.figure, ...scenarios.map(({ name }) => name)].map(columnHead),
    rows: [
      ...quantities.map((quantity) =>
        row(say.names[quantity], ({ values }) => {
          const value = values[quantity];
          return value === undefined ? "–" : amountText(value, quantityFacts[quantity].limit.unit);
        }),
      ),
      row(say.profit, (scenario) => profitText(scenario, "acre")),
      row(say.profitAll, (scenario) => profitText(scenario, "all")),
      row(element("span", { class: "unseen" }, say.use), ({ name }, index) => orders(name, String(index), state)),
    ],
  });
}

/** Try it again, or let it go. */
function orders(name: string, value: string, state: PaneState): Child {
  const quiet = (label: string) => ({ look: "quiet", value, attributes: { "aria-label": label } }) as const;
  return [
    button(useScenario, state, quiet(say.useOf(name))),
    " ",
    button(removeScenario, state, quiet(say.removeOf(name))),
  ];
}

function profitText({ values }: Scenario, of: "acre" | "all"): Child {
  const one = caseFrom(values);
  if (!one || (of === "all" && one.acres === null)) return "–";
  const profit = profitOf(one);
  const sign = profit >= 0 ? "▲ " : "▼ ";
  const amount = of === "acre" ? moneyText(profit, "/ac") : moneyText(profit * (one.acres ?? 0));
  return element("strong", {}, sign + amount);
}
