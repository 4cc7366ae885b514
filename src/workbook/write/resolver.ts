import type { Expression } from "../formula/expression";
import { placeKey, type Reference } from "../formula/reference";
import type { DraftSheet } from "../layout/layout";
import type { FinalNames } from "../names/choose-names";
import type { Area, ChartRange } from "../plan";
import { columnLetters, fixedAddress, sheetPrefix } from "./address";

/** Turns references by key into names, table references and addresses. Made once everything has its place. */
export interface Resolver {
  /** A formula for a cell of this sheet, with its "=". */
  cellFormula(expression: Expression, sheet: string): string;
  /** A formula for a conditional format or a validation, where tables cannot be named. */
  plainFormula(expression: Expression, sheet: string): string;
  /** The cells a reference covers. */
  range(reference: Reference): ChartRange;
}

interface Found {
  readonly sheet: string;
  readonly area: Area;
}

/** Where everything is and what it is called. */
interface Whereabouts {
  readonly names: FinalNames;
  readonly places: ReadonlyMap<string, Found>;
  readonly headers: ReadonlyMap<string, string>;
}

type TableReference = Extract<Reference, { table: string }>;

export function resolverFor(sheets: readonly DraftSheet[], names: FinalNames): Resolver {
  const where = whereabouts(sheets, names);
  return {
    cellFormula: (expression, sheet) => written(expression, (reference) => inCell(reference, sheet, where)),
    plainFormula: (expression, sheet) => written(expression, (reference) => plain(reference, sheet, where)),
    range: (reference) => {
      const { sheet, area } = spotOf(reference, where);
      return { sheet: sheetNamed(sheet, where), area };
    },
  };
}

function whereabouts(sheets: readonly DraftSheet[], names: FinalNames): Whereabouts {
  const places = sheets.flatMap(({ model, content }) =>
    content.places.map(([key, area]) => [key, { sheet: model.key, area }] as const),
  );
  const headers = sheets.flatMap(({ content }) =>
    content.tables.flatMap(({ table, columns }) =>
      columns.map(({ key, header }) => [placeKey(table, key), header] as const),
    ),
  );
  return { names, places: new Map(places), headers: new Map(headers) };
}

/** A reference in the formula of a cell. */
function inCell(reference: Reference, from: string, where: Whereabouts): string {
  switch (reference.to) {
    case "name":
      return found(where.names.names, reference.key, "name");
    case "place":
      return address(spotOf(reference, where), from, where);
    case "outside":
      return sheetPrefix(reference.sheet) + fixedAddress(reference.area);
    case "sheetName":
      return `"${sheetNamed(reference.sheet, where).replace(/"/g, '""')}"`;
    default:
      return inTable(reference, where);
  }
}

/** A reference where tables cannot be named: columns of the same row become relative addresses. */
function plain(reference: Reference, from: string, where: Whereabouts): string {
  if (reference.to !== "column") return inCell(reference, from, where);
  const spot = spotOf(reference, where);
  if (reference.rows === "all") return address(spot, from, where);
  return `$${columnLetters(spot.area.left)}${spot.area.top + 1}`;
}

function inTable(reference: TableReference, { names, headers }: Whereabouts): string {
  const table = found(names.tables, reference.table, "table");
  const column = (key: string) => `[${found(headers, placeKey(reference.table, key), "column")}]`;
  if (reference.to === "span") {
    const columns = `${column(reference.first)}:${column(reference.last)}`;
    return reference.rows === "this" ? `${table}[[#This Row],${columns}]` : `${table}[${columns}]`;
  }
  const header = column(reference.column);
  if (reference.rows === "this") return `${table}[[#This Row],${header}]`;
  return isPlain(header) ? `${table}${header}` : `${table}[${header}]`;
}

function address({ sheet, area }: Found, from: string, where: Whereabouts): string {
  return (sheet === from ? "" : sheetPrefix(sheetNamed(sheet, where))) + fixedAddress(area);
}

function spotOf(reference: Reference, { places }: Whereabouts): Found {
  if (reference.to === "column") return found(places, placeKey(reference.table, reference.column), "column");
  if (reference.to === "place") return found(places, reference.key, "place");
  throw new Error(`Not a range: ${JSON.stringify(reference)}`);
}

function sheetNamed(key: string, { names }: Whereabouts): string {
  return found(names.sheets, key, "sheet");
}

function written({ parts }: Expression, resolve: (reference: Reference) => string): string {
  return `=${parts.map((part) => (typeof part === "string" ? part : resolve(part))).join("")}`;
}

/** A header of letters, digits and spaces needs one pair of brackets; other signs need two. */
function isPlain(header: string): boolean {
  return /^\[[A-Za-z0-9 ]+\]$/.test(header);
}

function found<Value>(among: ReadonlyMap<string, Value>, key: string, what: string): Value {
  const value = among.get(key);
  if (value === undefined) throw new Error(`No ${what} "${key}" in this model.`);
  return value;
}
