import type { Area } from "./plan";

/** A cell of a sheet; rows and columns from 0. */
export interface CellAt {
  readonly row: number;
  readonly column: number;
}

/** A cell of a workbook. */
export interface CellPlace extends CellAt {
  readonly sheet: string;
}

export interface AreaSize {
  readonly rows: number;
  readonly columns: number;
}

export function sizeOf({ top, left, bottom, right }: Area): AreaSize {
  return { rows: bottom - top + 1, columns: right - left + 1 };
}

/** The area that begins at a cell: that cell alone where no size is given. */
export function areaFrom({ row, column }: CellAt, { rows, columns }: AreaSize = { rows: 1, columns: 1 }): Area {
  return { top: row, left: column, bottom: row + rows - 1, right: column + columns - 1 };
}

/** The rows of an area, each as its cells. */
export function rowsOf(area: Area): CellAt[][] {
  const { rows, columns } = sizeOf(area);
  return Array.from({ length: rows }, (_, down) =>
    Array.from({ length: columns }, (__, across) => ({ row: area.top + down, column: area.left + across })),
  );
}

/** The cells of an area, row by row. */
export function cellsOf(area: Area): CellAt[] {
  return rowsOf(area).flat();
}
