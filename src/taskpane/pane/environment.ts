import type { WorkbookHost } from "../../hosts/port";

/** What surrounds the pane: which host it stands in, and what the page around it can do besides. */
export interface PaneEnvironment {
  readonly kind: WorkbookHost["kind"];
  /** Hands the workbook over as an .xlsx file; resolves with the name of the file. */
  readonly saveFile?: () => Promise<string>;
  /** Replaces the workbook by an empty one. The pane has asked the person before it calls this. */
  readonly startAnew?: () => Promise<void>;
  /** Where preferences are kept. May be missing or refuse: the pane then works without a memory. */
  readonly storage?: () => PreferenceStorage;
  /** Put in front of every key, where several pages share one storage. */
  readonly storagePrefix?: string;
}

/** The part of localStorage that the pane uses. */
export type PreferenceStorage = Pick<Storage, "getItem" | "setItem" | "removeItem">;
