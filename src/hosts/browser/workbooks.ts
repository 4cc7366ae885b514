import type { WorkbookPlan } from "../../workbook/plan";
import { HostError } from "../port";
import type { Autosave } from "./autosave";
import type { OpenWorkbook } from "./open-workbook";
import type { Shelf, ShelfEntry } from "./shelf";
import { readFile } from "./workbook-file";
import { emptyWorkbook, isPristine, withPlan } from "./workbook-parts";
import { hostWords } from "../words";

const say = hostWords.browser;

export interface ListedWorkbook extends ShelfEntry {
  readonly isOpen: boolean;
}

/** The workbooks kept in this browser: one of them is open. */
export class Workbooks {
  constructor(
    private readonly workbook: OpenWorkbook,
    private readonly shelf: Shelf,
    private readonly autosave: Autosave,
  ) {}

  /**
   * Shows the workbook that was open last; an empty one where there is none or it cannot be read.
   *
   * @returns whether any is kept, readable or not
   */
  async showLast(): Promise<boolean> {
    const last = await this.autosave.last();
    this.workbook.show(last ?? emptyWorkbook());
    const kept = await this.shelf.entries().catch(() => []);
    return kept.length > 0;
  }

  /** Whether nothing stands in the open workbook and nothing is being typed into it. */
  isUntouched(): boolean {
    return isPristine(this.workbook.snapshot()) && !this.workbook.facade.isCellEditing();
  }

  /** Puts the open workbook away and opens an example, which is kept only once something in it is changed. */
  async openExample(plan: WorkbookPlan): Promise<void> {
    const data = withPlan(emptyWorkbook(), plan, false);
    await this.autosave.turnToNew({ isExample: true });
    await this.workbook.open(data);
  }

  /** Newest first. */
  async list(): Promise<ListedWorkbook[]> {
    await this.autosave.settled();
    const entries = await this.allowed(() => this.shelf.entries());
    return entries.map((entry) => ({ ...entry, isOpen: entry.id === this.autosave.id }));
  }

  /** Puts the open workbook away and opens another. The first stays open when the other cannot be read. */
  async open(id: string): Promise<void> {
    if (id === this.autosave.id) return;
    const data = await this.allowed(() => this.autosave.turnTo(id));
    if (!data) throw new HostError(say.cannotRead, "CannotRead");
    await this.workbook.open(data);
  }

  /** Puts the open workbook away and opens an empty one. */
  async add(): Promise<void> {
    await this.autosave.turnToNew();
    await this.workbook.open(emptyWorkbook());
  }

  /**
   * Puts the open workbook away and opens a file in its place; nothing changes when it cannot be read.
   *
   * @returns its title, and what of the file has no place here, in words
   */
  async openFile(file: File): Promise<{ title: string; leftOut: readonly string[] }> {
    const { plan, leftOut } = await readFile(file);
    const data = withPlan(emptyWorkbook(), plan, false);
    await this.autosave.turnToNew();
    await this.workbook.open(data);
    return { title: plan.title, leftOut };
  }

  /** Gives the open workbook another title. */
  async rename(title: string): Promise<void> {
    this.workbook.rename(title);
    await this.autosave.writeNow();
  }

  /** Takes a workbook that is not open out of this browser, without asking. */
  async remove(id: string): Promise<void> {
    if (id === this.autosave.id) throw new HostError(say.removesOpen, "IsOpen");
    await this.allowed(() => this.shelf.remove(id));
  }

  private async allowed<Result>(work: () => Promise<Result>): Promise<Result> {
    try {
      return await work();
    } catch (cause) {
      throw new HostError(say.noStorage, "NoStorage", {
        cause,
      });
    }
  }
}
