import { IUndoRedoService, type IWorkbookData, type Workbook } from "@univerjs/core";
import type { FWorkbook } from "@univerjs/sheets/facade";
import type { MessageBook } from "../engine/message-book";
import { HostError } from "../port";
import { memoryOf, withMemory } from "./data/page-memory";
import type { Grid } from "./grid/start-grid";
import { hostWords } from "../words";

/** Kept anew by the grid whenever a workbook opens; from saved data they would pile up. */
const rebuilt = new Set([
  "SHEET_RANGE_THEME_MODEL_PLUGIN",
  "SHEET_RANGE_PROTECTION_PLUGIN",
  "SHEET_AuthzIoMockService_PLUGIN",
]);

/** The one workbook that the grid shows; opening another closes it. */
export class OpenWorkbook {
  private readonly listeners = new Set<() => void>();

  constructor(
    private readonly grid: Grid,
    private readonly messages: MessageBook,
  ) {}

  /** Shows a workbook and waits until its formulas are calculated. What was done before cannot be undone after. */
  async open(data: IWorkbookData): Promise<void> {
    this.show(data);
    await this.calculated();
    for (const listener of this.listeners) listener();
  }

  /** Shows a workbook without waiting. */
  show(data: IWorkbookData): void {
    const { api, univer } = this.grid;
    const present = api.getActiveWorkbook();
    if (present) {
      api.disposeUnit(present.getId());
      univer.__getInjector().get(IUndoRedoService).clearUndoRedo(present.getId());
      this.messages.forget(present.getId());
    }
    api.createWorkbook(data);
  }

  /** Tells of every workbook opened from now on, once it is calculated. */
  onOpened(listener: () => void): void {
    this.listeners.add(listener);
  }

  async calculated(): Promise<void> {
    const formula = this.grid.api.getFormula();
    const applied = formula.onCalculationResultApplied();
    formula.executeCalculation();
    await applied;
  }

  /** The workbook as data, as it stands now. */
  snapshot(): IWorkbookData {
    const data = this.facade.save();
    return { ...data, resources: (data.resources ?? []).filter(({ name }) => !rebuilt.has(name)) };
  }

  /** Gives the workbook another title, without touching a cell. */
  rename(title: string): void {
    const data = this.model.getSnapshot();
    data.custom = withMemory(data, { ...memoryOf(data), title }).custom ?? {};
  }

  get facade(): FWorkbook {
    const workbook = this.grid.api.getActiveWorkbook();
    if (!workbook) throw new HostError(hostWords.browser.noWorkbook, "NoWorkbook");
    return workbook;
  }

  get model(): Workbook {
    return this.facade.getWorkbook();
  }
}
