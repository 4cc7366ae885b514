import type { HostValue } from "../../../src/hosts/port";
import type { FakeCell } from "../fake-host";

export const head = ["Client", "Field", "Crop", "Acres", "Yield", "Soil pH", "Buffer pH", "P ppm", "K ppm", "CEC"];

/** Clients "Client 1", "Client 2", …, each with two fields and their tests. */
export function clientRows(count: number): HostValue[][] {
  return Array.from({ length: count }, (_, index) => index + 1).flatMap((number) => [
    [`Client ${number}`, "North", "corn", 80, 190, 6.2, 6.7, 22, 120, 12],
    [`Client ${number}`, "South", "soybean", 40 + number, 58, 6.6, null, 15, 95, 10],
  ]);
}

/** Rows as the cells of a sheet, from A1. */
export function cellsOf(sheet: string, rows: readonly (readonly HostValue[])[]): Record<string, FakeCell> {
  return Object.fromEntries(
    rows.flatMap((row, down) =>
      row.map((value, across) => [`${sheet}!${String.fromCharCode(65 + across)}${down + 1}`, { value }]),
    ),
  );
}
