import type { Area, CellPlan, StyleName } from "../../workbook/plan";
import { areaAddress } from "../address";

/** Rectangles of one look and one shape, as an address list that Excel takes. */
export interface StyleAreas {
  readonly style: StyleName;
  readonly address: string;
  /** Whether the rectangles have lines between rows or columns inside; Excel refuses to draw them where not. */
  readonly insideRows: boolean;
  readonly insideColumns: boolean;
}

/** Characters that an address list may have; Excel refuses very long ones. */
const longestAddress = 2000;

/** The cells of a sheet gathered by look into as few rectangles as simple merging gives. */
export function styleAreas(cells: readonly CellPlan[]): StyleAreas[] {
  const groups = new Map<string, Omit<StyleAreas, "address"> & { areas: Area[] }>();
  for (const [style, areas] of rectanglesByStyle(cells)) {
    for (const area of areas) {
      const shape = { style, insideRows: area.bottom > area.top, insideColumns: area.right > area.left };
      const key = JSON.stringify(shape);
      const group = groups.get(key) ?? { ...shape, areas: [] };
      groups.set(key, group);
      group.areas.push(area);
    }
  }
  return [...groups.values()].flatMap(({ areas, ...shape }) =>
    addressLists(areas).map((address) => ({ ...shape, address })),
  );
}

function rectanglesByStyle(cells: readonly CellPlan[]): Map<StyleName, Area[]> {
  const rectangles = new Map<StyleName, Area[]>();
  const open = new Map<string, { bottom: number }>();
  for (const { style, ...run } of rowRuns(cells)) {
    const key = `${style} ${run.left} ${run.right}`;
    const above = open.get(key);
    if (above && above.bottom === run.top - 1) {
      above.bottom = run.bottom;
      continue;
    }
    const rectangle = { ...run };
    open.set(key, rectangle);
    const others = rectangles.get(style);
    if (others) others.push(rectangle);
    else rectangles.set(style, [rectangle]);
  }
  return rectangles;
}

/** Neighbours of one look in a row, from the top down. */
function rowRuns(cells: readonly CellPlan[]): (Area & { style: StyleName })[] {
  const runs: { top: number; left: number; bottom: number; right: number; style: StyleName }[] = [];
  for (const { row, column, style } of [...cells].sort((a, b) => a.row - b.row || a.column - b.column)) {
    const run = runs.at(-1);
    if (run && run.top === row && run.right === column - 1 && run.style === style) run.right = column;
    else runs.push({ top: row, left: column, bottom: row, right: column, style });
  }
  return runs;
}

function addressLists(areas: readonly Area[]): string[] {
  const lists: string[] = [];
  for (const address of areas.map(areaAddress)) {
    const last = lists.at(-1);
    if (last !== undefined && last.length + address.length < longestAddress)
      lists[lists.length - 1] = `${last},${address}`;
    else lists.push(address);
  }
  return lists;
}
