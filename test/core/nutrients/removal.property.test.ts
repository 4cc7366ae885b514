import fc from "fast-check";
import { removalIndex, type CropRecord } from "../../../src/core/nutrients/removal-index";
import { removal } from "../../../src/core/nutrients/removal";
import { crops, type CropKey } from "../../../src/reference/crops";
import { nutrientKeys, type NutrientKey } from "../../../src/reference/nutrients";

/** Every crop and nutrient that has a usual number, for the crop's main part. */
const published = (Object.entries(removalIndex()) as [CropKey, CropRecord][]).flatMap(([crop, record]) =>
  nutrientKeys
    .filter((nutrient) => record.parts[record.mainPart]?.usual[nutrient])
    .map((nutrient) => ({ crop, nutrient })),
);
const anyHarvest = fc.constantFrom(...published);
// Half of the ceiling, so that a doubled yield is still inside it.
const anyShare = fc.double({ min: 0, max: 0.5, noNaN: true });

const remove = (crop: CropKey, nutrient: NutrientKey, share: number, times = 1) =>
  removal({
    crop,
    nutrient,
    yieldPerAc: share * times * crops[crop].yieldCeiling,
    part: null,
    set: null,
    moisturePct: null,
  });

describe("removal laws", () => {
  it("twice the yield takes off twice as much", () => {
    fc.assert(
      fc.property(anyHarvest, anyShare, ({ crop, nutrient }, share) => {
        const once = remove(crop, nutrient, share).removedLbPerAc;
        expect(remove(crop, nutrient, share, 2).removedLbPerAc).toBeCloseTo(2 * once, 6);
      }),
    );
  });

  it("no yield takes off nothing", () => {
    for (const { crop, nutrient } of published) expect(remove(crop, nutrient, 0).removedLbPerAc).toBe(0);
  });

  it("the number used lies inside the published spread", () => {
    fc.assert(
      fc.property(anyHarvest, anyShare, ({ crop, nutrient }, share) => {
        const { removedLbPerAc, lowLbPerAc, highLbPerAc } = remove(crop, nutrient, share);
        const slack = 1e-9 * (1 + highLbPerAc);
        expect(removedLbPerAc).toBeGreaterThanOrEqual(lowLbPerAc - slack);
        expect(removedLbPerAc).toBeLessThanOrEqual(highLbPerAc + slack);
      }),
    );
  });

  it("wetter hay of the same weight takes off less", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 89 }), (moisturePct) => {
        const hay = { crop: "alfalfa", nutrient: "K2O", yieldPerAc: 5, part: null, set: null } as const;
        const drier = removal({ ...hay, moisturePct }).removedLbPerAc;
        const wetter = removal({ ...hay, moisturePct: moisturePct + 1 }).removedLbPerAc;
        expect(wetter).toBeLessThan(drier);
      }),
    );
  });
});
