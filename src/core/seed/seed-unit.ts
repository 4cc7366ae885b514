import { refuse, waitFor } from "../fault";
import { within } from "../limit";
import type { CropKey } from "../../reference/crops";
import { seedUnits, type SeedUnitRow } from "../../reference/seed/seed-units";
import { seedLimits } from "./seed-limits";

/** How much seed a unit holds: counted by the person, or the trade's unit of a crop. */
export type UnitSize = { readonly seedsPerUnit: number } | { readonly crop: CropKey };

export interface SeedUnit {
  readonly seedsPerUnit: number;
  /** The published unit, when a crop was named. */
  readonly published?: SeedUnitRow;
}

/** What the question about a missing unit size says; no crop is assumed. */
export function askForUnitSize(): string {
  const units = seedUnits.rows.map((row) => `${row.crop} ${row.seedsPerUnit.toLocaleString("en-US")}`);
  return `seedsPerUnit (seeds in one unit, or the crop: ${units.join(", ")})`;
}

/** Seeds in a unit; a crop without a counted trade unit (small grains are sold by weight) is refused. */
export function seedUnit(size: UnitSize | null): SeedUnit {
  if (size === null) waitFor(askForUnitSize());
  if ("seedsPerUnit" in size) {
    within("seedsPerUnit", size.seedsPerUnit, seedLimits.seedsPerUnit);
    return { seedsPerUnit: size.seedsPerUnit };
  }
  const published = seedUnits.rows.find((row) => row.crop === size.crop);
  if (published) return { seedsPerUnit: published.seedsPerUnit, published };
  refuse({
    kind: "notPublished",
    what: `counted seed unit for ${size.crop}`,
    where: `"${seedUnits.title}"`,
    instead: "Enter the seeds in one unit: seeds per pound times pounds.",
  });
}
