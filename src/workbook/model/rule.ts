import type { Expression } from "../formula/expression";
import type { RuleLook } from "../plan";

/**
 * A conditional format of a column or a grid. A formula is written for the first row; references to columns of
 * the same row become addresses there, since tables cannot be named inside a conditional format.
 */
export type ModelRule =
  | {
      readonly kind: "compare";
      readonly when: "below" | "above" | "atLeast" | "atMost";
      readonly value: number;
      readonly look: RuleLook;
    }
  | { readonly kind: "formula"; readonly formula: Expression; readonly look: RuleLook }
  | { readonly kind: "bar"; readonly color: string }
  | {
      readonly kind: "scale";
      readonly low: string;
      readonly middle: string;
      readonly high: string;
      readonly middleAt?: number;
    };
