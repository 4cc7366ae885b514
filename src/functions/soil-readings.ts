import type { WorksheetFunction } from "./frame";
import { baseShare, soilCec } from "./soil/cations";
import { chlorosisRisk } from "./soil/chlorosis-risk";
import { microNeed } from "./soil/micro-need";
import { saltLimit } from "./soil/salt-limit";
import { sampleCost } from "./soil/sample-cost";
import { sulfurNeed } from "./soil/sulfur-need";

export { baseShare, chlorosisRisk, microNeed, saltLimit, sampleCost, soilCec, sulfurNeed };

/** Sulfur, micronutrients, chlorosis, salt, cations and the cost of sampling: the rest of the soil family. */
export const soilReadingFunctions: readonly WorksheetFunction[] = [
  sulfurNeed,
  microNeed,
  chlorosisRisk,
  saltLimit,
  soilCec,
  baseShare,
  sampleCost,
];
