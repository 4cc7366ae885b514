import type { Guide } from "./guide";
import { brayClasses, northernClasses, northernRule, olsenClasses, sharedPhosphate } from "./northern-equations";

const wheats = ["wheat", "springWheat"] as const;
const olsen = { classes: olsenClasses };
const bray = { classes: brayClasses };
const potash = { classes: northernClasses([40, 80, 120, 160]) };
/** Sunflower equations count pounds; we count hundredweights. */
const pounds = { yieldUnitsPer: 100 };

export const southDakota: Guide = {
  label: "SD",
  also: ["South Dakota", "EC750"],
  title: "EC750, Fertilizer Recommendations Guide",
  year: "undated",
  sources: ["sdsu-ec750"],
  approach: "sufficiency",
  isPartial: true,
  P2O5: {
    extractants: ["olsen", "bray"],
    testUnit: "ppm",
    highestTest: 500,
    depthIn: 6,
    roundTo: 1,
    removalSet: null,
    rules: [
      ...Object.values(sharedPhosphate),
      northernRule(wheats, "olsen", 1.071, 0.067, olsen),
      northernRule(wheats, "bray", 1.071, 0.054, bray),
      northernRule(["sunflower"], "olsen", 0.0225, 0.0014, { ...olsen, ...pounds }),
      northernRule(["sunflower"], "bray", 0.0225, 0.0011, { ...bray, ...pounds }),
      northernRule(["alfalfa"], "olsen", 18.57, 1.16, olsen),
      northernRule(["alfalfa"], "bray", 18.57, 0.93, bray),
    ],
  },
  K2O: {
    extractants: ["ammoniumAcetate"],
    testUnit: "ppm",
    highestTest: 1500,
    depthIn: 6,
    roundTo: 1,
    removalSet: null,
    rules: [
      northernRule(["corn"], "ammoniumAcetate", 1.166, 0.0073, potash),
      northernRule(["soybean"], "ammoniumAcetate", 2.2, 0.0183, potash),
      northernRule(wheats, "ammoniumAcetate", 2.71, 0.017, potash),
      northernRule(["sunflower"], "ammoniumAcetate", 0.041, 0.00027, { ...potash, ...pounds }),
      northernRule(["alfalfa"], "ammoniumAcetate", 55.71, 0.38, potash),
    ],
  },
};
