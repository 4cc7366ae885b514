import type { Argument } from "../../../../functions/frame/arguments";
import type { WorksheetFunction } from "../../../../functions/frame/declaration";
import { words } from "../../../words";
import { element, type Child } from "../../element";
import { button } from "../../parts/button";
import { outcomeLine } from "../../parts/outcome";
import { formulaCode, section } from "../../parts/text";
import type { PaneState } from "../../state";
import { answerView } from "./answer-view";
import { argumentField, type ArgumentBox } from "./argument-field";
import { callOf, type Call } from "./call";
import { entriesOf } from "../change-find";
import { isNeeded } from "./entry";
import { emptyForm, fillExample, insertCall, toggleMore } from "./form-actions";

const say = words.find;

/** So few that may be left out are shown at once. */
const fewOptional = 3;

/** The function as a form: boxes, the answer as it comes, the formula, and the button that writes it. */
export function formView(fn: WorksheetFunction, state: PaneState): HTMLElement {
  const entries = entriesOf(state.find);
  const call = callOf(fn, entries);
  const boxes = Object.entries<Argument>(fn.args).map(([name, argument]) => ({
    name,
    argument,
    entry: entries[name],
    given: call.given.get(name),
  }));
  return section(
    "function-form",
    say.form,
    fn.returns.shape === "one" && element("p", { class: "hint" }, say.eachCell),
    element("div", { class: "side-by-side" }, button(fillExample, state), button(emptyForm, state)),
    element(
      "form",
      { class: "arguments", novalidate: true, "aria-labelledby": "function-form" },
      boxes.filter(({ argument }) => isNeeded(argument)).map((box) => argumentField(box, state)),
      optionalBoxes(fn, boxes, state),
      answerPart(fn, call),
      element("p", { class: "formula", id: "function-formula" }, formulaCode(call.formula)),
      button(insertCall, state, { look: "main", type: "submit", attributes: { id: "function-insert" } }),
      outcomeLine(state.find.outcome),
    ),
  );
}

/** Those that may be left out: a few stand with the others, more of them behind a button. */
function optionalBoxes(fn: WorksheetFunction, boxes: readonly ArgumentBox[], state: PaneState): Child {
  const optional = boxes.filter(({ argument }) => !isNeeded(argument));
  if (optional.length <= fewOptional) return optional.map((box) => argumentField(box, state));
  const open = state.find.moreOpen.includes(fn.name);
  const shown = open ? optional : optional.filter(({ given }) => given?.given);
  return [
    shown.map((box) => argumentField(box, state)),
    button(toggleMore, state, {
      value: fn.name,
      says: open ? say.fewerArguments : say.moreArguments(optional.length - shown.length),
      attributes: { "aria-expanded": String(open) },
    }),
  ];
}

function answerPart(fn: WorksheetFunction, call: Call): HTMLElement {
  return element(
    "div",
    { class: "answer-so-far" },
    element("p", { class: "field-name" }, say.answer),
    element("div", { role: "status", id: "function-answer" }, answerView(fn, call)),
  );
}
