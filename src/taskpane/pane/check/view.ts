import type { ErrorCells, Finding, FindingKind, UnknownName } from "../../../workbook/findings";
import { words } from "../../words";
import { element, type Child } from "../element";
import { numberText } from "../number-text";
import { button } from "../parts/button";
import { question } from "../parts/question";
import { section, sentence, viewHeading } from "../parts/text";
import type { PaneState } from "../state";
import { askToMend, checkIds, goToFinding, leaveIt, lookItOver, mend, showMore, undoMending } from "./actions";
import { cellsToMend } from "./mending";
import { placeInWords } from "./snapshot";

const say = words.check;

/** Findings of a kind that are shown before one asks for the others. */
const shownAtFirst = 8;

interface Listed {
  readonly finding: Finding;
  /** Place in the whole list, by which actions name it. */
  readonly index: number;
}

/** Check this workbook: what is missing or doubtful, why it matters, and the way to the cell. */
export function checkView(state: PaneState): HTMLElement {
  const { result, isLooking } = state.check;
  return element(
    "div",
    { class: "view" },
    viewHeading("check", say.title),
    element("p", { class: "lead" }, say.lead),
    button(lookItOver, state, { look: "main" }),
    element("div", { role: "status", class: "check-status" }, summary(state)),
    done(state),
    !isLooking && result && kindsIn(result.findings).map((kind) => group(kind, state)),
  );
}

function summary({ check: { result, isLooking, refused } }: PaneState): Child {
  if (isLooking) return element("p", {}, say.looking);
  return [
    refused !== undefined && element("p", { class: "refusal" }, refused),
    result?.findings.length === 0 && [
      element("p", { class: "check-calm" }, say.nothing),
      element("p", { class: "hint" }, say.nothingMeans),
    ],
    result && result.findings.length > 0 && element("p", {}, say.count(result.findings.length)),
    result && result.cutShort.length > 0 && element("p", { class: "hint" }, say.cutShort(result.cutShort)),
  ];
}

/** What was just done, with the way back. */
function done(state: PaneState): Child {
  const { said, before } = state.check;
  return element(
    "div",
    { class: "check-done", id: checkIds.said, role: "status", tabindex: -1 },
    said !== undefined && element("p", {}, said),
    before !== undefined && button(undoMending, state),
  );
}

function kindsIn(findings: readonly Finding[]): FindingKind[] {
  return [...new Set(findings.map(({ kind }) => kind))];
}

function group(kind: FindingKind, state: PaneState): HTMLElement {
  const { result, open } = state.check;
  const all = (result?.findings ?? []).map((finding, index): Listed => ({ finding, index }));
  const own = all.filter(({ finding }) => finding.kind === kind);
  const shown = open.includes(kind) ? own : own.slice(0, shownAtFirst);
  const { head, why } = say.kinds[kind];
  const hidden = own.length - shown.length;
  return section(
    `check-${kind}`,
    head,
    element("p", { class: "hint" }, why),
    element(
      "ul",
      { class: "check-list" },
      shown.map((listed) => item(listed, state)),
    ),
    hidden > 0 && button(showMore, state, { look: "quiet", value: kind, says: say.more(hidden, head) }),
  );
}

function item({ finding, index }: Listed, state: PaneState): HTMLElement {
  const place = placeInWords(finding.at);
  return element(
    "li",
    {},
    element("p", {}, element("span", { class: "sign", "aria-hidden": "true" }, "▲ "), sentenceOf(finding)),
    element(
      "div",
      { class: "check-buttons" },
      button(goToFinding, state, { look: "quiet", value: String(index), says: say.goTo(place) }),
      cellsToMend(finding).length > 0 && mendButton({ finding, index }, state),
    ),
    state.check.asking === index && mendQuestion({ finding, index }, state),
  );
}

function mendButton({ finding, index }: Listed, state: PaneState): HTMLElement {
  const [says, label] =
    finding.kind === "unknownName"
      ? [say.repair, say.repairLabel(finding.at.sheet)]
      : [say.putBack, say.putBackLabel(placeInWords(finding.at))];
  return button(askToMend, state, {
    look: "quiet",
    value: String(index),
    says,
    attributes: { id: checkIds.mend(index), "aria-label": label },
  });
}

function mendQuestion({ finding, index }: Listed, state: PaneState): HTMLElement {
  const [asks, yes] =
    finding.kind === "unknownName"
      ? [say.repairQuestion(finding.mendable.length, finding.at.sheet, respelled(finding)), say.repairYes]
      : [say.putBackQuestion(placeInWords(finding.at), typedValue(finding)), say.putBackYes];
  return question({
    id: checkIds.question,
    asks,
    yes: button(mend, state, { value: String(index), says: yes }),
    no: button(leaveIt, state),
  });
}

/** How many formulas get another spelling of our names. */
function respelled({ mendable }: UnknownName): number {
  return mendable.filter(({ was, formula }) => was !== formula).length;
}

function typedValue(finding: Finding): string {
  return finding.kind === "typedOver" ? numberText(finding.value) : "";
}

/** Behind the number of cells the sentence goes on; alone it begins. */
function begun({ message, ...finding }: ErrorCells): ErrorCells {
  return { ...finding, message: message && finding.cells.length === 1 ? sentence(message) : message };
}

function sentenceOf(finding: Finding): string {
  switch (finding.kind) {
    case "unknownName":
      return say.found.unknownName(finding);
    case "implausibleFigure":
      return say.found.implausibleFigure(finding, numberText);
    case "typedOver":
      return say.found.typedOver(finding, numberText);
    case "errorCells":
      return say.found.errorCells(begun(finding));
    case "foreignExtraction":
      return say.found.foreignExtraction(finding);
    case "missingBuffer":
      return say.found.missingBuffer(finding, numberText);
    case "oldSoilTest":
      return say.found.oldSoilTest(finding);
    case "doubleLine":
      return say.found.doubleLine(finding, numberText, placeInWords(finding.first));
    case "loneHerbicideGroup":
      return say.found.loneHerbicideGroup(finding);
    case "fewBlocks":
      return say.found.fewBlocks(finding);
  }
}
