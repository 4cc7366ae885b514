import { accepted } from "../../../functions/frame/accepted";
import type { Argument } from "../../../functions/frame/arguments";
import { families, type WorksheetFunction } from "../../../functions/frame/declaration";
import { exampleFormula, namespace, signature } from "../../../functions/frame/formula-text";
import { words } from "../../words";
import { element, type Child } from "../element";
import { withUnit } from "../number-text";
import { button } from "../parts/button";
import { openView } from "../header/actions";
import { publication } from "../parts/citation";
import { caution, section, viewHeading } from "../parts/text";
import type { PaneState } from "../state";
import { backToList, insertExample } from "./actions";

const say = words.find;

/** Longer word lists are cut in the pane and told in full by the message of a word that does not fit. */
const mostWords = 16;

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
    element("p", { class: "formula" }, code(`=${namespace}.${signature(fn)}`)),
    element("p", {}, say.returns(fn.returns.says, fn.returns.unit, fn.returns.shape === "table")),
    (fn.cautions ?? []).map(caution),
    exampleOf(fn, state),
    argumentsOf(fn),
    sourcesOf(fn, state),
  );
}

function exampleOf(fn: WorksheetFunction, state: PaneState): HTMLElement {
  const { outcome } = state.find;
  return section(
    "function-example",
    say.example,
    element("p", { class: "formula" }, code(exampleFormula(fn))),
    answerOf(fn),
    element("p", { class: "hint" }, fn.example.because),
    button(insertExample, state, { look: "main", value: fn.name }),
    element(
      "p",
      { role: "status", class: outcome && !outcome.done ? "outcome refusal" : "outcome" },
      outcome?.says ?? "",
    ),
  );
}

function answerOf(fn: WorksheetFunction): Child {
  const { gives } = fn.example;
  if (typeof gives === "string" || typeof gives === "number") {
    return element("p", {}, say.gives, " ", element("strong", {}, withUnit(gives, fn.returns.unit)));
  }
  const rows = gives.map((row) =>
    element(
      "tr",
      {},
      row.map((cell) => element("td", {}, withUnit(cell, ""))),
    ),
  );
  return [
    element("p", {}, say.givesTable),
    element("div", { class: "scroll", tabindex: 0, role: "group", "aria-label": say.answerTable }, tableOf(rows)),
  ];
}

function tableOf(rows: readonly HTMLElement[]): HTMLElement {
  return element("table", { class: "answer" }, element("tbody", {}, rows));
}

function argumentsOf(fn: WorksheetFunction): HTMLElement {
  return section(
    "function-arguments",
    say.arguments,
    fn.returns.shape === "one" && element("p", { class: "hint" }, say.eachCell),
    element("dl", { class: "arguments" }, Object.entries<Argument>(fn.args).map(argumentEntry)),
  );
}

function argumentEntry([name, argument]: [string, Argument]): Child {
  const optional = argument.shape === "optional";
  return [
    element(
      "dt",
      {},
      element("code", {}, name),
      optional ? element("span", { class: "hint" }, say.optional) : undefined,
    ),
    element("dd", {}, sentence(argument.says)),
    element("dd", { class: "hint" }, acceptsLine(argument)),
    optional ? element("dd", { class: "hint" }, say.whenBlank(argument.whenBlankSays)) : undefined,
  ];
}

function acceptsLine(argument: Argument): string {
  const list = argument.shape === "many" || (argument.shape === "optional" && argument.inner.shape === "many");
  const known = argument.vocabulary ? Object.values(argument.vocabulary.words) : [];
  const labels = known.map(({ label }) => label);
  const text =
    labels.length > mostWords ? say.andMore(labels.slice(0, mostWords), labels.length - mostWords) : accepted(argument);
  return list ? say.acceptsList(text, argument.atLeast ?? 1) : say.accepts(text);
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

/** A call as code; a long one breaks after its brackets and commas. */
function code(call: string): HTMLElement {
  const parts = call.split(/(?<=[(,{;])/);
  return element(
    "code",
    {},
    parts.flatMap((part, index) => (index === 0 ? [part] : [element("wbr"), part])),
  );
}

function sentence(text: string): string {
  const upper = text.charAt(0).toUpperCase() + text.slice(1);
  return /[.?]$/.test(upper) ? upper : `${upper}.`;
}
