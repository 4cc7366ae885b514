import { CommandType, type IWorkbookData } from "@univerjs/core";
import { HostError } from "../../port";
import type { OpenWorkbook } from "../open-workbook";
import type { Shelf } from "./shelf";
import type { Grid } from "../grid/start-grid";
import { contentsOf, isPristine, isWorkbook, titleOf } from "../data/workbook-parts";
import { hostWords } from "../../words";

const say = hostWords.browser;

const quietMilliseconds = 400;

/** Where sentences about keeping the workbook are shown. */
export type Notice = (sentence: string, needsAttention: boolean) => void;

/** Keeps the open workbook in this browser, a moment after each change, and brings it back when the page opens. */
export class Autosave {
  private open: { id: string; version: number; example?: { contents?: string } } = { id: newId(), version: 0 };
  private timer: ReturnType<typeof setTimeout> | undefined;
  private pending = false;
  private writing: Promise<void> = Promise.resolve();
  /** Whether what stands in the grid stands nowhere else. */
  private isOnlyHere = false;

  constructor(
    private readonly workbook: OpenWorkbook,
    private readonly shelf: Shelf,
    private readonly notice: Notice,
  ) {}

  /** Which of the kept workbooks is open. */
  get id(): string {
    return this.open.id;
  }

  /** The workbook that was open last, if any is kept. */
  async last(): Promise<IWorkbookData | undefined> {
    try {
      const entries = await this.shelf.entries();
      const last = this.shelf.lastOpen();
      const entry = entries.find(({ id }) => id === last) ?? entries[0];
      const workbook = entry && (await this.turnTo(entry.id));
      if (entry && !workbook) this.notice(say.cannotRead, true);
      return workbook;
    } catch {
      this.notice(say.cannotKeep, true);
      return undefined;
    }
  }

  /** Stops before another workbook takes the place of one that stands nowhere else. */
  async refuseLoss(): Promise<void> {
    await this.settled();
    if (this.isOnlyHere) throw new HostError(say.wouldBeLost, "NotKept");
  }

  /** What stands in the grid was handed over as a file. */
  savedAsFile(): void {
    this.isOnlyHere = false;
  }

  /** Remembers which workbook is kept now; the answer turns back to it. */
  bookmark(): () => void {
    const { open } = this;
    return () => {
      this.open = open;
      this.shelf.rememberOpen(open.id);
    };
  }

  /** From now on this workbook is the one that is kept; nothing changes when it cannot be read. */
  async turnTo(id: string): Promise<IWorkbookData | undefined> {
    await this.settled();
    const kept = await this.shelf.read(id);
    if (!kept || !isWorkbook(kept.workbook)) return undefined;
    this.open = { id, version: kept.version };
    this.shelf.rememberOpen(id);
    return kept.workbook;
  }

  /**
   * From now on a workbook not kept yet is the one that is kept.
   *
   * @param isExample whether it is kept only once something in it was changed
   */
  async turnToNew(workbook: IWorkbookData, { isExample = false } = {}): Promise<IWorkbookData> {
    await this.settled();
    this.open = { id: newId(), version: 0, ...(isExample && { example: {} }) };
    this.shelf.rememberOpen(this.open.id);
    return workbook;
  }

  /** The kept workbook turned to last cannot be shown: it is left as it is, and another is kept from now on. */
  leaveUnread(): void {
    this.open = { id: newId(), version: 0 };
    this.notice(say.cannotRead, true);
  }

  /** Starts watching for changes. */
  watch({ api }: Grid): void {
    api.addEvent(api.Event.CommandExecuted, ({ id, type }) => {
      if (type === CommandType.MUTATION && !id.startsWith("formula.")) this.soon();
    });
    this.workbook.onOpened(() => this.write());
    addEventListener("pagehide", () => this.flush());
    addEventListener("beforeunload", (event) => this.isOnlyHere && event.preventDefault());
    document.addEventListener("visibilitychange", () => document.hidden && this.flush());
  }

  /** Writes now what is waiting to be written. */
  flush(): void {
    if (this.pending) this.write();
  }

  /** Resolves when everything is written. */
  settled(): Promise<void> {
    this.flush();
    return this.writing;
  }

  /** Writes whether or not anything changed; resolves when it is done. */
  async writeNow(): Promise<void> {
    this.write();
    await this.writing;
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
    this.writing = this.writing.then(() => this.writeOne());
  }

  private async writeOne(): Promise<void> {
    try {
      const workbook = this.workbook.snapshot();
      const { open } = this;
      // An empty workbook is worth a place once something is in it, an example once it is changed.
      if (open.version === 0 && (isPristine(workbook) || isAsGiven(open.example, workbook))) {
        this.isOnlyHere = false;
        return;
      }
      const isKept = await this.shelf.write(open.id, { version: open.version, workbook }, titleOf(workbook));
      if (isKept) open.version += 1;
      this.isOnlyHere = !isKept;
      this.notice(isKept ? say.kept : say.openElsewhere, !isKept);
    } catch {
      this.isOnlyHere = true;
      this.notice(say.cannotKeep, true);
    }
  }
}

/** Whether an example is as it was when it was first looked at, right after it opened. */
function isAsGiven(example: { contents?: string } | undefined, workbook: IWorkbookData): boolean {
  if (!example) return false;
  const contents = contentsOf(workbook);
  example.contents ??= contents;
  return example.contents === contents;
}

function newId(): string {
  return crypto.getRandomValues(new Uint32Array(3)).join("-");
}
