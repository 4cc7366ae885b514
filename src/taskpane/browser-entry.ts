import "./pane/pane.css";
import "./browser.css";
import { allFunctions } from "../functions";
import { BrowserWorkbook } from "../hosts/browser";
import { keepOffline } from "../hosts/browser/offline/keep-offline";
import { clientFiles, download } from "./browser-files";
import { mountPane } from "./pane";
import { showReadableSheet } from "./readable-sheet";
import { words } from "./words";

const darkness = matchMedia("(prefers-color-scheme: dark)");

async function start(): Promise<void> {
  const workbook = await BrowserWorkbook.open({
    container: "grid",
    dark: darkness.matches,
    functions: allFunctions,
    notice: showNotice,
  });
  darkness.addEventListener("change", () => workbook.setDark(darkness.matches));
  // A link or bookmark that ends in #empty leaves the example out.
  const isFirstVisit = workbook.isFirstVisit && location.hash !== "#empty";
  const narrow = matchMedia("(max-width: 900px)");
  mountPane(part("pane"), workbook.host, {
    kind: "browser",
    ...(isFirstVisit && { firstVisit: workbook.drawn() }),
    files: clientFiles,
    printedSheet: (name) => workbook.printedSheet(name),
    example: {
      isUntouched: () => workbook.workbooks.isUntouched(),
      open: (plan) => workbook.workbooks.openExample(plan),
    },
    viewOpened: (view) => arrange(view === "overview" && narrow.matches),
    gridWanted() {
      if (narrow.matches) part("grid").scrollIntoView();
      workbook.focus();
    },
    saveFile: () => saveFile(workbook),
    workbooks: workbook.workbooks,
    storage: () => localStorage,
  });
  arrange(isFirstVisit && narrow.matches);
  showReadableSheet(workbook, { button: part("read-as-table"), grid: part("grid"), sheet: part("sheet-table") });
  moveWithF6(workbook);
  void keepOffline();
  // For the browser tests, which cannot read a drawn grid.
  Object.assign(window, { loamsheet: workbook.host });
}

/** On a narrow page the overview stands before the workbook, for the eye and for the keyboard alike. */
function arrange(paneFirst: boolean): void {
  const [pane, page] = [part("pane"), part("page")];
  if ((page.firstElementChild === pane) === paneFirst) return;
  const focused = document.activeElement;
  if (paneFirst) page.prepend(pane);
  else page.append(pane);
  if (focused instanceof HTMLElement && pane.contains(focused)) focused.focus();
}

async function saveFile(workbook: BrowserWorkbook): Promise<string> {
  const file = await workbook.file();
  download(file);
  return file.name;
}

/** Tab moves from cell to cell in the grid: F6 is the way out of it and back. */
function moveWithF6(workbook: BrowserWorkbook): void {
  document.addEventListener(
    "keydown",
    (event) => {
      if (event.key !== "F6") return;
      event.preventDefault();
      event.stopPropagation();
      if (part("pane").contains(document.activeElement)) workbook.focus();
      else part("pane").focus();
    },
    { capture: true },
  );
}

function showNotice(sentence: string, needsAttention: boolean): void {
  const status = part("page-status");
  if (status.textContent !== sentence) status.textContent = sentence;
  status.classList.toggle("attention", needsAttention);
}

function part(id: string): HTMLElement {
  const found = document.getElementById(id);
  if (!found) throw new Error(`The page has no part named ${id}.`);
  return found;
}

start().catch((thrown: unknown) => {
  const detail = thrown instanceof Error ? thrown.message : String(thrown);
  showNotice(words.strip.notOpened(detail), true);
});
