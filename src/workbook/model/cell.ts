import type { Expression, Text } from "../formula/expression";
import type { StyleName } from "../plan";

/** What a cell of the model holds: a value, a formula, or words that may name a sheet. */
export type Content = number | boolean | Text | Expression;

/** What may be typed into an input, and the words that go with it. */
export type Allow =
  | {
      readonly kind: "list";
      /** The words themselves, or the key of a place or column that holds them ("crops.crop"). */
      readonly words: readonly string[] | { readonly table: string; readonly column: string };
      readonly prompt: string;
    }
  | {
      readonly kind: "between";
      readonly min: number;
      readonly max: number;
      readonly whole?: boolean;
      /** What the number is, with its unit; the range is added. */
      readonly prompt: string;
    };

/** A cell on its way to a sheet: style and format are decided, references are still keys. */
export interface ModelCell {
  readonly content?: Content;
  readonly style: StyleName;
  readonly format?: string;
  /** Key of the sheet that a click leads to. */
  readonly link?: string;
}

/** Number formats, written once. The "_)" leaves a little room before the words of the next column. */
export const formats = {
  whole: "#,##0_)",
  one: "#,##0.0_)",
  two: "#,##0.00_)",
  upToThree: "#,##0.0##_)",
  signedWhole: "+#,##0_);-#,##0_);0_)",
  signedOne: "+#,##0.0_);-#,##0.0_);0.0_)",
  dollars: "$#,##0_);-$#,##0_)",
  cents: "$#,##0.00_);-$#,##0.00_)",
  perPound: "$0.000_)",
  rate: "0.0%_)",
  chance: "0%_)",
  ph: "0.0_)",
  date: "yyyy-mm-dd",
  /** A day, or a year alone. */
  dateOrYear: "[<3000]0;yyyy-mm-dd",
} as const;
