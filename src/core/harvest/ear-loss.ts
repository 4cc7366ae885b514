import { within } from "../limit";
import { inchPerFoot, squareFootPerAcre } from "../units/units";
import { earLoss as earLossTable } from "../../reference/harvest/loss-crops";
import type { Cited } from "../../reference/table";
import { harvestLimits } from "./harvest-limits";

export interface DroppedEars {
  readonly ears: number;
  readonly rows: number;
  readonly rowWidthIn: number;
  /** null: the length that makes a hundredth of an acre. */
  readonly walkedFt: number | null;
}

export interface EarLoss {
  readonly lossBuPerAc: number;
  /** Feet to walk for a hundredth of an acre. */
  readonly hundredthFt: number;
  readonly walkedFt: number;
  readonly earLb: number;
  readonly cited: readonly Cited[];
}

/**
 * Bushels an acre of corn lost as whole ears: an ear of three quarters of a pound on a hundredth of an acre is one.
 *
 *   ears × (43,560 / 100) / ground walked      feet for a hundredth = 435.6 / (rows × row width)
 *
 * @source missouri-g1290
 */
export function earLoss({ ears, rows, rowWidthIn, walkedFt }: DroppedEars): EarLoss {
  within("ears", ears, harvestLimits.ears);
  within("rows", rows, harvestLimits.harvestRows);
  within("rowWidth", rowWidthIn, harvestLimits.rowWidth);
  if (walkedFt !== null) within("feet", walkedFt, harvestLimits.walked);
  const [rule] = earLossTable.rows;

  const hundredthFt = (squareFootPerAcre * rule.fractionOfAcre) / (rows * (rowWidthIn / inchPerFoot));
  const walked = walkedFt ?? hundredthFt;
  return {
    lossBuPerAc: (ears * hundredthFt) / walked,
    hundredthFt,
    walkedFt: walked,
    earLb: rule.earLb,
    cited: [rule],
  };
}
