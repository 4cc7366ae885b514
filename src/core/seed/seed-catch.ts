import { within } from "../limit";
import { gramPerPound, inchPerFoot, squareFootPerAcre } from "../units/units";
import { seedLimits } from "./seed-limits";

export interface SeedCatchInput {
  readonly grams: number;
  readonly rows: number;
  readonly rowWidthIn: number;
  readonly feet: number;
}

export interface SeedCatch {
  readonly poundsPerAc: number;
  readonly poundsCaught: number;
  readonly groundSqFt: number;
}

/**
 * Seeding rate from seed caught under a drill over a measured run.
 *
 *   pounds caught / (rows × row width / 12 × feet) × 43,560
 *
 * @source drill-catch
 */
export function seedCatch({ grams, rows, rowWidthIn, feet }: SeedCatchInput): SeedCatch {
  within("grams", grams, seedLimits.grams);
  within("rows", rows, seedLimits.drillRows);
  within("rowWidth", rowWidthIn, seedLimits.rowWidth);
  within("feet", feet, seedLimits.catchFeet);

  const poundsCaught = grams / gramPerPound;
  const groundSqFt = (rows * rowWidthIn * feet) / inchPerFoot;
  return { poundsPerAc: (poundsCaught / groundSqFt) * squareFootPerAcre, poundsCaught, groundSqFt };
}
