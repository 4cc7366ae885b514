import type { Cited } from "../../reference/table";
import type { SourceKey } from "../../reference/sources";
import type { Argument, ValueOf } from "./arguments";
import type { CellIn, CellOut, Matrix } from "./cell";

/** The families of functions, in the order the documentation shows them. */
export const families = {
  nutrients: "Nutrients: what leaves, what comes, what stays",
  soil: "Soil: lime and nutrient need",
  materials: "Materials",
  seed: "Seed and stand",
  protection: "Crop protection",
  cover: "Cover, tillage and machinery",
  drainage: "Drainage",
  money: "Money",
  trials: "Trials",
  practices: "Practices",
  curves: "Response curves",
  harvest: "Harvest and grain",
  units: "Units and sources",
} as const;

export type Family = keyof typeof families;

/** One step behind a number. */
export interface WorkingLine {
  readonly label: string;
  readonly value: number | string;
  readonly unit: string;
}

export type Arguments = Readonly<Record<string, Argument>>;
export type ArgumentValues<A extends Arguments> = { readonly [Name in keyof A]: ValueOf<A[Name]> };

interface Common<A extends Arguments, Result> {
  /** Upper case, letters and digits, one or two trade words joined. Never changes after release. */
  readonly name: string;
  readonly family: Family;
  readonly summary: string;
  /** What a person would type to find it: "how much lime", "what does drying cost". */
  readonly asks?: readonly string[];
  readonly args: A;
  /** Publications the method or its numbers come from. */
  readonly sources: readonly SourceKey[];
  /** A call with its answer, worked by hand or printed in a source. Documentation shows it, tests run it. */
  readonly example: Example;
  /** Said once, where the number is used: labels, local rules, licensed practice. */
  readonly cautions?: readonly string[];
  readonly compute: (values: ArgumentValues<A>) => Result;
  /** The steps behind the number, for the pane and the documentation. */
  readonly working: (result: Result, values: ArgumentValues<A>) => readonly WorkingLine[];
  /** The table rows this very result rests on, with their marks. */
  readonly cites?: (result: Result) => readonly Cited[];
  /**
   * Every row the numbers may rest on, by guide (its label; null: all guides). For functions whose rows turn on
   * several words at once, which trying the words one at a time would miss.
   */
  readonly everyRow?: (guide: string | null) => readonly Cited[];
}

export interface Example {
  readonly call: readonly (CellIn | Matrix<CellIn>)[];
  readonly gives: number | string | Matrix<number | string>;
  /** Largest difference allowed, in the result's unit; 0.005 when left out. */
  readonly tolerance?: number;
  /** Where the answer comes from: "by hand: 200 × 0.27", or a printed case. */
  readonly because: string;
}

/** What value gives, by the shape that is returned. */
interface Answers {
  one: number | string | boolean;
  table: Matrix<CellOut>;
}

interface Declaration<A extends Arguments, Result, Shape extends keyof Answers> extends Common<A, Result> {
  readonly returns: { readonly shape: Shape; readonly unit: string; readonly says: string };
  readonly value: (result: Result, values: ArgumentValues<A>) => Answers[Shape];
}

/** One value a cell; ranges in its arguments are worked through and the answers spill. */
export type OneValueFunction<A extends Arguments, Result> = Declaration<A, Result, "one">;

/** A whole table from one call. */
export type TableFunction<A extends Arguments, Result> = Declaration<A, Result, "table">;

/** A declared function with its types forgotten, as the runner, registries and documentation use it. */
export type WorksheetFunction = OneValueFunction<any, any> | TableFunction<any, any>; // eslint-disable-line @typescript-eslint/no-explicit-any -- the one place where argument types are erased

/**
 * Declares a worksheet function. This is the only description of it: registration, metadata, input reading, error
 * sentences, documentation, forms and tests are all made from it.
 */
export function worksheetFunction<const A extends Arguments, Result, Shape extends keyof Answers>(
  declaration: Declaration<A, Result, Shape>,
): Declaration<A, Result, Shape> {
  return declaration;
}

/** A line of working. */
export function line(label: string, value: number | string, unit = ""): WorkingLine {
  return { label, value, unit };
}
