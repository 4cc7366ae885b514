import type { Area } from "../workbook/plan";
import { parseAddress } from "./address";
import { HostError, type WrittenBlock } from "./port";
import { hostWords } from "./words";

const say = hostWords.cells;

/** Where a block goes: its rows from the first cell of its address on. */
export function writtenArea({ address, rows }: WrittenBlock): {
  readonly sheet: string | undefined;
  readonly area: Area;
} {
  const place = parseAddress(address);
  if (!place) throw new HostError(say.noAddress(address), "NoAddress");
  const { top, left } = place.area;
  return {
    sheet: place.sheet,
    area: { top, left, bottom: top + rows.length - 1, right: left + (rows[0]?.length ?? 1) - 1 },
  };
}

/** What stands in the way of a write, told the same way by every host. */
export function inTheWay(address: string, what: "formula" | "something"): HostError {
  return what === "formula"
    ? new HostError(say.holdsFormula(address), "FormulaThere")
    : new HostError(say.notEmpty(address), "CellNotEmpty");
}
