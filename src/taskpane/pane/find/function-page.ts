import { families, type WorksheetFunction } from "../../../functions/frame/declaration";
import { exampleFormula, namespace, signature } from "../../../functions/frame/formula-text";
import { words } from "../../words";
import { openView } from "../header/actions";
import { element, type Child } from "../element";
import { withUnit } from "../number-text";
import { button } from "../parts/button";
import { publication } from "../parts/citation";
import { caution, formulaCode, section, viewHeading } from "../parts/text";
import type { PaneState } from "../state";
import { backToList } from "./actions";
import { answerTable } from "./form/answer-view";
import { formView } from "./form/form-view";

const say = words.find;

/** Functions that compare many published sets name dozens of sources; Sources lists them all. */
const mostSources = 6;

/** The page of one function, made from its declaration alone. */
export function functionPage(fn: WorksheetFunction, state: PaneState): HTMLElement {
  return element(
    "div",
    { class: "view" },
    button(backToList, state, { look: "quiet" }),
    viewHeading("function", fn.name),
    element("p", { class: "family-line" }, families[fn.family]),
    element("p", { class: "lead" }, fn.summary),
    element("p", {}, say.returns(fn.returns.says, fn.returns.unit, fn.returns.shape === "table")),
    (fn.cautions ?? []).map(caution),
    formView(fn, state),
    exampleOf(fn),
    sourcesOf(fn, state),
  );
}

function exampleOf(fn: WorksheetFunction): HTMLElement {
  return section(
    "function-example",
    say.example,
    element("p", { class: "hint" }, say.written),
    element("p", { class: "formula" }, formulaCode(`=${namespace}.${signature(fn)}`)),
    element("p", { class: "formula" }, formulaCode(exampleFormula(fn))),
    answerOf(fn),
    element("p", { class: "hint" }, fn.example.because),
  );
}

function answerOf(fn: WorksheetFunction): Child {
  const { gives } = fn.example;
  if (typeof gives === "string" || typeof gives === "number") {
    return element("p", {}, say.gives, " ", element("strong", {}, withUnit(gives, fn.returns.unit)));
  }
  return [element("p", {}, say.givesTable), answerTable(gives, say.answerTable)];
}

function sourcesOf(fn: WorksheetFunction, state: PaneState): HTMLElement {
  const shown = fn.sources.slice(0, mostSources);
  const more = fn.sources.length - shown.length;
  return section(
    "function-sources",
    say.sources,
    shown.length === 0
      ? element("p", {}, say.arithmetic)
      : element(
          "ul",
          { class: "citations" },
          shown.map((key) => element("li", {}, publication(key))),
        ),
    more > 0 && button(openView, state, { look: "quiet", value: "sources", says: say.moreSources(more) }),
  );
}
