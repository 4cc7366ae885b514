import { areaFrom } from "../area";
import type { RowsBlock } from "../model/block";
import { fragment, heading, type Fragment, type Ground } from "./fragment";
import type { Area } from "../plan";

/** Cells as the model lists them. */
export function layRows(block: RowsBlock, { top }: Ground): Fragment {
  const { cells: head, start } = heading(block.title, top);
  const placed = block.rows.flatMap((row, down) =>
    row.flatMap((cell, across) => (cell === null ? [] : [{ cell, row: start + down, column: across }])),
  );
  const places = placed.flatMap(({ cell: { key }, row, column }) =>
    key === undefined ? [] : [[key, areaFrom({ row, column })] as const],
  );
  const byKey = new Map<string, Area>(places);
  const between = (from: string, to: string): Area[] => {
    const [first, last] = [byKey.get(from), byKey.get(to)];
    return first && last ? [{ ...first, bottom: last.bottom, right: last.right }] : [];
  };
  return fragment({
    cells: [...head, ...placed.map(({ cell, row, column }) => ({ row, column, ...cell }))],
    places: [
      ...places,
      ...(block.ranges ?? []).flatMap(({ key, from, to }) => between(from, to).map((area) => [key, area] as const)),
    ],
    names: placed.flatMap(({ cell: { named }, row, column }) =>
      named === undefined ? [] : [{ ...named, area: areaFrom({ row, column }) }],
    ),
    validations: placed.flatMap(({ cell: { allow }, row, column }) =>
      allow === undefined ? [] : [{ area: areaFrom({ row, column }), allow }],
    ),
    rules: (block.rules ?? []).flatMap(({ from, to, rule }) => between(from, to).map((area) => ({ area, rule }))),
    heights: Object.entries(block.heights ?? {}).map(([row, height]) => [start + Number(row), height] as const),
    end: start + block.rows.length,
  });
}
