import type { WorkbookHost } from "../../hosts/port";
import type { PrintedSheet } from "../../hosts/browser/sheet-views/printed-sheet";
import type { WorkbookPlan } from "../../workbook/plan";
import type { View } from "./state";

/** What surrounds the pane: which host it stands in, and what the page around it can do besides. */
export interface PaneEnvironment {
  readonly kind: WorkbookHost["kind"];
  /** Hands the workbook over as an .xlsx file; resolves with the name of the file. */
  readonly saveFile?: () => Promise<string>;
  /** The workbooks that the page keeps. */
  readonly workbooks?: KeptWorkbooks;
  /** Makes workbooks beside the open one, and hands several over at once. */
  readonly files?: ClientFiles;
  /** A sheet as paper shows it, where the page prints summaries. */
  readonly printedSheet?: (name: string) => PrintedSheet | undefined;
  /** Shows an example plan where the page keeps workbooks. */
  readonly example?: {
    /** Whether nothing stands in the open workbook and nothing is being typed into it. */
    isUntouched(): boolean;
    /** Puts the open workbook away; the example is kept once something in it is changed. */
    open(plan: WorkbookPlan): Promise<void>;
  };
  /** Settles when the page can be worked with; given only where nothing had been kept when it opened. */
  readonly firstVisit?: Promise<unknown>;
  /** Told which part of the pane is open. */
  readonly viewOpened?: (view: View) => void;
  /** Brings the grid in sight, where the page may be too narrow to show both. */
  readonly gridWanted?: () => void;
  /** What tells the open workbook from others; only where the page does not keep workbooks itself. */
  readonly workbookId?: () => Promise<string>;
  /** Loading with the workbook, kept in the workbook; only where the spreadsheet offers it. */
  readonly startup?: { isOn(): Promise<boolean>; set(on: boolean): Promise<void> };
  /** Where preferences are kept. May be missing or refuse: the pane then works without a memory. */
  readonly storage?: () => PreferenceStorage;
  /** Put in front of every key, where several pages share one storage. */
  readonly storagePrefix?: string;
}

/** Workbooks kept by the page, one of them open. Each step rejects with a HostError where it cannot be done. */
export interface KeptWorkbooks {
  /** Newest first. */
  list(): Promise<readonly KeptWorkbook[]>;
  open(id: string): Promise<void>;
  /** Opens an empty one; the present one stays in the list. */
  add(): Promise<void>;
  /** Opens an .xlsx file as another workbook; tells what of it has no place here, in words. */
  openFile(file: File): Promise<{ readonly title: string; readonly leftOut: readonly string[] }>;
  /** Renames the open one. */
  rename(title: string): Promise<void>;
  /** The pane has asked the person before it calls this. */
  remove(id: string): Promise<void>;
}

export interface KeptWorkbook {
  readonly id: string;
  readonly title: string;
  /** When it was last written, milliseconds since 1970. */
  readonly changed: number;
  readonly isOpen: boolean;
}

/** Workbooks made as files, where a page can hand files over. */
export interface ClientFiles {
  make(plan: WorkbookPlan): Promise<File>;
  /** Hands all of them over in one zip; resolves with its name. */
  handOver(files: readonly File[], name: string): Promise<string>;
}

/** The part of localStorage that the pane uses. */
export type PreferenceStorage = Pick<Storage, "getItem" | "setItem" | "removeItem">;
