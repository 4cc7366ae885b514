import { LifecycleService } from "@univerjs/core";
import type { WorksheetFunction } from "../../functions/frame/declaration";
import { SetFormulaCalculationStartMutation } from "@univerjs/engine-formula";
import { ILayoutService } from "@univerjs/preset-sheets-core";
import { MessageBook } from "../engine/message-book";
import { CellReader } from "../engine/read-cells";
import { describeFunctions, registerFunctions } from "../engine/register-functions";
import { Autosave, type Notice } from "./kept/autosave";
import { BrowserHost } from "./browser-host";
import { ChartLayer } from "./charts/chart-layer";
import { refuseLargePastes } from "./grid/large-pastes";
import { currentPlan } from "./data/current-plan";
import { followLinks } from "./grid/links";
import { lockComputedCells } from "./grid/lock-cells";
import { OpenWorkbook } from "./open-workbook";
import { printedSheet, type PrintedSheet } from "./sheet-views/printed-sheet";
import { sayWhy } from "./grid/say-why";
import { sheetAsHtml } from "./sheet-views/sheet-table";
import { letRulesSeeSpills, refreshRulesOnSpills } from "./grid/rules-on-spills";
import { Shelf } from "./kept/shelf";
import { startGrid, type Grid } from "./grid/start-grid";
import { workbookFile } from "./kept/workbook-file";
import { Workbooks } from "./kept/workbooks";

const quietMilliseconds = 100;

export interface PageSettings {
  /** Id of the element that the grid fills. */
  readonly container: string;
  readonly dark: boolean;
  readonly functions: readonly WorksheetFunction[];
  /** Shows a sentence about keeping the workbook. */
  readonly notice: Notice;
}

/** The workbook of a page: its grid, and what the page around it may do with it. */
export class BrowserWorkbook {
  readonly host: BrowserHost;

  private constructor(
    private readonly grid: Grid,
    private readonly workbook: OpenWorkbook,
    private readonly reader: CellReader,
    private readonly charts: ChartLayer,
    /** All workbooks kept in this browser, the open one among them. */
    readonly workbooks: Workbooks,
    /** Whether no workbook had been kept when the page opened. */
    readonly isFirstVisit: boolean,
  ) {
    this.host = new BrowserHost(grid, workbook, reader);
  }

  /** Opens the workbook kept in this browser, or an empty one, and keeps it from then on. */
  static async open({ container, dark, functions, notice }: PageSettings): Promise<BrowserWorkbook> {
    letRulesSeeSpills();
    const grid = startGrid(container, dark);
    const messages = new MessageBook();
    const workbook = new OpenWorkbook(grid, messages);
    const shelf = new Shelf();
    const autosave = new Autosave(workbook, shelf, notice);
    const workbooks = new Workbooks(workbook, shelf, autosave);
    const isFirstVisit = !(await workbooks.showLast());
    const injector = grid.univer.__getInjector();
    describeFunctions(injector, functions);
    registerFunctions(injector, functions, messages);
    grid.api.addEvent(grid.api.Event.BeforeCommandExecute, ({ id }) => {
      if (id === SetFormulaCalculationStartMutation.id) messages.startCalculation();
    });
    const reader = new CellReader(injector, messages);
    const page = new BrowserWorkbook(
      grid,
      workbook,
      reader,
      new ChartLayer(grid, workbook, reader),
      workbooks,
      isFirstVisit,
    );
    followLinks(grid, workbook);
    refreshRulesOnSpills(grid, workbook);
    sayWhy(grid, workbook, reader);
    // After what is being kept: its own sentence would take the place of this one at once.
    refuseLargePastes(grid, (...said) => void autosave.settled().then(() => notice(...said)));
    workbook.onOpened(() => void lockComputedCells(grid, workbook));
    await workbook.calculated();
    await lockComputedCells(grid, workbook);
    autosave.watch(grid);
    return page;
  }

  /** Settles a moment after the grid is drawn, when it can be worked with. */
  async drawn(): Promise<void> {
    const { api } = this.grid;
    const lifecycle = this.grid.univer.__getInjector().get(LifecycleService);
    if (lifecycle.stage < api.Enum.LifecycleStages.Rendered) {
      await new Promise<void>((resolve) => {
        const listening = api.addEvent(api.Event.LifeCycleChanged, ({ stage }) => {
          if (stage < api.Enum.LifecycleStages.Rendered) return;
          listening.dispose();
          resolve();
        });
      });
    }
    await new Promise<void>((resolve) => setTimeout(resolve, quietMilliseconds));
  }

  /** The workbook as an .xlsx file, with everything typed and changed in the grid. */
  async file(): Promise<File> {
    const file = await workbookFile(currentPlan(this.workbook, this.reader), this.reader.readAll(this.workbook.model));
    this.workbooks.savedAsFile();
    return file;
  }

  /** The sheet in sight as plain HTML. */
  sheetAsHtml(): string {
    return sheetAsHtml(this.workbook, this.reader, this.charts.drawings());
  }

  /** A sheet as paper shows it; nothing where there is no such sheet. */
  printedSheet(name: string): PrintedSheet | undefined {
    return printedSheet(name, this.workbook, this.reader, this.charts);
  }

  setDark(dark: boolean): void {
    this.grid.api.toggleDarkMode(dark);
  }

  /** Puts the keyboard into the grid. */
  focus(): void {
    this.grid.univer.__getInjector().get(ILayoutService).focus();
  }
}
