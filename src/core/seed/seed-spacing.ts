import { within } from "../limit";
import { inchPerFoot, rowFootInchPerAcre } from "../units/units";
import { seedLimits } from "./seed-limits";

export interface SeedSpacing {
  readonly spacingIn: number;
  readonly seedsPerFoot: number;
  readonly rowFeetPerAc: number;
}

/**
 * Distance between seeds in the row.
 *
 *   12 × 522,720 / (rate × row width)      row width in inches; 522,720 = 43,560 × 12
 *
 * Twin rows: use the width from pair to pair; the spacing is then that of both lines taken together.
 *
 * @source acre-geometry
 */
export function seedSpacing({ seedsPerAc, rowWidthIn }: { seedsPerAc: number; rowWidthIn: number }): SeedSpacing {
  within("rate", seedsPerAc, seedLimits.seedRate);
  within("rowWidth", rowWidthIn, seedLimits.rowWidth);

  const rowFeetPerAc = rowFootInchPerAcre / rowWidthIn;
  return {
    spacingIn: (inchPerFoot * rowFeetPerAc) / seedsPerAc,
    seedsPerFoot: seedsPerAc / rowFeetPerAc,
    rowFeetPerAc,
  };
}
