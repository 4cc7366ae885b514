import "@univerjs/engine-formula/facade";
import "@univerjs/sheets/facade";
import "@univerjs/sheets-formula/facade";
import { LocaleType, Univer, type Injector, type IWorkbookData } from "@univerjs/core";
import { FUniver } from "@univerjs/core/facade";
import { LexerTreeBuilder, UniverFormulaEnginePlugin } from "@univerjs/engine-formula";
import type { FWorkbook } from "@univerjs/sheets/facade";
import { UniverSheetsPlugin } from "@univerjs/sheets";
import { CalculationMode, UniverSheetsFormulaPlugin } from "@univerjs/sheets-formula";
import { UniverSheetsTablePlugin } from "@univerjs/sheets-table";

export interface CalculationJob<Result> {
  readonly data: IWorkbookData;
  /** Called before the workbook opens. */
  readonly prepare: () => void;
  readonly read: (workbook: FWorkbook) => Result;
}

/** A formula engine without a page. It works on one workbook at a time. */
export class HeadlessEngine {
  readonly injector: Injector;
  private readonly api: FUniver;
  private line: Promise<unknown> = Promise.resolve();

  constructor() {
    const univer = new Univer({ locale: LocaleType.EN_US, locales: { [LocaleType.EN_US]: {} } });
    univer.registerPlugin(UniverFormulaEnginePlugin);
    univer.registerPlugin(UniverSheetsPlugin);
    univer.registerPlugin(UniverSheetsFormulaPlugin, { initialFormulaComputing: CalculationMode.FORCED });
    univer.registerPlugin(UniverSheetsTablePlugin);
    this.injector = univer.__getInjector();
    this.api = FUniver.newAPI(univer);
    // The parts of the engine start with its first workbook.
    this.api.createWorkbook({ id: "start" });
    this.api.disposeUnit("start");
  }

  /** Opens a workbook, calculates it, lets it be read and closes it; later jobs wait for earlier ones. */
  run<Result>(job: CalculationJob<Result>): Promise<Result> {
    const turn = this.line.then(() => this.take(job));
    this.line = turn.catch(() => undefined);
    return turn;
  }

  private async take<Result>({ data, prepare, read }: CalculationJob<Result>): Promise<Result> {
    prepare();
    this.forgetFormulas();
    const workbook = this.api.createWorkbook(data);
    try {
      const formula = this.api.getFormula();
      const applied = formula.onCalculationResultApplied();
      formula.executeCalculation();
      await applied;
      return read(workbook);
    } finally {
      this.api.disposeUnit(data.id);
    }
  }

  /**
   * The engine keeps formulas it has read by their text alone, with the addresses that their names stood for. Another
   * workbook may use the same names for other cells.
   */
  private forgetFormulas(): void {
    this.injector.get(LexerTreeBuilder).dispose();
  }
}
