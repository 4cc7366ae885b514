import { trialBlocks } from "../../../functions/trials/trial-blocks";
import { trialPairs } from "../../../functions/trials/trial-pairs";
import type { CellOut } from "../../../functions/frame/cell";
import { trialLimits } from "../../../core/trials/trial-limits";
import { words } from "../../words";
import { differences } from "../charts/differences";
import { element, type Child } from "../element";
import { numberText } from "../number-text";
import { broadTable, columnHead } from "../parts/broad-table";
import { button } from "../parts/button";
import { textField } from "../parts/field";
import { readNumber, refusalIn } from "../parts/read-number";
import { caution, section } from "../parts/text";
import { intoWorkbook } from "../pictures/view";
import type { PaneState } from "../state";
import { askInsert, fillIn, insertNow } from "./actions";
import { writeCost } from "./strip-actions";
import { saidAt, trialQuestion } from "./questions";
import { readCost, resultOf, type TrialResult } from "./result";
import type { KeptTrial, Layout } from "./state";

const say = words.trial;

/** The result: a sentence, the picture, the numbers; and what it needs to speak of money. */
export function resultView(layout: Layout, state: PaneState): HTMLElement {
  const { kept } = state.trial;
  const result = resultOf(kept);
  const fn = layout.treatments.length === 2 ? trialPairs : trialBlocks;
  return section(
    "trial-result-head",
    say.resultHead,
    element("div", { class: "trial-facts" }, facts(kept, layout)),
    element("div", { role: "status" }, element("p", { class: "verdict" }, sentenceOf(result))),
    result && "words" in result && [shown(result, layout), intoWorkbook("trial", words.pictures.names.trial, state)],
    result && "words" in result && (fn.cautions ?? []).map(caution),
  );
}

function sentenceOf(result: TrialResult | undefined): string {
  if (!result) return "";
  return "because" in result ? result.because : result.words;
}

function shown({ gains, pairs, rows }: Extract<TrialResult, { words: string }>, { design }: Layout): Child {
  const named = pairs.map(({ block, gain }) => ({ name: `${say.block[design]} ${block}`, gain }));
  return [differences({ gains, pairs: named }), numbers(rows)];
}

function numbers([head = [], ...rows]: readonly (readonly CellOut[])[]): HTMLElement {
  const text = (cell: CellOut) => (typeof cell === "number" ? numberText(cell) : String(cell));
  return broadTable({
    label: say.tableLabel,
    look: "strip-list",
    head: head.map((cell) => columnHead(text(cell))),
    rows: rows.map(([label = "", ...cells]) =>
      element(
        "tr",
        {},
        element("th", { scope: "row" }, text(label)),
        cells.map((cell) => element("td", { class: typeof cell === "number" ? "number" : "words" }, text(cell))),
      ),
    ),
  });
}

function facts({ form, costs }: KeptTrial, { treatments }: Layout): Child {
  return [
    textField({
      id: "trial-confidence",
      label: say.confidence,
      text: form.confidence,
      unit: "%",
      numeric: true,
      refusal: refusalIn(readNumber(say.confidence, form.confidence, trialLimits.confidence)),
      action: fillIn.name,
      value: "confidence",
    }),
    textField({
      id: "trial-price",
      label: say.price,
      hint: say.priceHint,
      text: form.price,
      unit: "$/bu",
      numeric: true,
      refusal: refusalIn(readNumber(say.price, form.price, trialLimits.price)),
      action: fillIn.name,
      value: "price",
    }),
    treatments.map((name, index) =>
      textField({
        id: `trial-cost-${index}`,
        label: say.cost(name),
        text: costs[index] ?? "",
        unit: "$/ac",
        numeric: true,
        refusal: refusalIn(readCost(costs[index] ?? "")),
        action: writeCost.name,
        value: String(index),
      }),
    ),
  ];
}

/** From the pane into empty cells of the sheet. */
export function insertView(state: PaneState): HTMLElement {
  const { asking, target = "" } = state.trial;
  return section(
    "trial-insert-head",
    say.insertHead,
    element("p", {}, say.insertSays),
    asking === "insert"
      ? trialQuestion(
          { asks: say.insertQuestion(target), yes: insertNow, no: say.insertNot, back: "trial-insert" },
          state,
        )
      : button(askInsert, state, { attributes: { id: "trial-insert" } }),
    saidAt("insert", state),
  );
}
