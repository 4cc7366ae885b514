import type { RowsBlock } from "../model/block";
import { cellArea, fragment, heading, type DraftCell, type Fragment, type Ground } from "./fragment";
import type { Area } from "../plan";

/** Cells as the model lists them. Cells that a spilled answer will cover get the look of the first one. */
export function layRows(block: RowsBlock, { top }: Ground): Fragment {
  const { cells: head, start } = heading(block.title, top);
  const placed = block.rows.flatMap((row, down) =>
    row.flatMap((cell, across) => (cell === null ? [] : [{ cell, row: start + down, column: across }])),
  );
  const places = placed.flatMap(({ cell: { key, spill }, row, column }) =>
    key === undefined ? [] : [[key, spillArea(row, column, spill)] as const],
  );
  const byKey = new Map<string, Area>(places);
  const between = (from: string, to: string): Area[] => {
    const [first, last] = [byKey.get(from), byKey.get(to)];
    return first && last ? [{ ...first, bottom: last.bottom, right: last.right }] : [];
  };
  return fragment({
    cells: [
      ...head,
      ...placed.flatMap(({ cell, row, column }) => [{ row, column, ...cell }, ...covered(cell, row, column)]),
    ],
    places: [
      ...places,
      ...(block.ranges ?? []).flatMap(({ key, from, to }) => between(from, to).map((area) => [key, area] as const)),
    ],
    names: placed.flatMap(({ cell: { named }, row, column }) =>
      named === undefined ? [] : [{ ...named, area: cellArea(row, column) }],
    ),
    validations: placed.flatMap(({ cell: { allow }, row, column }) =>
      allow === undefined ? [] : [{ area: cellArea(row, column), allow }],
    ),
    rules: (block.rules ?? []).flatMap(({ from, to, rule }) => between(from, to).map((area) => ({ area, rule }))),
    notes: placed.flatMap(({ cell: { note }, row, column }) =>
      note === undefined ? [] : [{ row, column, text: note }],
    ),
    heights: Object.entries(block.heights ?? {}).map(([row, height]) => [start + Number(row), height] as const),
    end: Math.max(
      start + block.rows.length,
      ...placed.map(({ cell: { spill }, row, column }) => spillArea(row, column, spill).bottom + 1),
    ),
  });
}

function spillArea(row: number, column: number, spill: { rows: number; columns: number } | undefined): Area {
  if (spill === undefined) return cellArea(row, column);
  return { top: row, left: column, bottom: row + spill.rows - 1, right: column + spill.columns - 1 };
}

function covered(
  { spill, style, format }: Pick<DraftCell, "spill" | "style" | "format">,
  row: number,
  column: number,
): DraftCell[] {
  if (spill === undefined) return [];
  const look = { style, ...(format !== undefined && { format }) };
  return Array.from({ length: spill.rows * spill.columns }, (_, index) => ({
    row: row + Math.floor(index / spill.columns),
    column: column + (index % spill.columns),
    ...look,
  })).slice(1);
}
