/** @jest-environment jsdom */
import type { PrintedCell, PrintedSheet } from "../../../src/hosts/browser/sheet-views/printed-sheet";
import { printPage } from "../../../src/taskpane/pane/overview/print-page";

const cell = (text: string, look?: PrintedCell["look"], isNumber = false): PrintedCell => ({ text, look, isNumber });
const blank = cell("");

const sheet: PrintedSheet = {
  rows: [
    [cell("Mill Road, next season", "title"), blank, blank],
    [cell("What it brings.", "answers"), blank, blank],
    [blank, blank, blank],
    [cell("The season", "section"), blank, blank],
    [cell("", "head"), cell("", "head"), cell("corn", "head")],
    [cell("Acres", "label"), cell(""), cell("80", "computed", true)],
    [cell("Left", "label"), cell(""), cell("-$12", "total", true)],
    [cell("What matters", "section"), blank, blank],
    [cell("▼ One.", "body"), blank, blank],
    [cell("● Two.", "body"), blank, blank],
    [cell("A plan,", "says"), blank, blank],
    [cell("not a promise.", "says"), blank, blank],
  ],
  charts: ['<svg role="img"><title>Income</title><desc>A bar for each crop.</desc><rect fill="#8a2f3d"/></svg>'],
};

const page = printPage(sheet, { preparedBy: "A. Adviser", date: "January 15, 2027", note: "" });
const texts = (selector: string) => [...page.querySelectorAll(selector)].map(({ textContent }) => textContent);

it("has one title, what was typed at its head, and nothing where nothing was typed", () => {
  expect(texts("h1")).toEqual(["Mill Road, next season"]);
  expect(texts("header p")).toEqual(["What it brings.", "Prepared by: A. Adviser", "Date: January 15, 2027"]);
});

it("makes a table of rows that belong together, with heads for readers, and leaves empty columns out", () => {
  expect(texts("h2")).toEqual(["The season", "What matters"]);
  expect(texts("thead th")).toEqual(["corn"]);
  expect(texts("tbody th[scope=row]")).toEqual(["Acres", "Left"]);
  expect(texts("tbody td")).toEqual(["80", "-$12"]);
  expect(page.querySelectorAll(".print-total")).toHaveLength(1);
});

it("puts sentences in a list and small print together at the foot", () => {
  expect(texts("li")).toEqual(["▼ One.", "● Two."]);
  expect(texts("footer p")[0]).toBe("A plan, not a promise.");
});

it("keeps the description of a chart", () => {
  expect(texts("figure desc")).toEqual(["A bar for each crop."]);
});
