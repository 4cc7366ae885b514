import type { Fault } from "../../core/fault";
import { trueMinus } from "../../core/true-minus";
import type { CellError, ErrorCode } from "./cell";
import { limitEnds } from "./limit-ends";
import { plainNumber } from "./plain-number";

/** The spreadsheet error that shows a fault, with the sentence that says what to do. */
export function errorFor(fault: Fault): CellError {
  return { code: codeOf(fault), message: describeFault(fault) };
}

/** Text reaches the person only for #VALUE! and #N/A; #NUM! is for sums that have no solution. */
function codeOf(fault: Fault): ErrorCode {
  switch (fault.kind) {
    case "waiting":
    case "notPublished":
      return "#N/A";
    case "noSolution":
      return "#NUM!";
    default:
      return "#VALUE!";
  }
}

/** The one place where a fault is put into words. */
export function describeFault(fault: Fault): string {
  switch (fault.kind) {
    case "outOfRange":
      return `${fault.argument} must be ${range(fault)}; got ${number(fault.received)}.${meant(fault.suggestion)}`;
    case "percentSlip":
      return `${fault.argument} is in percent: enter ${number(fault.meant)}, not ${number(fault.received)}.`;
    case "rateSlip":
      return `${fault.argument} is a rate: enter ${number(fault.received)} % as ${number(fault.received)}% or ${number(fault.received / 100)}.`;
    case "unknownWord":
      return `${fault.argument} "${fault.received}" is not known here.${nearest(fault.nearest, fault.accepted)}`;
    case "notANumber":
      return `${fault.argument} must be a number${fault.unit ? ` (${fault.unit})` : ""}; got "${fault.received}".`;
    case "tooFew":
      return `${fault.argument} needs at least ${fault.atLeast} ${fault.atLeast === 1 ? "value" : "values"}; got ${fault.received}.`;
    case "sizesDiffer":
      return `${fault.first.argument} (${fault.first.size}) and ${fault.second.argument} (${fault.second.size}) differ in size: give ranges of the same size, or one cell.`;
    case "waiting":
      return `waiting for ${fault.argument}${fault.accepted === undefined ? "" : `: ${fault.accepted}`}`;
    case "tooLarge":
      return `${fault.argument} has ${number(fault.received)} rows; the most is ${number(fault.max)}. Point to the filled rows instead of the whole column.`;
    case "oneCellOnly":
      return `${fault.argument} takes one cell; got a range of ${fault.received}.`;
    case "notPublished":
      return `not available: ${fault.where} publishes no ${fault.what}.${fault.instead ? ` ${fault.instead}` : ""}`;
    case "refused":
      return `${fault.argument}: ${fault.because}`;
    case "noSolution":
      return fault.because;
  }
}

function range(fault: { min: number; max: number; unit: string }): string {
  const { low, high, behind } = limitEnds(fault);
  return fault.max >= 1e9 ? `${low}${behind} or more` : `between ${low} and ${high}${behind}`;
}

function meant(suggestion: string | undefined): string {
  return suggestion === undefined ? "" : ` Did you mean ${suggestion}?`;
}

function nearest(near: readonly string[], accepted: readonly string[]): string {
  const words = accepted.length <= 8 ? accepted : near;
  return ` ${accepted.length <= 8 ? "Use" : "Nearest"}: ${words.join(", ")}.`;
}

function number(value: number): string {
  return trueMinus(plainNumber(value));
}
