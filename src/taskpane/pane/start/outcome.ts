import { words } from "../../words";
import { element, type Child } from "../element";
import { button } from "../parts/button";
import { question } from "../parts/question";
import type { PaneState } from "../state";
import { askRemove, keepAdded, removeAdded } from "./actions";
import { fieldIds } from "./field-ids";
import type { Done, StartState } from "./state";

const say = words.start;

/** Under the button: how far the fill is, what it did, and the way back. */
export function outcome(state: PaneState): Child {
  const { start } = state;
  return [
    element("div", { role: "status" }, start.filling && progress(start.filling)),
    start.refused !== undefined &&
      element("p", { class: "trouble", id: fieldIds.refused, role: "alert", tabindex: -1 }, start.refused),
    start.done && done(start.done),
    start.receipts.length > 0 && start.filling === undefined && wayBack(state),
  ];
}

function progress({ share, doing }: NonNullable<StartState["filling"]>): HTMLElement {
  return element(
    "div",
    { class: "progress" },
    element("progress", { max: 1, value: share, "aria-label": say.filling }),
    element("p", {}, doing),
  );
}

function done({ says, sheets, leftOut }: Done): HTMLElement {
  const added = sheets.length > 0;
  return element(
    "section",
    { class: "done", id: fieldIds.done, tabindex: -1, "aria-labelledby": "start-done-head" },
    element(
      "h3",
      { id: "start-done-head" },
      element("span", { class: "sign", "aria-hidden": "true" }, "● "),
      added ? say.addedHead : say.removedHead,
    ),
    element("p", {}, says),
    added && element("p", {}, say.addedSheets(sheets)),
    leftOut.map((sentence) => element("p", {}, sentence)),
    added && element("p", {}, say.next),
  );
}

function wayBack(state: PaneState): Child {
  const last = state.start.receipts.at(-1);
  if (!last) return undefined;
  if (!state.start.asking) return button(askRemove, state, { attributes: { id: "start-ask" } });
  return question({
    id: fieldIds.question,
    asks: say.question(last.sheets, last.names.length),
    yes: button(removeAdded, state),
    no: button(keepAdded, state),
  });
}
