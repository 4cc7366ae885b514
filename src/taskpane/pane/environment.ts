import type { WorkbookHost } from "../../hosts/port";

/** What surrounds the pane: which host it stands in, and what the page around it can do besides. */
export interface PaneEnvironment {
  readonly kind: WorkbookHost["kind"];
  /** Hands the workbook over as an .xlsx file; resolves with the name of the file. */
  readonly saveFile?: () => Promise<string>;
  /** The workbooks that the page keeps. */
  readonly workbooks?: KeptWorkbooks;
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

/** The part of localStorage that the pane uses. */
export type PreferenceStorage = Pick<Storage, "getItem" | "setItem" | "removeItem">;
