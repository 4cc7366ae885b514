import type { Worksheet } from "@univerjs/core";
import type { Area } from "../../../workbook/plan";
import { parseAddress, parseTableColumn, type TableColumn } from "../../address";
import { HostError } from "../../port";
import type { OpenWorkbook } from "../open-workbook";
import { hostWords } from "../../words";

const say = hostWords.browser;

export interface FoundCells {
  readonly sheet: Worksheet;
  readonly area: Area;
}

/** The cells of an address, with or without a sheet; of a defined name; or of a table column, Table[Column]. */
export function findCells(workbook: OpenWorkbook, reference: string): FoundCells {
  const inTable = parseTableColumn(reference);
  if (inTable) return columnCells(workbook, inTable);
  return addressCells(workbook, reference) ?? namedCells(workbook, reference);
}

function addressCells({ model }: OpenWorkbook, address: string): FoundCells | undefined {
  const place = parseAddress(address);
  if (!place) return undefined;
  const sheet = place.sheet === undefined ? model.getActiveSheet() : model.getSheetBySheetName(place.sheet);
  if (!sheet) throw new HostError(say.noSheet(place.sheet), "NoSheet");
  return { sheet, area: place.area };
}

function namedCells(workbook: OpenWorkbook, name: string): FoundCells {
  const found = workbook.facade.getDefinedNames().find((one) => same(one.getName(), name));
  const address = found?.getFormulaOrRefString().replace(/^=/, "");
  const cells = address === undefined ? undefined : addressCells(workbook, address);
  if (!cells) throw new HostError(say.noName(name), "NoName");
  return cells;
}

function columnCells({ facade, model }: OpenWorkbook, { table, column }: TableColumn): FoundCells {
  const found = facade.getTableList().find(({ name }) => same(name, table));
  const sheet = found && model.getSheetBySheetId(found.subUnitId);
  if (!found || !sheet) throw new HostError(say.noTable(table), "NoTable");
  const index = found.columns.findIndex(({ displayName }) => same(displayName, column));
  if (index < 0) throw new HostError(say.noColumn(table, column), "NoColumn");
  const left = found.range.startColumn + index;
  return { sheet, area: { top: found.range.startRow + 1, bottom: found.range.endRow, left, right: left } };
}

function same(one: string, other: string): boolean {
  return one.toLowerCase() === other.toLowerCase();
}
