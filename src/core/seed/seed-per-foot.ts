import { within } from "../limit";
import { inchPerFoot, rowFootInchPerAcre, squareFootPerAcre } from "../units/units";
import { seedLimits } from "./seed-limits";

export interface SeedPerFoot {
  readonly seedsPerFoot: number;
  readonly seedsPerSqFt: number;
  /** Inches of row that stand for one square foot. */
  readonly rowInchesPerSqFt: number;
  readonly seedsPerThousandthAc: number;
}

/**
 * Seeds in a foot of row.
 *
 *   rate × row width / 522,720      row width in inches
 *
 * @source acre-geometry
 */
export function seedPerFoot({ seedsPerAc, rowWidthIn }: { seedsPerAc: number; rowWidthIn: number }): SeedPerFoot {
  within("rate", seedsPerAc, seedLimits.seedRate);
  within("rowWidth", rowWidthIn, seedLimits.rowWidth);

  return {
    seedsPerFoot: (seedsPerAc * rowWidthIn) / rowFootInchPerAcre,
    seedsPerSqFt: seedsPerAc / squareFootPerAcre,
    rowInchesPerSqFt: inchPerFoot ** 2 / rowWidthIn,
    seedsPerThousandthAc: seedsPerAc / 1000,
  };
}
