import type { PrintedCell, PrintedSheet } from "../../../hosts/browser/sheet-views/printed-sheet";
import { words } from "../../words";
import { element, type Child } from "../element";

const say = words.overview.print;

interface PrintHead {
  readonly preparedBy: string;
  readonly date: string;
  readonly note: string;
}

/** What the rows of a sheet are on paper. */
type Part =
  | { readonly kind: "title" | "answers" | "heading" | "sentence" | "small"; readonly text: string }
  | {
      readonly kind: "row";
      readonly isHead: boolean;
      readonly isTotal: boolean;
      readonly cells: readonly PrintedCell[];
    };

/** The summary sheet as a page of words, tables and drawings, with a head of its own. */
export function printPage({ rows, charts }: PrintedSheet, { preparedBy, date, note }: PrintHead): HTMLElement {
  const parts = rows.flatMap(partOf);
  const title = parts.find(({ kind }) => kind === "title");
  const line = (label: string, text: string) =>
    text !== "" && element("p", {}, element("strong", {}, `${label}: `), text);
  const small = textsOf(parts, "small");
  return element(
    "article",
    { class: "print-summary" },
    element(
      "header",
      {},
      element("h1", {}, title && "text" in title ? title.text : ""),
      textsOf(parts, "answers").map((text) => element("p", {}, text)),
      line(say.preparedBy, preparedBy),
      line(say.date, date),
      line(say.note, note),
    ),
    bodyOf(parts),
    element("div", { class: "print-charts" }, charts.map(figure)),
    element("footer", {}, small.length > 0 && element("p", {}, small.join(" ")), element("p", {}, say.made)),
  );
}

function partOf(cells: readonly PrintedCell[]): Part[] {
  const [first] = cells;
  const text = first?.text ?? "";
  switch (first?.look) {
    case "title":
    case "answers":
      return [{ kind: first.look, text }];
    case "section":
      return text === "" ? [] : [{ kind: "heading", text }];
    case "says":
    case "caution":
      return text === "" ? [] : [{ kind: "small", text }];
    case "head":
      return [{ kind: "row", isHead: true, isTotal: false, cells }];
    case "body":
    case "wrap":
    case undefined:
      return text === "" ? [] : [{ kind: "sentence", text }];
    default:
      return [{ kind: "row", isHead: false, isTotal: cells.some(({ look }) => look === "total"), cells }];
  }
}

/** Headings, sentences and tables in their order; rows that follow each other are one table. */
function bodyOf(parts: readonly Part[]): Child {
  const made: HTMLElement[] = [];
  let list: HTMLElement | undefined;
  let table: (Columns & { readonly body: HTMLElement }) | undefined;
  parts.forEach((part, index) => {
    if (part.kind !== "sentence") list = undefined;
    if (part.kind !== "row") table = undefined;
    if (part.kind === "heading") made.push(element("h2", {}, part.text));
    if (part.kind === "sentence") {
      if (!list) made.push((list = element("ul", {})));
      list.append(element("li", {}, part.text));
    }
    if (part.kind === "row") {
      if (!table) {
        table = { body: element("tbody", {}), ...columnsOf(parts.slice(index)) };
        made.push(element("table", {}, part.isHead && element("thead", {}, rowOf(part, table)), table.body));
      }
      if (!part.isHead) table.body.append(rowOf(part, table));
    }
  });
  return made;
}

/** Columns of a table that hold anything, and those among them that hold numbers. */
interface Columns {
  readonly used: readonly number[];
  readonly numbers: ReadonlySet<number>;
}

function columnsOf(parts: readonly Part[]): Columns {
  const end = parts.findIndex(({ kind }) => kind !== "row");
  const rows = parts.slice(0, end < 0 ? undefined : end).flatMap((part) => (part.kind === "row" ? [part.cells] : []));
  const where = (holds: (cell: PrintedCell) => boolean) =>
    rows.flatMap((cells) => cells.flatMap((cell, column) => (holds(cell) ? [column] : [])));
  const used = new Set([0, ...where(({ text }) => text !== "")]);
  return { used: [...used].sort((a, b) => a - b), numbers: new Set(where(({ isNumber }) => isNumber)) };
}

function rowOf(part: Extract<Part, { kind: "row" }>, { used, numbers }: Columns): HTMLElement {
  return element(
    "tr",
    { class: part.isTotal ? "print-total" : undefined },
    used.map((column) => {
      const text = part.cells[column]?.text ?? "";
      const align = { class: numbers.has(column) ? "number" : undefined };
      if (part.isHead) return text === "" ? element("td", {}) : element("th", { scope: "col", ...align }, text);
      return column === 0 ? element("th", { scope: "row" }, text) : element("td", align, text);
    }),
  );
}

function figure(svg: string): HTMLElement {
  const made = element("figure", {});
  // Drawn by us, with every text escaped.
  made.innerHTML = svg;
  return made;
}

function textsOf(parts: readonly Part[], kind: "answers" | "small"): string[] {
  return parts.flatMap((part) => (part.kind === kind ? [part.text] : []));
}
