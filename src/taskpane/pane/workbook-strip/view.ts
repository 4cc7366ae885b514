import { words } from "../../words";
import { element, type Child } from "../element";
import type { PaneEnvironment } from "../environment";
import { button } from "../parts/button";
import type { PaneState } from "../state";
import { askStartAnew, keepWorkbook, saveFile, startAnew } from "./actions";

const say = words.strip;

/** What can be done with the whole workbook where the page, not the spreadsheet, keeps it. */
export function workbookStrip(state: PaneState, environment: PaneEnvironment): Child {
  if (!environment.saveFile && !environment.startAnew) return undefined;
  return element(
    "section",
    { class: "strip", "aria-label": say.label },
    element(
      "div",
      { class: "strip-line" },
      environment.saveFile && button(saveFile, state),
      environment.startAnew && button(askStartAnew, state, { look: "quiet", attributes: { id: "strip-ask" } }),
    ),
    state.strip.asking ? question(state, environment) : undefined,
    element("p", { role: "status", class: "outcome" }, state.strip.says ?? ""),
  );
}

function question(state: PaneState, environment: PaneEnvironment): HTMLElement {
  return element(
    "div",
    { class: "question", "data-escape": keepWorkbook.name },
    element("p", { id: "strip-question", tabindex: -1 }, say.question(environment.saveFile !== undefined)),
    element("div", { class: "side-by-side" }, button(startAnew, state), button(keepWorkbook, state)),
  );
}
