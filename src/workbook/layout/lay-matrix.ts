import { areaFrom } from "../area";
import { placeKey } from "../formula/reference";
import type { MatrixBlock, MatrixRow } from "../model/block";
import { fragment, heading, type DraftCell, type Fragment, type Ground } from "./fragment";
import { computedCell, inputCell } from "./value-cells";

const firstColumn = 2;

/** Lines down, things across: label, unit, then one figure for each thing. */
export function layMatrix(block: MatrixBlock, { top }: Ground): Fragment {
  const { cells: head, start } = heading(block.title, top);
  const last = firstColumn + block.columns.length - 1;
  const rowAt = (index: number) => start + 1 + index;
  const rowArea = (index: number) => ({ top: rowAt(index), bottom: rowAt(index), left: firstColumn, right: last });
  return fragment({
    cells: [
      ...head,
      { row: start, column: 0, content: block.corner, style: "head" },
      { row: start, column: 1, content: "unit", style: "head" },
      ...block.columns.map(
        ({ head }, index) => ({ row: start, column: firstColumn + index, content: head, style: "head" }) as const,
      ),
      ...block.rows.flatMap((row, index) => lineCells(row, rowAt(index), block.columns.length)),
    ],
    places: [
      [placeKey(block.key, "heads"), { top: start, bottom: start, left: firstColumn, right: last }],
      ...block.columns.map(
        ({ key }, column) =>
          [placeKey(block.key, "head", key), areaFrom({ row: start, column: firstColumn + column })] as const,
      ),
      ...block.rows.flatMap((row, index) => [
        [placeKey(block.key, row.key), rowArea(index)] as const,
        ...block.columns.map(
          ({ key }, column) =>
            [placeKey(block.key, row.key, key), areaFrom({ row: rowAt(index), column: firstColumn + column })] as const,
        ),
      ]),
    ],
    validations: block.rows.flatMap(({ allow }, index) => (allow ? [{ area: rowArea(index), allow }] : [])),
    rules: block.rows.flatMap(({ rules = [] }, index) => rules.map((rule) => ({ area: rowArea(index), rule }))),
    notes: block.rows.flatMap(({ note }, index) => (note ? [{ row: rowAt(index), column: 0, text: note }] : [])),
    widths: [34, 10, ...block.columns.map(() => 13)],
    end: rowAt(block.rows.length),
  });
}

function lineCells(row: MatrixRow, at: number, columns: number): DraftCell[] {
  const heading = row.cells.length === 0;
  const strong = heading || row.total === true;
  return [
    { row: at, column: 0, content: row.label, style: strong ? "totalText" : "label" },
    { row: at, column: 1, ...(row.unit !== "" && { content: row.unit }), style: strong ? "totalText" : "unit" },
    ...Array.from({ length: columns }, (_, index): DraftCell => {
      const cell = row.cells[index];
      const place = { row: at, column: firstColumn + index };
      if (cell === undefined) return { ...place, style: strong ? "totalText" : "computed" };
      const content = cell.kind === "input" ? inputCell(cell.start) : computedCell(cell.formula, cell.words, row.total);
      return { ...place, ...content, format: row.format };
    }),
  ];
}
