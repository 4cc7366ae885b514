import type { Area, CellPlan, StyleName } from "../../../workbook/plan";
import { areaAddress } from "../../address";
import { rectanglesOf } from "../../rectangles";

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
  for (const [style, theirs] of cellsByStyle(cells)) {
    for (const area of rectanglesOf(theirs)) {
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

function cellsByStyle(cells: readonly CellPlan[]): Map<StyleName, CellPlan[]> {
  const byStyle = new Map<StyleName, CellPlan[]>();
  for (const cell of cells) {
    const others = byStyle.get(cell.style);
    if (others) others.push(cell);
    else byStyle.set(cell.style, [cell]);
  }
  return byStyle;
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
