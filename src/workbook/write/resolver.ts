import type { Expression } from "../formula/expression";
import type { Reference } from "../formula/reference";
import { columnKey } from "../layout/fragment";
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

export function resolverFor(sheets: readonly DraftSheet[], names: FinalNames): Resolver {
  const places = new Map<string, Found>();
  const headers = new Map<string, string>();
  for (const { model, content } of sheets) {
    for (const [key, area] of content.places) places.set(key, { sheet: model.key, area });
    for (const { table, columns } of content.tables) {
      for (const { key, header } of columns) headers.set(`${table}.${key}`, header);
    }
  }
  const sheetNamed = (key: string) => found(names.sheets, key, "sheet");
  const spot = (key: string) => found(places, key, "place");
  const column = (table: string, key: string) => bracketed(found(headers, `${table}.${key}`, "column"));

  const address = ({ sheet, area }: Found, from: string) =>
    (sheet === from ? "" : sheetPrefix(sheetNamed(sheet))) + fixedAddress(area);
  const tabular = (reference: Extract<Reference, { table: string }>): string => {
    const table = found(names.tables, reference.table, "table");
    if (reference.to === "span") {
      return `${table}[[#This Row],${column(reference.table, reference.first)}:${column(reference.table, reference.last)}]`;
    }
    const header = column(reference.table, reference.column);
    if (reference.rows === "this") return `${table}[[#This Row],${header}]`;
    return isPlain(header) ? `${table}${header}` : `${table}[${header}]`;
  };
  const inCell = (reference: Reference, from: string): string => {
    switch (reference.to) {
      case "name":
        return found(names.names, reference.key, "name");
      case "place":
        return address(spot(reference.key), from);
      case "sheetName":
        return `"${sheetNamed(reference.sheet).replace(/"/g, '""')}"`;
      default:
        return tabular(reference);
    }
  };
  const plain = (reference: Reference, from: string): string => {
    if (reference.to !== "column") return inCell(reference, from);
    const where = spot(columnKey(reference));
    if (reference.rows === "all") return address(where, from);
    return `$${columnLetters(where.area.left)}${where.area.top + 1}`;
  };
  return {
    cellFormula: (expression, sheet) => written(expression, (reference) => inCell(reference, sheet)),
    plainFormula: (expression, sheet) => written(expression, (reference) => plain(reference, sheet)),
    range: (reference) => {
      const key = reference.to === "column" ? columnKey(reference) : reference.to === "place" ? reference.key : "";
      const { sheet, area } = spot(key);
      return { sheet: sheetNamed(sheet), area };
    },
  };
}

function written({ parts }: Expression, resolve: (reference: Reference) => string): string {
  return `=${parts.map((part) => (typeof part === "string" ? part : resolve(part))).join("")}`;
}

function bracketed(header: string): string {
  return `[${header}]`;
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
