import {
  ICommandService,
  IUniverInstanceService,
  LifecycleService,
  LifecycleStages,
  LocaleType,
  Univer,
  UniverInstanceType,
  type Injector,
  type IWorkbookData,
  type Workbook,
} from "@univerjs/core";
import {
  LexerTreeBuilder,
  SetTriggerFormulaCalculationStartMutation,
  UniverFormulaEnginePlugin,
} from "@univerjs/engine-formula";
import { UniverSheetsPlugin } from "@univerjs/sheets";
import { CalculationMode, FormulaCalculationSessionService, UniverSheetsFormulaPlugin } from "@univerjs/sheets-formula";
import { UniverSheetsTablePlugin } from "@univerjs/sheets-table";

/** On a busy machine a calculation starts late; left to itself, the engine would hand out cells not yet worked out. */
const latestStartMs = 60_000;

export interface CalculationJob<Result> {
  readonly data: IWorkbookData;
  /** Called before the workbook opens. */
  readonly prepare: () => void;
  readonly read: (workbook: Workbook) => Result;
}

/**
 * A formula engine without a grid, for programs and beside the grid of a page. It works on one workbook at a time. The
 * grid's convenience layer is left alone here: once a page has loaded the grid, that layer asks for a screen.
 */
export class HeadlessEngine {
  readonly injector: Injector;
  private readonly univer: Univer;
  private line: Promise<unknown> = Promise.resolve();

  constructor() {
    const univer = new Univer({ locale: LocaleType.EN_US, locales: { [LocaleType.EN_US]: {} } });
    univer.registerPlugin(UniverFormulaEnginePlugin);
    univer.registerPlugin(UniverSheetsPlugin);
    univer.registerPlugin(UniverSheetsFormulaPlugin, { initialFormulaComputing: CalculationMode.FORCED });
    univer.registerPlugin(UniverSheetsTablePlugin);
    this.univer = univer;
    this.injector = univer.__getInjector();
    // The parts of the engine start with its first workbook.
    this.open({ id: "start" });
    // In a browser they wait for a screen to be drawn, of which there is none.
    this.injector.get(LifecycleService).stage = LifecycleStages.Rendered;
    this.close("start");
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
    const workbook = this.open(data);
    try {
      const applied = this.injector
        .get(FormulaCalculationSessionService)
        .waitForLatestApplied(undefined, latestStartMs);
      const all = { commands: [], forceCalculation: true };
      void this.injector
        .get(ICommandService)
        .executeCommand(SetTriggerFormulaCalculationStartMutation.id, all, { onlyLocal: true });
      await applied;
      return read(workbook);
    } finally {
      this.close(data.id);
    }
  }

  private open(data: Partial<IWorkbookData>): Workbook {
    return this.univer.createUnit<Partial<IWorkbookData>, Workbook>(UniverInstanceType.UNIVER_SHEET, data);
  }

  private close(id: string): void {
    this.injector.get(IUniverInstanceService).disposeUnit(id);
  }

  /**
   * The engine keeps formulas it has read by their text alone, with the addresses that their names stood for. Another
   * workbook may use the same names for other cells.
   */
  private forgetFormulas(): void {
    this.injector.get(LexerTreeBuilder).dispose();
  }
}
