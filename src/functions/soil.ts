import type { WorksheetFunction } from "./frame";
import { limeNeed } from "./soil/lime-need";
import { limeQuality, limeRate } from "./soil/lime-material";
import { phosphateNeed, potashNeed } from "./soil/nutrient-need";
import { testConvert } from "./soil/test-convert";
import { testRating } from "./soil/test-rating";

export { limeNeed, limeQuality, limeRate, phosphateNeed, potashNeed, testConvert, testRating };

/** Everything this family puts on the sheet. */
export const soilFunctions: readonly WorksheetFunction[] = [
  limeNeed,
  limeQuality,
  limeRate,
  phosphateNeed,
  potashNeed,
  testConvert,
  testRating,
];
