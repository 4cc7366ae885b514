import type { WorksheetFunction } from "../frame";
import { baseShare, soilCec } from "./cations";
import { chlorosisRisk } from "./chlorosis-risk";
import { legumeCredit } from "./legume-credit";
import { limeQuality, limeRate } from "./lime-material";
import { limeNeed } from "./lime-need";
import { manureCredit } from "./manure-credit";
import { microNeed } from "./micro-need";
import { nitrogenNeed } from "./nitrogen-need";
import { nitrogenOptimum } from "./nitrogen-optimum";
import { phosphateNeed, potashNeed } from "./nutrient-need";
import { organicNitrogen } from "./organic-nitrogen";
import { saltLimit } from "./salt-limit";
import { sampleCost } from "./sample-cost";
import { sulfurNeed } from "./sulfur-need";
import { testConvert } from "./test-convert";
import { testRating } from "./test-rating";

/** Everything this family puts on the sheet, in the order of the documentation. */
export const soilFunctions: readonly WorksheetFunction[] = [
  limeNeed,
  limeQuality,
  limeRate,
  phosphateNeed,
  potashNeed,
  testConvert,
  testRating,
  nitrogenNeed,
  nitrogenOptimum,
  legumeCredit,
  manureCredit,
  organicNitrogen,
  sulfurNeed,
  microNeed,
  chlorosisRisk,
  saltLimit,
  soilCec,
  baseShare,
  sampleCost,
];
