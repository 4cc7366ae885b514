import type { WorksheetFunction } from "./frame";
import { baseShare, soilCec } from "./soil/cations";
import { chlorosisRisk } from "./soil/chlorosis-risk";
import { microNeed } from "./soil/micro-need";
import { saltLimit } from "./soil/salt-limit";
import { sulfurNeed } from "./soil/sulfur-need";

export { baseShare, chlorosisRisk, microNeed, saltLimit, soilCec, sulfurNeed };

/** Sulfur, micronutrients, chlorosis, salt and cations: the rest of the soil family. */
export const soilReadingFunctions: readonly WorksheetFunction[] = [
  sulfurNeed,
  microNeed,
  chlorosisRisk,
  saltLimit,
  soilCec,
  baseShare,
];
