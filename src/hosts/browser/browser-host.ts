import type { IRange, Worksheet } from "@univerjs/core";
import { SetSelectionsOperation } from "@univerjs/sheets";
import { cellAddress, sheetAddress } from "../address";
import { areaFrom, rowsOf, sizeOf } from "../../workbook/area";
import { isCellError } from "../../functions/frame/cell";
import type { WorkbookReading } from "../../workbook/findings";
import type { Area, WorkbookPlan } from "../../workbook/plan";
import type { CellReader } from "../engine/read-cells";
import {
  HostError,
  type FillOptions,
  type FillReceipt,
  type HostFacts,
  type HostRange,
  type MayReplace,
  type TakenNames,
  type WorkbookHost,
  type WrittenBlock,
} from "../port";
import { refuseTaken } from "../refuse-taken";
import { findCells } from "./cells/find-cells";
import { gridFacts } from "./grid/grid-facts";
import type { OpenWorkbook } from "./open-workbook";
import { readSheets } from "./cells/read-sheets";
import { scrollTo } from "./cells/scroll-to";
import type { Grid } from "./grid/start-grid";
import { writeBlocks } from "./cells/write-blocks";
import { isPristine, withoutFill, withPlan } from "./data/workbook-parts";
import { hostWords } from "../words";

const say = hostWords.browser;

/** The workbook of this page, as the task pane sees it. */
export class BrowserHost implements WorkbookHost {
  readonly kind = "browser";

  constructor(
    private readonly grid: Grid,
    private readonly workbook: OpenWorkbook,
    private readonly reader: CellReader,
  ) {}

  async taken(): Promise<TakenNames> {
    const { facade } = this.workbook;
    const pristine = isPristine(this.workbook.snapshot());
    return {
      sheets: pristine ? [] : facade.getSheets().map((sheet) => sheet.getSheetName()),
      names: facade.getDefinedNames().map((name) => name.getName()),
      tables: facade.getTableList().map((table) => table.name),
    };
  }

  async fill(plan: WorkbookPlan, { protect, onProgress }: FillOptions): Promise<FillReceipt> {
    refuseTaken(plan, await this.taken(), say.taken);
    const before = this.workbook.snapshot();
    const step = async (share: number, doing: string) => {
      onProgress?.({ share, doing });
      await painted();
    };
    try {
      await step(0.1, say.layingOut(plan.sheets.length));
      const together = withPlan(before, plan, protect);
      await step(0.4, say.placing);
      await this.workbook.open(together);
      this.showSheet(plan.sheets[0]?.name);
      await step(1, say.done);
    } catch (thrown) {
      await this.workbook.open(before);
      throw failed(say.notPutIn, thrown);
    }
    return {
      starter: plan.starter,
      sheets: plan.sheets.map(({ name }) => name),
      names: plan.names.map(({ name }) => name),
    };
  }

  async remove(receipt: FillReceipt): Promise<void> {
    const before = this.workbook.snapshot();
    try {
      await this.workbook.open(withoutFill(before, receipt));
    } catch (thrown) {
      await this.workbook.open(before);
      throw failed(say.notTakenAway, thrown);
    }
  }

  async readSelection(): Promise<HostRange> {
    const range = this.workbook.facade.getActiveRange();
    const sheet = this.workbook.model.getActiveSheet();
    return this.readArea(sheet, range ? areaOf(range.getRange(), sheet) : areaFrom({ row: 0, column: 0 }));
  }

  async read(reference: string): Promise<HostRange> {
    const { sheet, area } = findCells(this.workbook, reference);
    return this.readArea(sheet, area);
  }

  async insertFormula(formula: string): Promise<void> {
    const cell = this.workbook.facade.getActiveCell();
    if (!cell) throw new HostError(say.noCell, "NoSelection");
    const sheet = this.workbook.model.getActiveSheet();
    const [row, column] = [cell.getRow(), cell.getColumn()];
    if (this.reader.holdsAnything(sheet, row, column)) {
      throw new HostError(say.cellNotEmpty(cellAddress({ row, column })), "CellNotEmpty");
    }
    const applied = this.grid.api.getFormula().onCalculationResultApplied();
    cell.setValue({ f: formula });
    await applied;
  }

  write(blocks: readonly WrittenBlock[], mayReplace: MayReplace): Promise<void> {
    return writeBlocks(blocks, mayReplace, { grid: this.grid, workbook: this.workbook, reader: this.reader });
  }

  async show(reference: string): Promise<void> {
    const { sheet, area } = findCells(this.workbook, reference);
    const { facade } = this.workbook;
    const shown = facade.getSheetBySheetId(sheet.getSheetId());
    if (!shown) return;
    facade.setActiveSheet(shown);
    const { top, left } = area;
    const { rows, columns } = sizeOf(area);
    shown.getRange(top, left, rows, columns).activate();
    await scrollTo({ top, left }, { grid: this.grid, sheet });
  }

  async readSheets(): Promise<WorkbookReading> {
    return readSheets(this.workbook, this.reader);
  }

  async facts(): Promise<HostFacts> {
    return gridFacts(this.grid);
  }

  async onSelectionChange(listener: () => void): Promise<void> {
    const { api } = this.grid;
    api.addEvent(api.Event.CommandExecuted, ({ id }) => {
      if (id === SetSelectionsOperation.id) listener();
    });
    api.addEvent(api.Event.ActiveSheetChanged, listener);
    api.getFormula().calculationResultApplied(listener);
  }

  private showSheet(sheetName: string | undefined): void {
    const sheet = sheetName === undefined ? null : this.workbook.facade.getSheetByName(sheetName);
    if (sheet) this.workbook.facade.setActiveSheet(sheet);
  }

  private readArea(sheet: Worksheet, area: Area): HostRange {
    const rows = rowsOf(area);
    const values = rows.map((cells) => cells.map(({ row, column }) => this.reader.shownAt(sheet, row, column)));
    const formulas = rows.map((cells, down) =>
      cells.map(({ row, column }, across) => this.reader.formulaAt(sheet, row, column) ?? values[down]?.[across] ?? ""),
    );
    const first = this.reader.valueAt(sheet, area.top, area.left);
    const message = isCellError(first) ? first.message : undefined;
    const address = sheetAddress(sheet.getName(), area);
    return { address, formulas, values, ...(message !== undefined && { message }) };
  }
}

/** Whole rows and columns end where the sheet ends. */
function areaOf({ startRow, endRow, startColumn, endColumn }: IRange, sheet: Worksheet): Area {
  return {
    top: startRow || 0,
    left: startColumn || 0,
    bottom: Number.isFinite(endRow) ? endRow : sheet.getRowCount() - 1,
    right: Number.isFinite(endColumn) ? endColumn : sheet.getColumnCount() - 1,
  };
}

function failed(what: string, thrown: unknown): HostError {
  const detail = thrown instanceof Error ? thrown.message : String(thrown);
  return new HostError(say.happened(what, detail), "GridRefused");
}

/** Lets the page show what is going on before the next piece of work. */
function painted(): Promise<void> {
  return new Promise((resolve) => requestAnimationFrame(() => setTimeout(resolve)));
}
