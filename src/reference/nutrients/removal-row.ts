import type { CropKey } from "../crops";
import type { Cited } from "../table";
import type { NutrientKey } from "./nutrients";
import type { SinglePart } from "./parts";
import type { RemovalSetKey } from "./removal-sets";

/** What one unit of a harvested part carries off. A nutrient that is not listed was not published. */
export interface RemovalRow extends Cited {
  readonly crop: CropKey;
  readonly part: SinglePart;
  readonly set: RemovalSetKey;
  /** The row taken when nobody names a set: one per crop and part. */
  readonly usual?: true;
  /** What the pounds are counted on. */
  readonly unit: "bu" | "ton" | "cwt" | "bale" | "cwt of seed cotton" | "bu of grain";
  /** Moisture of that unit, % of wet weight; null where the source says only "as baled" or nothing. */
  readonly moisturePct: number | null;
  /** lb of nutrient per unit. */
  readonly lb: Readonly<Partial<Record<NutrientKey, number>>>;
  /** Nutrients of a V row that come from memory. */
  readonly fromMemory?: readonly NutrientKey[];
  /** Nutrients of an M row that were seen in print. */
  readonly seen?: readonly NutrientKey[];
}
