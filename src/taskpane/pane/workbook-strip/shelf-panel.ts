import { words } from "../../words";
import { element } from "../element";
import type { KeptWorkbook } from "../environment";
import { button } from "../parts/button";
import { fileField, textField } from "../parts/field";
import { question } from "../parts/question";
import type { PaneState } from "../state";
import {
  addWorkbook,
  askRemove,
  closeShelf,
  keepKept,
  openFile,
  openKept,
  removeKept,
  renameOpen,
  typeTitle,
} from "./actions";

const say = words.strip;

/** The workbooks kept in this browser: open another, begin one, name the open one, remove one. */
export function shelfPanel(state: PaneState, shelf: readonly KeptWorkbook[]): HTMLElement {
  return element(
    "div",
    { id: "shelf", class: "shelf", "data-escape": closeShelf.name },
    element("h2", { id: "shelf-heading", tabindex: -1 }, say.shelfHeading),
    element("p", { class: "hint" }, shelf.length > 0 ? say.shelfSays : say.shelfEmpty),
    element(
      "ul",
      { class: "shelf-list" },
      shelf.map((entry) => shelfLine(state, entry)),
    ),
    shelf.some(({ isOpen }) => isOpen) && renaming(state),
    fileField("shelf-file", say.openFile, openFile.name),
    element("div", { class: "side-by-side" }, button(addWorkbook, state), button(closeShelf, state, { look: "quiet" })),
  );
}

function shelfLine(state: PaneState, { id, title, changed, isOpen }: KeptWorkbook): HTMLElement {
  if (state.strip.removing === id) return element("li", {}, removal(state, title));
  const when = changed > 0 ? say.changed(new Date(changed)) : say.changedSometime;
  return element(
    "li",
    {},
    element("span", { class: "shelf-title" }, title),
    element("span", { class: "hint" }, isOpen ? `${say.isOpen}, ${when}` : when),
    !isOpen &&
      element(
        "span",
        { class: "shelf-buttons" },
        button(openKept, state, { value: id, attributes: { "aria-label": say.openLabel(title) } }),
        button(askRemove, state, { look: "quiet", value: id, attributes: { "aria-label": say.removeLabel(title) } }),
      ),
  );
}

function removal(state: PaneState, title: string): HTMLElement {
  return question({
    id: "shelf-question",
    asks: say.removeQuestion(title),
    yes: button(removeKept, state),
    no: button(keepKept, state),
  });
}

function renaming(state: PaneState): HTMLElement {
  return element(
    "form",
    { class: "shelf-rename" },
    textField({ id: "shelf-title", label: say.rename, text: state.strip.title, action: typeTitle.name }),
    button(renameOpen, state, { type: "submit" }),
  );
}
