import { parseAddress, type SheetArea } from "./address";
import { areaFrom } from "../workbook/area";
import { HostError, type WrittenBlock } from "./port";
import { hostWords } from "./words";

const say = hostWords.cells;

/** Where a block goes: its rows from the first cell of its address on. */
export function writtenArea({ address, rows }: WrittenBlock): SheetArea {
  const place = parseAddress(address);
  if (!place) throw new HostError(say.noAddress(address), "NoAddress");
  const { top: row, left: column } = place.area;
  return { sheet: place.sheet, area: areaFrom({ row, column }, { rows: rows.length, columns: rows[0]?.length ?? 1 }) };
}

/** What stands in the way of a write, told the same way by every host. */
export function inTheWay(address: string, what: "formula" | "something"): HostError {
  return what === "formula"
    ? new HostError(say.holdsFormula(address), "FormulaThere")
    : new HostError(say.notEmpty(address), "CellNotEmpty");
}
