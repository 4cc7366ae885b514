import { nutrientNeed, type NutrientNeed, type NutrientNeedInput } from "../../../../src/core/soil/need/nutrient-need";
import { testRating } from "../../../../src/core/soil/need/test-rating";
import type { CropKey } from "../../../../src/reference/crops";
import { guides, type GuideKey, type NeedNutrient } from "../../../../src/reference/guides";

export type Refinements = Partial<NutrientNeedInput>;

/** What a guide asks for, as PHOSPHATENEED and POTASHNEED ask it. */
export function need(
  guide: GuideKey,
  nutrient: NeedNutrient,
  crop: CropKey,
  yieldGoalPerAc: number,
  soilTest: NutrientNeedInput["soilTest"],
  more: Refinements = {},
): NutrientNeed {
  return nutrientNeed({
    guide: guides[guide],
    nutrient,
    crop,
    yieldGoalPerAc,
    soilTest,
    cecMeq: null,
    extractant: null,
    approach: null,
    rotationCrop: null,
    ...more,
  });
}

/** The guide's word for a test. */
export function zone(
  guide: GuideKey,
  nutrient: NeedNutrient,
  crop: CropKey | null,
  soilTest: number,
  more: Pick<Refinements, "cecMeq" | "extractant" | "group" | "testUnit"> = {},
): string {
  return testRating({ guide: guides[guide], nutrient, crop, soilTest, cecMeq: null, extractant: null, ...more }).zone;
}
