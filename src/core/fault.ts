/**
 * What can be wrong with an input, as data. Formulas throw a FormulaError holding one of these; the wording is
 * in functions/frame/describe-fault.ts and nowhere else.
 */
export type Fault =
  | {
      readonly kind: "outOfRange";
      readonly argument: string;
      readonly received: number;
      readonly min: number;
      readonly max: number;
      readonly unit: string;
      /** A value the person may have meant, when the slip is a known one. */
      readonly suggestion?: string;
    }
  /** A percentage typed as a share: 0.155 for 15.5. */
  | { readonly kind: "percentSlip"; readonly argument: string; readonly received: number; readonly meant: number }
  /** A rate typed in percent points: 8 for 0.08. */
  | { readonly kind: "rateSlip"; readonly argument: string; readonly received: number }
  | {
      readonly kind: "unknownWord";
      readonly argument: string;
      readonly received: string;
      /** The nearest accepted words, best first. */
      readonly nearest: readonly string[];
      readonly accepted: readonly string[];
    }
  | { readonly kind: "notANumber"; readonly argument: string; readonly received: string; readonly unit: string }
  | { readonly kind: "tooFew"; readonly argument: string; readonly received: number; readonly atLeast: number }
  | {
      readonly kind: "sizesDiffer";
      readonly first: { readonly argument: string; readonly size: string };
      readonly second: { readonly argument: string; readonly size: string };
    }
  /** accepted: what the guide or method at hand takes there, in words, where the choice is its own. */
  | { readonly kind: "waiting"; readonly argument: string; readonly accepted?: string }
  | { readonly kind: "tooLarge"; readonly argument: string; readonly received: number; readonly max: number }
  | { readonly kind: "oneCellOnly"; readonly argument: string; readonly received: string }
  | { readonly kind: "notPublished"; readonly what: string; readonly where: string; readonly instead?: string }
  | { readonly kind: "refused"; readonly argument: string; readonly because: string }
  | { readonly kind: "noSolution"; readonly because: string };

/** A fault on its way from a formula to the edge of the cell. Only the function runner catches it. */
export class FormulaError extends Error {
  constructor(readonly fault: Fault) {
    super(JSON.stringify(fault));
    this.name = "FormulaError";
  }
}

/** Stops with a fault; reads as a statement at the place where something is refused. */
export function refuse(fault: Fault): never {
  throw new FormulaError(fault);
}

/**
 * Refuses what stands in one argument.
 *
 * @param argument the name as the sheet shows it
 * @param because a sentence that goes on from that name
 */
export function refuseArgument(argument: string, because: string): never {
  refuse({ kind: "refused", argument, because });
}

/**
 * Waits for a cell that is still blank.
 *
 * @param accepted what may stand there, in words, where the guide or method at hand has its own choice
 */
export function waitFor(argument: string, accepted?: string): never {
  refuse({ kind: "waiting", argument, ...(accepted !== undefined && { accepted }) });
}

/** An input that the method at hand cannot do without: its value, or else the fault that waits for it. */
export function needed<T>(argument: string, value: T | null | undefined, accepted?: string): T {
  return value ?? waitFor(argument, accepted);
}
