import { demoFarmName } from "../../../workbook/scenario/windmill-hollow";
import { words } from "../../words";
import { element } from "../element";
import type { PaneEnvironment } from "../environment";
import { openView } from "../header/actions";
import { button } from "../parts/button";
import { fileField, textField } from "../parts/field";
import { outcomeLine } from "../parts/outcome";
import { section, viewHeading } from "../parts/text";
import type { PaneState } from "../state";
import { openFile } from "../workbook-strip/actions";
import { emptyWorkbook, goToSheet, makeItMine, readOverview, showExample } from "./actions";
import type { FarmFigures } from "./farm-figures";
import { printIds, printSummary, typePrintDate, typePrintedBy, typePrintNote } from "./print-actions";
import { findingsOf, whole, type Finding } from "./findings";

const say = words.overview;

/** What the plan in the workbook says, and where to go from here. */
export function overviewView(state: PaneState, environment: PaneEnvironment): HTMLElement {
  const { figures, filling, says } = state.overview;
  return element(
    "div",
    { class: "view overview" },
    viewHeading("overview", say.title),
    element("p", { class: "lead" }, filling ? say.examplePending : leadOf(figures)),
    outcomeLine(says),
    figures ? findings(state, figures) : undefined,
    next(state, environment),
    figures?.summarySheet !== undefined && environment.printedSheet && printPart(state),
    element("p", { class: "hint" }, environment.kind === "excel" ? say.staysExcel : say.stays),
  );
}

function leadOf(figures: FarmFigures | null | undefined): string {
  if (!figures) return say.nothing;
  return figures.farm === demoFarmName ? say.example(figures.farm, whole(figures.acres)) : say.own(figures.farm);
}

function findings(state: PaneState, figures: FarmFigures): HTMLElement {
  return section(
    "overview-findings",
    say.findings,
    element(
      "ul",
      { class: "plain-list findings" },
      findingsOf(figures).map((finding) => findingLine(state, finding)),
    ),
    button(readOverview, state, { look: "quiet" }),
  );
}

const looks = { "▲": "is-well", "●": "is-open", "▼": "is-short" } as const;

function findingLine(state: PaneState, { key, sign, says, goTo }: Finding): HTMLElement {
  const [first = "", ...others] = says;
  return element(
    "li",
    { class: `finding ${looks[sign]}` },
    element("h4", {}, element("span", { class: "sign", "aria-hidden": "true" }, `${sign} `), say.heads[key]),
    element("p", { class: "finding-says" }, first),
    others.length > 0 && element("p", { class: "hint" }, others.join(" ")),
    goTo &&
      button(goToSheet, state, {
        look: "quiet",
        value: goTo.address,
        attributes: { "aria-label": say.goToLabel(goTo.sheet) },
      }),
  );
}

function next(state: PaneState, { workbooks, example }: PaneEnvironment): HTMLElement {
  const { figures, filling } = state.overview;
  const isOwn = figures ? figures.farm !== demoFarmName : false;
  return section(
    "overview-next",
    say.next,
    workbooks && !isOwn
      ? [button(makeItMine, state, { look: "main" }), element("p", { class: "hint" }, say.mineHint)]
      : button(openView, state, { look: "main", value: "start", says: say.start }),
    element(
      "div",
      { class: "side-by-side" },
      figures ? button(openView, state, { value: "what-if", says: say.whatIf }) : undefined,
      workbooks && button(emptyWorkbook, state),
      example && !figures && !filling && button(showExample, state),
    ),
    workbooks && fileField("overview-file", say.file, openFile.name),
  );
}

/** What stands at the head of the printed summary. */
function printPart(state: PaneState): HTMLElement {
  const { preparedBy, date, note, refusal } = state.overview.print;
  return section(
    "overview-print",
    say.print.head,
    element("p", { class: "hint" }, say.print.says),
    textField({ id: printIds.preparedBy, label: say.print.preparedBy, text: preparedBy, action: typePrintedBy.name }),
    textField({
      id: printIds.date,
      label: say.print.date,
      hint: say.print.dateHint,
      text: date,
      refusal,
      action: typePrintDate.name,
    }),
    textField({
      id: printIds.note,
      label: say.print.note,
      hint: say.print.noteHint,
      text: note,
      action: typePrintNote.name,
    }),
    button(printSummary, state),
  );
}
