import type { WorkbookReading } from "../workbook/findings";
import type { WorkbookPlan } from "../workbook/plan";
import type { TakenNames } from "../workbook/taken-names";

/** The value of a cell as a host reports it. A spreadsheet error comes as its code, such as "#N/A". */
export type HostValue = number | string | boolean | null;

/** One cell or range as the person sees it. */
export interface HostRange {
  /** Address with its sheet, such as "Fields!B7" or "'Potash plan'!C3:D9". */
  readonly address: string;
  readonly formulas: readonly (readonly (string | number | boolean)[])[];
  readonly values: readonly (readonly HostValue[])[];
  /** The sentence behind an error of ours in the first cell, where the host can tell. */
  readonly message?: string;
}

/** What a fill added, so that it can be taken away again. */
export interface FillReceipt {
  readonly starter: string;
  readonly sheets: readonly string[];
  readonly names: readonly string[];
  /** What this host could not do, a sentence each; missing when it did everything. */
  readonly leftOut?: readonly string[];
}

export interface FillProgress {
  /** 0 to 1. */
  readonly share: number;
  /** What is being written, in words a person understands. */
  readonly doing: string;
}

export type { TakenNames };

export interface FillOptions {
  /** Locks computed cells (no password). Off unless the person asked for it. */
  readonly protect: boolean;
  readonly onProgress?: (progress: FillProgress) => void;
}

/** Cells to write, with the top left one at the address of the first. */
export interface WrittenBlock {
  /** One cell or a range of the size of the rows, with its sheet, such as "'Quick what if'!B6". */
  readonly address: string;
  /** Rows of equal length; null leaves a cell empty. */
  readonly rows: readonly (readonly WrittenCell[])[];
}

export type WrittenCell = number | string | boolean | { readonly formula: string } | null;

/** What a write may take the place of: nothing at all, typed values and blanks but no formula, or formulas as well. */
export type MayReplace = "nothing" | "typedValues" | "formulas";

/** What the pane can tell about the spreadsheet it stands in. */
export interface HostFacts {
  /** The spreadsheet with its version, such as "Excel 16.0.18, desktop on Windows". */
  readonly program: string;
  /** Names of our functions that were handed to it. */
  readonly functions: readonly string[];
  /** What it cannot do, a sentence each. */
  readonly missing: readonly string[];
}

/** A failure of the host, worded for the person: what happened and what to do about it. */
export class HostError extends Error {
  constructor(
    message: string,
    readonly code: string,
    /** What was thrown below, for whoever looks for the reason. */
    options?: { readonly cause: unknown },
  ) {
    super(message, options);
    this.name = "HostError";
  }
}

/**
 * All that the task pane may ask of a spreadsheet. One implementation per host; nothing above this line knows
 * which one it talks to.
 */
export interface WorkbookHost {
  readonly kind: "excel" | "browser";
  taken(): Promise<TakenNames>;
  /** Adds the plan's sheets after those that exist and shows the first. Never touches an existing sheet;
   *  when anything fails, whatever was added is removed and a HostError says why. */
  fill(plan: WorkbookPlan, options: FillOptions): Promise<FillReceipt>;
  /** Takes away what a fill added, as far as it is still there. */
  remove(receipt: FillReceipt): Promise<void>;
  readSelection(): Promise<HostRange>;
  /** Reads an A1 reference with or without a sheet, a defined name, or the body of a table column written
   *  Table[Column], where an apostrophe makes the next character an ordinary one. */
  read(reference: string): Promise<HostRange>;
  /** Writes a formula into the selected cell; refuses when that cell is not empty. */
  insertFormula(formula: string): Promise<void>;
  /** Writes all blocks or, when one cell holds what may not be replaced, none; a HostError names that cell. The host
   *  keeps it as one step for its Undo, where it has one for add-ins. */
  write(blocks: readonly WrittenBlock[], mayReplace: MayReplace): Promise<void>;
  /** Brings cells in sight and selects them; takes what read takes. */
  show(reference: string): Promise<void>;
  /** Reads the used cells of every sheet in sight, with tables and names, in as few requests as their size allows. */
  readSheets(): Promise<WorkbookReading>;
  facts(): Promise<HostFacts>;
  onSelectionChange(listener: () => void): Promise<void>;
}
