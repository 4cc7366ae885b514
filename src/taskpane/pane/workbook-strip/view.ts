import { words } from "../../words";
import { element, type Child } from "../element";
import type { PaneEnvironment } from "../environment";
import { button } from "../parts/button";
import { outcomeLine } from "../parts/outcome";
import type { PaneState } from "../state";
import { saveFile, toggleShelf } from "./actions";
import { shelfPanel } from "./shelf-panel";

const say = words.strip;

/** What can be done with the whole workbook where the page, not the spreadsheet, keeps it. */
export function workbookStrip(state: PaneState, environment: PaneEnvironment): Child {
  if (!environment.saveFile && !environment.workbooks) return undefined;
  const { shelf, says } = state.strip;
  return element(
    "section",
    { class: "strip", "aria-label": say.label },
    element(
      "div",
      { class: "strip-line" },
      environment.saveFile && button(saveFile, state),
      environment.workbooks &&
        button(toggleShelf, state, {
          look: "quiet",
          attributes: { id: "strip-shelf", "aria-expanded": shelf ? "true" : "false", "aria-controls": "shelf" },
        }),
    ),
    shelf && shelfPanel(state, shelf),
    outcomeLine(says),
  );
}
