import { update, get } from "idb-keyval";
import { CommandType, type IWorkbookData } from "@univerjs/core";
import type { OpenWorkbook } from "./open-workbook";
import type { Grid } from "./start-grid";

const key = "loamsheet-workbook";
const quietMilliseconds = 400;

interface Kept {
  /** Counts up with every write, so that two pages notice each other. */
  readonly version: number;
  readonly workbook: IWorkbookData;
}

/** Where sentences about keeping the workbook are shown. */
export type Notice = (sentence: string, needsAttention: boolean) => void;

/** Keeps the workbook in this browser, a moment after each change, and brings it back when the page opens. */
export class Autosave {
  private version = 0;
  private timer: ReturnType<typeof setTimeout> | undefined;
  private pending = false;
  private writing: Promise<void> = Promise.resolve();

  constructor(
    private readonly workbook: OpenWorkbook,
    private readonly notice: Notice,
  ) {}

  /** The workbook kept last time, if any. */
  async kept(): Promise<IWorkbookData | undefined> {
    try {
      const kept = await get<Kept>(key);
      this.version = kept?.version ?? 0;
      return kept?.workbook;
    } catch {
      this.notice(cannotKeep, true);
      return undefined;
    }
  }

  /** Starts watching for changes. */
  watch({ api }: Grid): void {
    api.addEvent(api.Event.CommandExecuted, ({ id, type }) => {
      if (type === CommandType.MUTATION && !id.startsWith("formula.")) this.soon();
    });
    this.workbook.onOpened(() => this.write());
    addEventListener("pagehide", () => this.flush());
    document.addEventListener("visibilitychange", () => document.hidden && this.flush());
  }

  /** Writes now what is waiting to be written. */
  flush(): void {
    if (this.pending) this.write();
  }

  private soon(): void {
    this.pending = true;
    clearTimeout(this.timer);
    this.timer = setTimeout(() => this.write(), quietMilliseconds);
  }

  /** One after another: two writes at once would take each other for another tab. */
  private write(): void {
    this.pending = false;
    clearTimeout(this.timer);
    this.writing = this.writing.then(() => this.writeNow());
  }

  private async writeNow(): Promise<void> {
    try {
      const workbook = this.workbook.snapshot();
      let conflict = false;
      await update<Kept>(key, (kept) => {
        conflict = kept !== undefined && kept.version !== this.version;
        return conflict && kept ? kept : { version: this.version + 1, workbook };
      });
      if (!conflict) this.version += 1;
      this.notice(conflict ? openElsewhere : "Kept in this browser.", conflict);
    } catch {
      this.notice(cannotKeep, true);
    }
  }
}

const cannotKeep =
  "This browser has no room to keep the workbook, or does not allow it. Nothing is lost while the page is open: save a file before you leave.";
const openElsewhere =
  "Another tab keeps its own changes to this workbook, so changes here are not kept. Save a file, or close one of the two and reload.";
