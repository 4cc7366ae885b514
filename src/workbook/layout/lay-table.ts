import type { Column, TableBlock } from "../model/table";
import type { ModelCell } from "../model/cell";
import type { Area } from "../plan";
import { cellArea, fragment, heading, placeKey, type DraftCell, type Fragment, type Ground } from "./fragment";

/**
 * A spreadsheet table. Figures over all its rows stand above the header, not below the last row: there they stay
 * in sight and the table can grow.
 */
export function layTable(block: TableBlock, { top }: Ground): Fragment {
  const { cells: head, start } = heading(block.title, top);
  const hasWhole = block.columns.some(({ column }) => column.whole !== undefined);
  const headerRow = start + (hasWhole ? 1 : 0);
  const body = (index: number): Area => ({
    top: headerRow + 1,
    bottom: headerRow + block.rows,
    left: index,
    right: index,
  });
  const of = <T>(take: (column: Column, index: number) => readonly T[]): T[] =>
    block.columns.flatMap(({ column }, index) => take(column, index));

  return fragment({
    cells: [
      ...head,
      ...(hasWhole ? wholeRow(block, start) : []),
      ...block.columns.map(
        ({ header }, column) => ({ row: headerRow, column, content: header, style: "head" }) as const,
      ),
      ...of((column, index) => columnCells(column, index, headerRow + 1, block.rows)),
    ],
    tables: [
      {
        table: block.table,
        area: { top: headerRow, bottom: headerRow + block.rows, left: 0, right: block.columns.length - 1 },
        columns: block.columns.map(({ key, header }) => ({ key, header })),
      },
    ],
    places: [
      [placeKey(block.table, "header"), cellArea(headerRow, 0)] as const,
      ...block.columns.flatMap(({ key, column }, index) => [
        [placeKey(block.table, key), body(index)] as const,
        ...(column.whole === undefined ? [] : [[placeKey(block.table, key, "whole"), cellArea(start, index)] as const]),
      ]),
    ],
    validations: of((column, index) =>
      column.kind === "input" && column.allow ? [{ area: body(index), allow: column.allow }] : [],
    ),
    rules: of(({ rules = [] }, index) => rules.map((rule) => ({ area: body(index), rule }))),
    notes: of(({ note }, index) => (note === undefined ? [] : [{ row: headerRow, column: index, text: note }])),
    heights: [[headerRow, headerHeight(block)]],
    widths: block.columns.map(({ column }) => column.width),
    end: headerRow + block.rows + 1,
  });
}

function columnCells(column: Column, index: number, firstRow: number, rows: number): DraftCell[] {
  return Array.from({ length: rows }, (_, row) => ({ row: firstRow + row, column: index, ...bodyCell(column, row) }));
}

function bodyCell(column: Column, row: number): ModelCell {
  const look = column.format === undefined ? {} : { format: column.format };
  if (column.kind === "computed") {
    return { content: column.formula, style: column.words ? "computedText" : "computed", ...look };
  }
  const value = column.values[row] ?? null;
  return { ...(value !== null && { content: value }), style: column.words ? "inputText" : "input", ...look };
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
  const lines = Math.max(...columns.map(({ header, column }) => linesOf(header, column.width)));
  return 16 * lines + 4;
}

/** Lines that words take when they break between words. */
function linesOf(words: string, width: number): number {
  let lines = 1;
  let used = 0;
  for (const word of words.split(" ")) {
    // Bold letters and the filter button take about two characters.
    if (used > 0 && used + 1 + word.length > width - 2) {
      lines += 1;
      used = word.length;
    } else {
      used += (used > 0 ? 1 : 0) + word.length;
    }
  }
  return lines;
}
