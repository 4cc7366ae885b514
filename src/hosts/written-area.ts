import type { Area } from "../workbook/plan";
import { parseAddress } from "./address";
import { HostError, type WrittenBlock } from "./port";

/** Where a block goes: its rows from the first cell of its address on. */
export function writtenArea({ address, rows }: WrittenBlock): {
  readonly sheet: string | undefined;
  readonly area: Area;
} {
  const place = parseAddress(address);
  if (!place) throw new HostError(`${address} is not an address of cells.`, "NoAddress");
  const { top, left } = place.area;
  return {
    sheet: place.sheet,
    area: { top, left, bottom: top + rows.length - 1, right: left + (rows[0]?.length ?? 1) - 1 },
  };
}

/** What stands in the way of a write, told the same way by every host. */
export function inTheWay(address: string, what: "formula" | "something"): HostError {
  return what === "formula"
    ? new HostError(`${address} holds a formula, which stays. Nothing was written.`, "FormulaThere")
    : new HostError(
        `${address} is not empty. Select a cell with empty cells around it. Nothing was written.`,
        "CellNotEmpty",
      );
}
