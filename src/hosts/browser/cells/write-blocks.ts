import { BooleanNumber, CellValueType, generateRandomId, type ICellData, type Worksheet } from "@univerjs/core";
import { SetRangeValuesCommand } from "@univerjs/sheets";
import { areaAddress, sheetAddress } from "../../address";
import { areaFrom, cellsOf } from "../../../workbook/area";
import type { CellReader } from "../../engine/read-cells";
import { formatOf } from "../../text-format";
import { HostError, type MayReplace, type WrittenBlock, type WrittenCell } from "../../port";
import { inTheWay, writtenArea } from "../../written-area";
import type { OpenWorkbook } from "../open-workbook";
import type { Grid } from "../grid/start-grid";
import { hostWords } from "../../words";

const say = hostWords.browser;

interface Parts {
  readonly grid: Grid;
  readonly workbook: OpenWorkbook;
  readonly reader: CellReader;
}

type Matrix = Record<number, Record<number, ICellData>>;

/** Writes blocks of cells after a look at what stands there, one step for the grid's Undo, and waits for the answers. */
export async function writeBlocks(
  blocks: readonly WrittenBlock[],
  mayReplace: MayReplace,
  { grid, workbook, reader }: Parts,
): Promise<void> {
  const bySheet = new Map<Worksheet, Matrix>();
  for (const block of blocks) {
    const sheet = sheetOf(block, workbook);
    refuseOccupied(block, sheet, mayReplace, reader);
    bySheet.set(sheet, withBlock(bySheet.get(sheet) ?? {}, block));
  }
  const step = generateRandomId();
  const applied = grid.api.getFormula().onCalculationResultApplied();
  for (const [sheet, value] of bySheet) {
    const params = { unitId: sheet.getUnitId(), subUnitId: sheet.getSheetId(), value, redoUndoId: step };
    if (!grid.api.syncExecuteCommand(SetRangeValuesCommand.id, params)) {
      throw new HostError(say.notWritten, "GridRefused");
    }
  }
  await applied;
}

function sheetOf(block: WrittenBlock, { model }: OpenWorkbook): Worksheet {
  const { sheet: name, area } = writtenArea(block);
  const sheet = name === undefined ? model.getActiveSheet() : model.getSheetBySheetName(name);
  if (!sheet) throw new HostError(say.noSheet(name), "NoSheet");
  if (area.bottom < sheet.getRowCount() && area.right < sheet.getColumnCount()) return sheet;
  throw new HostError(say.pastTheEnd(areaAddress(area)), "PastTheEnd");
}

function refuseOccupied(block: WrittenBlock, sheet: Worksheet, mayReplace: MayReplace, reader: CellReader): void {
  const { area } = writtenArea(block);
  for (const cell of cellsOf(area)) {
    const { row, column } = cell;
    const isSpilled = reader.isSpilled(sheet, row, column);
    const isFormula = isSpilled || reader.formulaAt(sheet, row, column) !== undefined;
    const kept = { nothing: reader.holdsAnything(sheet, row, column), typedValues: isFormula, formulas: isSpilled };
    if (!kept[mayReplace]) continue;
    const address = sheetAddress(sheet.getName(), areaFrom(cell));
    throw inTheWay(address, mayReplace === "nothing" ? "something" : "formula");
  }
}

function withBlock(matrix: Matrix, block: WrittenBlock): Matrix {
  const { top, left } = writtenArea(block).area;
  block.rows.forEach((cells, down) => {
    const row = (matrix[top + down] ??= {});
    cells.forEach((cell, across) => (row[left + across] = cellData(cell)));
  });
  return matrix;
}

function cellData(cell: WrittenCell): ICellData {
  if (cell === null) return { v: null, f: null };
  if (typeof cell === "object") return { f: cell.formula };
  if (typeof cell === "boolean")
    return { v: cell ? BooleanNumber.TRUE : BooleanNumber.FALSE, t: CellValueType.BOOLEAN };
  if (typeof cell === "number") return { v: cell, t: CellValueType.NUMBER };
  const pattern = formatOf({ content: cell });
  return { v: cell, t: CellValueType.STRING, ...(pattern !== undefined && { s: { n: { pattern } } }) };
}
