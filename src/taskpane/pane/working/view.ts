import { words } from "../../words";
import { element, type Child } from "../element";
import { numberText, withUnit } from "../number-text";
import { button } from "../parts/button";
import { citation } from "../parts/citation";
import { outcomeLine } from "../parts/outcome";
import { caution, formulaCode, section, sentence, viewHeading } from "../parts/text";
import { showFunction } from "../find/actions";
import type { PaneState } from "../state";
import { copyId, copyWorking, showWorking } from "./actions";
import type { ArgumentLine, CallReport } from "./call-report";
import { isReadable, type CellReport } from "./report";

const say = words.working;

/** Show the working: what the selected cell says, what went in, and the steps and sources behind it. */
export function workingView(state: PaneState): HTMLElement {
  const { report, refused } = state.working;
  return element(
    "div",
    { class: "view" },
    viewHeading("working", say.title),
    element("p", { class: "lead" }, say.lead),
    element("div", { role: "status" }, answer(report, refused)),
    report?.calls.map((call, index) => callView(call, index, report.message, state)),
    report && report.calls.length > 0 && copyPart(state),
    button(showWorking, state),
  );
}

function answer(report: CellReport | undefined, refused: string | undefined): Child {
  if (refused !== undefined) return element("p", { class: "refusal" }, refused);
  if (!report) return element("p", {}, say.nothingRead);
  const [first, ...more] = report.calls;
  const unit = first?.isWhatShows && more.length === 0 ? first.fn.returns.unit : "";
  const shown = report.shows === null ? "" : withUnit(report.shows, unit);
  const shownFirst = report.calls.length > 0 || shown !== "";
  return [
    shownFirst && element("p", { class: "cell-line" }, say.shows(report.address)),
    shownFirst &&
      element("p", { class: report.isAnError ? "big-number is-waiting" : "big-number" }, shown || say.blank),
    report.message ? element("p", { class: "because" }, sentence(report.message)) : undefined,
    report.because ? element("p", {}, report.because) : undefined,
    report.formulaAt !== undefined && element("p", { class: "hint" }, say.partOf(report.formulaAt)),
    report.calls.length > 0 && isReadable(report) && element("p", { class: "formula" }, formulaCode(report.formula)),
    report.leftAside && report.leftAside.length > 0
      ? element("p", { class: "hint" }, say.leftAside([...new Set(report.leftAside)]))
      : undefined,
  ];
}

/** The working for a letter: on the clipboard, or in a box to copy from where the clipboard is closed to the pane. */
function copyPart(state: PaneState): Child {
  const { copied } = state.working;
  return element(
    "section",
    { class: "copy", "aria-label": say.copyText },
    button(copyWorking, state),
    outcomeLine(copied && (copied.byHand ? say.copyByHand : say.copied)),
    copied?.byHand &&
      element("textarea", { id: copyId, readonly: true, rows: 10, "aria-label": say.copyText }, copied.text),
  );
}

function callView(
  { fn, went, outcome, answer: own, isWhatShows, isWhole, remarks }: CallReport,
  index: number,
  said: string | undefined,
  state: PaneState,
): HTMLElement {
  const id = `call-${index}`;
  return element(
    "section",
    { class: "call", "aria-labelledby": id },
    element("h3", { id }, fn.name),
    element("p", {}, fn.summary),
    own !== undefined &&
      !isWhatShows &&
      element("p", { class: "hint" }, (isWhole ? say.nowGives : say.ownAnswer)(withUnit(own, fn.returns.unit))),
    remarks.map((remark) => element("p", { class: "hint" }, remark)),
    went.length > 0 && section(`${id}-went`, say.went, wentIn(went)),
    "because" in outcome ? whyNot(outcome.because, said) : steps(id, outcome),
    button(showFunction, state, { look: "quiet", value: fn.name, says: say.more(fn.name) }),
  );
}

/** Why there are no steps; a sentence that already stands at the top is not said twice. */
function whyNot(because: string, said: string | undefined): Child {
  return because !== said && element("p", { class: "because" }, sentence(because));
}

function wentIn(lines: readonly ArgumentLine[]): HTMLElement {
  return figures(
    lines.map(({ name, value, unit, from }) => ({
      label: name,
      value,
      unit: typeof value === "number" ? unit : "",
      from,
    })),
  );
}

function steps(id: string, { working, cites, cautions }: Extract<CallReport["outcome"], { working: unknown }>): Child {
  return [
    section(`${id}-steps`, say.steps, figures(working)),
    cautions.map(caution),
    cites.length > 0 && section(`${id}-cites`, say.cites, element("ul", { class: "citations" }, cites.map(citation))),
  ];
}

interface Figure {
  readonly label: string;
  readonly value: string | number | boolean;
  readonly unit: string;
  readonly from?: string | undefined;
}

/** A column of figures as in a notebook: what it is, the number, its unit. */
function figures(lines: readonly Figure[]): HTMLElement {
  return element("table", { class: "figures" }, element("tbody", {}, lines.map(figureRow)));
}

function figureRow({ label, value, unit, from }: Figure): HTMLElement {
  const head = element("th", { scope: "row" }, label, from ? element("span", { class: "from" }, from) : undefined);
  if (typeof value !== "number")
    return element("tr", {}, head, element("td", { class: "words", colspan: 2 }, String(value)));
  return element(
    "tr",
    {},
    head,
    element("td", { class: "number" }, numberText(value)),
    element("td", { class: "unit" }, unit),
  );
}
