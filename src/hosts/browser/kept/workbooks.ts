import type { IWorkbookData } from "@univerjs/core";
import type { WorkbookPlan } from "../../../workbook/plan";
import { HostError } from "../../port";
import type { Autosave } from "./autosave";
import type { OpenWorkbook } from "../open-workbook";
import type { Shelf, ShelfEntry } from "./shelf";
import { readFile } from "./workbook-file";
import { emptyWorkbook, isPristine, withPlan } from "../data/workbook-parts";
import { hostWords } from "../../words";

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
    if (!this.isShown(last ?? emptyWorkbook())) {
      this.autosave.leaveUnread();
      this.workbook.show(emptyWorkbook());
    }
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
    await this.replace(() => this.autosave.turnToNew(data, { isExample: true }));
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
    await this.replace(async () => {
      const data = await this.allowed(() => this.autosave.turnTo(id));
      if (!data) throw new HostError(say.cannotRead, "CannotRead");
      return data;
    });
  }

  /** Puts the open workbook away and opens an empty one. */
  async add(): Promise<void> {
    await this.replace(() => this.autosave.turnToNew(emptyWorkbook()));
  }

  /**
   * Puts the open workbook away and opens a file in its place; nothing changes when it cannot be read.
   *
   * @returns its title, and what of the file has no place here, in words
   */
  async openFile(file: File): Promise<{ title: string; leftOut: readonly string[] }> {
    const { plan, leftOut } = await readFile(file);
    await this.replace(() => this.autosave.turnToNew(withPlan(emptyWorkbook(), plan, false)));
    return { title: plan.title, leftOut };
  }

  /** The open workbook was handed over as a file: it may make way for another even where nothing can be kept. */
  savedAsFile(): void {
    this.autosave.savedAsFile();
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

  /**
   * Opens another workbook in place of the present one, which has to be kept somewhere, and comes back when the other
   * cannot be shown.
   *
   * @param turn says from when on another workbook is the one to keep, and gives it
   */
  private async replace(turn: () => Promise<IWorkbookData>): Promise<void> {
    await this.autosave.refuseLoss();
    const before = this.workbook.snapshot();
    const turnBack = this.autosave.bookmark();
    const data = await turn();
    try {
      await this.workbook.open(data);
    } catch (cause) {
      turnBack();
      await this.workbook.open(before);
      throw new HostError(say.cannotShow, "CannotShow", { cause });
    }
  }

  private isShown(data: IWorkbookData): boolean {
    try {
      this.workbook.show(data);
      return true;
    } catch {
      return false;
    }
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
