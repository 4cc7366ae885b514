import { seedLimits } from "../../core/seed/seed-limits";
import type { UnitSize } from "../../core/seed/seed-unit";
import type { CropKey } from "../../reference/crops";
import { list, optional, quantity } from "../frame";
import { orWord } from "../number-or-word";
import { cropWords } from "../words";

export const rate = quantity(seedLimits.seedRate, { says: "seeds planted" });
export const rowWidth = quantity(seedLimits.rowWidth, { says: "distance from row to row" });

export const counts = list(quantity(seedLimits.plantCount, { says: "plants" }), {
  says: "plants in each place counted, one cell a place",
});

export const feetCounted = optional(
  quantity(seedLimits.feetCounted, { says: "feet of row behind each count, all its rows together" }),
  null,
  "the thousandth of an acre at this row width",
);

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
