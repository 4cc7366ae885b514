import type { Expression, Text } from "../formula/expression";
import type { Block } from "./block";

/** A starter workbook as data: what it says and works out, without saying where. */
export interface WorkbookModel {
  readonly starter: string;
  readonly title: string;
  /** Whose sheets these are, where a workbook holds several such models; stands before every sheet name. */
  readonly group?: string;
  readonly sheets: readonly SheetModel[];
}

export interface SheetModel {
  /** How references and the code call it; the name is for people. */
  readonly key: string;
  readonly name: string;
  readonly tabColor: string;
  /** First row of the sheet. */
  readonly title: Text | Expression;
  /** Second row: the question this sheet answers. */
  readonly answers: Text | Expression;
  readonly blocks: readonly Block[];
  /** Widths by column where the blocks' own are not wanted, in characters. */
  readonly widths?: readonly number[];
  /** Table whose header stays in sight, with this many columns. */
  readonly freeze?: { readonly table: string; readonly columns: number };
  readonly print: {
    readonly orientation: "portrait" | "landscape";
    /** All on one page; otherwise one page wide and as tall as needed. */
    readonly onePage?: boolean;
  };
}
