import type { BrowserWorkbook } from "../hosts/browser";
import { words } from "./words";

interface Parts {
  readonly button: HTMLElement;
  readonly grid: HTMLElement;
  readonly sheet: HTMLElement;
}

const say = words.strip;

/** The grid is a drawing: the same sheet as a plain table, for screen readers, and for paper. */
export function showReadableSheet(workbook: BrowserWorkbook, { button, grid, sheet }: Parts): void {
  const show = (readable: boolean) => {
    // Cells and drawings come with every text escaped.
    if (readable) sheet.innerHTML = workbook.sheetAsHtml();
    sheet.hidden = !readable;
    grid.classList.toggle("covered", readable);
    grid.toggleAttribute("inert", readable);
    button.setAttribute("aria-expanded", String(readable));
    button.textContent = readable ? say.backToGrid : say.readAsTable;
  };
  button.addEventListener("click", () => {
    show(Boolean(sheet.hidden));
    if (!sheet.hidden) sheet.focus();
  });
  sheet.addEventListener("keydown", (event) => {
    if (event.key !== "Escape") return;
    show(false);
    button.focus();
  });
  addEventListener("beforeprint", () => {
    if (sheet.hidden) sheet.innerHTML = workbook.sheetAsHtml();
  });
}
