import { demoFarmName } from "../../../workbook/scenario/windmill-hollow";
import { words } from "../../words";
import { element, type Child } from "../element";
import type { PaneEnvironment } from "../environment";
import { openView } from "../header/actions";
import { button } from "../parts/button";
import { section, viewHeading } from "../parts/text";
import type { PaneState } from "../state";
import { openFile } from "../workbook-strip/actions";
import { emptyWorkbook, goToSheet, makeItMine, readOverview, showExample } from "./actions";
import type { FarmFigures } from "./farm-figures";
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
    element("p", { role: "status", class: "outcome" }, says ?? ""),
    figures ? findings(state, figures) : undefined,
    next(state, environment),
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
  const whatIf = figures?.whatIfSheet;
  return section(
    "overview-next",
    say.next,
    workbooks && !isOwn
      ? [button(makeItMine, state, { look: "main" }), element("p", { class: "hint" }, say.mineHint)]
      : button(openView, state, { look: "main", value: "start", says: say.start }),
    element(
      "div",
      { class: "side-by-side" },
      whatIf !== undefined && button(goToSheet, state, { value: `'${whatIf}'!A1`, says: say.whatIf }),
      workbooks && button(emptyWorkbook, state),
      example && !figures && !filling && button(showExample, state),
    ),
    workbooks && fileChoice(),
    button(openView, state, { look: "quiet", value: "clients", says: say.clients }),
  );
}

function fileChoice(): Child {
  return element(
    "div",
    { class: "field" },
    element("label", { for: "overview-file" }, say.file),
    element("input", { id: "overview-file", type: "file", accept: ".xlsx", "data-action": openFile.name }),
  );
}
