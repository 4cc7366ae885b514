import { seedLimits } from "../../core/seed/seed-limits";
import type { UnitSize } from "../../core/seed/seed-unit";
import type { CropKey } from "../../reference/crops";
import { optional, quantity } from "../frame";
import { orWord } from "../number-or-word";
import { cropWords } from "../words";

export const rate = quantity(seedLimits.seedRate, { says: "seeds planted" });
export const rowWidth = quantity(seedLimits.rowWidth, { says: "distance from row to row" });

export const seedsPerUnit = optional(
  orWord<CropKey, UnitSize>(
    quantity(seedLimits.seedsPerUnit, {
      says: "seeds in one unit, or a crop whose trade unit it is: corn, soybean or sunflower",
    }),
    cropWords,
    { ofNumber: (count) => ({ seedsPerUnit: count }), ofWord: (crop) => ({ crop }) },
  ),
  null,
  "asked for: no crop is assumed",
);

export const unitPrice = quantity(seedLimits.unitPrice, { says: "price of one unit of seed" });

export const treatmentPerUnit = optional(
  quantity(seedLimits.treatmentPerUnit, { says: "seed treatment and inoculant put on one unit" }),
  0,
  "0: none, or already in the unit price",
);

export const treatedSeed =
  "Treated seed never goes into grain, feed or oil; its label says what to wear and how to dispose of leftovers.";
