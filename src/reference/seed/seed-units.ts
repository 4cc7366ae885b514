import type { CropKey } from "../crops";
import type { Cited, ReferenceTable } from "../table";

/** The unit in which a crop's seed is sold by count. Small grains are sold by weight and have none. */
export interface SeedUnitRow extends Cited {
  readonly crop: CropKey;
  readonly seedsPerUnit: number;
}

export const seedUnits = {
  title: "Seeds in the trade's unit",
  units: { seedsPerUnit: "seeds/unit" },
  basis: "one unit as sold, by count",
  rows: [
    { crop: "corn", seedsPerUnit: 80_000, mark: "V", source: "illinois-seed-cost" },
    { crop: "soybean", seedsPerUnit: 140_000, mark: "V", source: "msu-soybean-seed-2010" },
    { crop: "sunflower", seedsPerUnit: 200_000, mark: "M", source: "trade-seed-units" },
  ],
} as const satisfies ReferenceTable<SeedUnitRow>;
