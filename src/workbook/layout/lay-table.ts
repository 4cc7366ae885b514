import { areaFrom } from "../area";
import { placeKey } from "../formula/reference";
import type { ModelCell } from "../model/cell";
import type { Column, TableBlock } from "../model/table";
import type { Area } from "../plan";
import { brokenLines } from "./broken-lines";
import { fragment, heading, type DraftCell, type Fragment, type Ground } from "./fragment";
import { computedCell, inputCell } from "./value-cells";

/**
 * A spreadsheet table. Figures over all its rows stand above the header, not below the last row: there they stay
 * in sight and the table can grow.
 */
export function layTable(block: TableBlock, { top }: Ground): Fragment {
  const { cells: head, start } = heading(block.title, top);
  const hasWhole = block.columns.some(({ column }) => column.whole !== undefined);
  const headerRow = start + (hasWhole ? 1 : 0);
  const area = { top: headerRow, bottom: headerRow + block.rows, left: 0, right: block.columns.length - 1 };
  return fragment({
    cells: [...head, ...(hasWhole ? wholeRow(block, start) : []), ...tableCells(block, headerRow)],
    tables: [{ table: block.table, area, columns: block.columns.map(({ key, header }) => ({ key, header })) }],
    places: tablePlaces(block, start, headerRow),
    ...columnExtras(block, headerRow),
    heights: [[headerRow, headerHeight(block)]],
    widths: block.columns.map(({ column }) => column.width),
    end: area.bottom + 1,
  });
}

function tableCells({ columns, rows }: TableBlock, headerRow: number): DraftCell[] {
  return [
    ...columns.map(({ header }, column) => ({ row: headerRow, column, content: header, style: "head" }) as const),
    ...columns.flatMap(({ column }, index) => columnCells(column, index, headerRow + 1, rows)),
  ];
}

/** The cells of a column below its header. */
function body({ rows }: TableBlock, headerRow: number, column: number): Area {
  return { top: headerRow + 1, bottom: headerRow + rows, left: column, right: column };
}

/** Columns by key, figures over all rows by key and "whole", and the header that row numbers are counted from. */
function tablePlaces(block: TableBlock, start: number, headerRow: number): Fragment["places"] {
  const columns = block.columns.flatMap(({ key, column }, index) => {
    const whole = [placeKey(block.table, key, "whole"), areaFrom({ row: start, column: index })] as const;
    const all = [placeKey(block.table, key), body(block, headerRow, index)] as const;
    return column.whole === undefined ? [all] : [all, whole];
  });
  return [[placeKey(block.table, "header"), areaFrom({ row: headerRow, column: 0 })], ...columns];
}

function columnExtras(block: TableBlock, headerRow: number): Pick<Fragment, "validations" | "rules" | "notes"> {
  const columns = block.columns.map(({ column }, index) => ({ column, index, area: body(block, headerRow, index) }));
  return {
    validations: columns.flatMap(({ column, area }) =>
      column.kind === "input" && column.allow ? [{ area, allow: column.allow }] : [],
    ),
    rules: columns.flatMap(({ column: { rules = [] }, area }) => rules.map((rule) => ({ area, rule }))),
    notes: columns.flatMap(({ column: { note }, index }) =>
      note === undefined ? [] : [{ row: headerRow, column: index, text: note }],
    ),
  };
}

function columnCells(column: Column, index: number, firstRow: number, rows: number): DraftCell[] {
  return Array.from({ length: rows }, (_, row) => ({ row: firstRow + row, column: index, ...bodyCell(column, row) }));
}

function bodyCell(column: Column, row: number): ModelCell {
  const cell =
    column.kind === "computed"
      ? computedCell(column.formula, column.words)
      : inputCell(column.values[row] ?? null, column.words);
  return { ...cell, ...(column.format !== undefined && { format: column.format }) };
}

function wholeRow(block: TableBlock, row: number): DraftCell[] {
  return block.columns.map(({ column: { whole, format } }, column) => {
    if (column === 0 && whole === undefined) {
      return { row, column, content: block.wholeLabel ?? "All", style: "totalText" };
    }
    if (whole === undefined) return { row, column, style: "totalText" };
    return { row, column, content: contentOf(whole), style: "total", ...(format !== undefined && { format }) };
  });
}

function contentOf(whole: NonNullable<Column["whole"]>): NonNullable<ModelCell["content"]> {
  if (typeof whole === "object" && "to" in whole) return { parts: [whole] };
  return whole;
}

/** Room for the header that needs most lines. */
function headerHeight({ columns }: TableBlock): number {
  // The filter button takes about a character.
  const lines = Math.max(...columns.map(({ header, column }) => brokenLines(header, column.width - 1).length));
  return 16 * lines + 4;
}
