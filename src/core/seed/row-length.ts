import { refuse } from "../fault";
import { within } from "../limit";
import { rowFootInchPerAcre } from "../units/units";
import { seedLimits } from "./seed-limits";

export interface RowLength {
  readonly feet: number;
  readonly wholeFeet: number;
  readonly restInches: number;
  readonly rowFeetPerAc: number;
}

/**
 * Feet of one row that make up a stated fraction of an acre.
 *
 *   522,720 / row width × fraction      row width in inches
 *
 * @source acre-geometry
 */
export function rowLength({ rowWidthIn, fractionOfAcre }: { rowWidthIn: number; fractionOfAcre: number }): RowLength {
  within("rowWidth", rowWidthIn, seedLimits.rowWidth);
  if (fractionOfAcre > 1) refuseUpsideDown(fractionOfAcre);
  within("fractionOfAcre", fractionOfAcre, seedLimits.fractionOfAcre);

  const rowFeetPerAc = rowFootInchPerAcre / rowWidthIn;
  const feet = rowFeetPerAc * fractionOfAcre;
  const inches = Math.round(Number((feet * 12).toPrecision(15))); // halves as a spreadsheet rounds them
  return { feet, wholeFeet: Math.floor(inches / 12), restInches: inches % 12, rowFeetPerAc };
}

/** 1000 typed for 1/1000. */
function refuseUpsideDown(received: number): never {
  const suggestion = Number((1 / received).toPrecision(6));
  const { min, max, unit } = seedLimits.fractionOfAcre;
  refuse({
    kind: "outOfRange",
    argument: "fractionOfAcre",
    received,
    min,
    max,
    unit,
    ...(suggestion >= min && { suggestion: String(suggestion) }),
  });
}
