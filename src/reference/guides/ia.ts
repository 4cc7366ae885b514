import type { CropKey } from "../crops";
import type { ExtractantKey } from "./words";
import type { Guide, NeedRule } from "./guide";

const zones = ["very low", "low", "optimum", "high", "very high"] as const;

/** Fixed rates in the low classes, removal at optimum, nothing above. */
function rule(
  crop: CropKey,
  extractants: readonly ExtractantKey[],
  upTo: readonly number[],
  veryLow: number,
  low: number,
): NeedRule {
  const rates = [veryLow, low, { times: 1, plus: 0 }, 0, 0];
  return {
    crops: [crop],
    extractants,
    form: {
      kind: "classes",
      criticalZone: "low",
      classes: zones.map((zone, place) => [zone, upTo[place] ?? null, rates[place] ?? null]),
    },
    mark: "M",
    source: "isu-pm1688-2013",
    note: "Optimum class and the rule seen; other limits and fixed rates from memory. The 2023 edition changed both.",
  };
}

const phosphateLimits: readonly (readonly [ExtractantKey[], number[]])[] = [
  [
    ["bray", "mehlich3Color"],
    [10, 15, 20, 30],
  ],
  [["mehlich3Icp"], [15, 25, 35, 45]],
  [["olsen"], [5, 9, 13, 18]],
];
const potashLimits: readonly (readonly [ExtractantKey[], number[]])[] = [
  [
    ["ammoniumAcetate", "mehlich3", "mehlich3Icp"],
    [120, 160, 200, 240],
  ],
  [["ammoniumAcetateMoist"], [50, 85, 120, 155]],
];

/** Iowa, the edition of 2013. */
export const iowa: Guide = {
  label: "IA",
  also: ["Iowa", "IA 2013", "PM 1688"],
  title: "PM 1688, Crop Nutrient and Limestone Recommendations",
  year: "2013",
  sources: ["isu-pm1688-2013", "isu-yields-2016", "isu-update-2013", "press-pm1688-2025"],
  approach: "sufficiency",
  isPartial: true,
  P2O5: {
    extractants: ["bray", "mehlich3Color", "mehlich3Icp", "olsen"],
    testUnit: "ppm",
    highestTest: 500,
    depthIn: 6,
    roundTo: 1,
    removalSet: "iowa",
    rules: phosphateLimits.flatMap(([extractants, upTo]) => [
      rule("corn", extractants, upTo, 100, 75),
      rule("soybean", extractants, upTo, 80, 60),
    ]),
  },
  K2O: {
    extractants: ["ammoniumAcetate", "mehlich3", "mehlich3Icp", "ammoniumAcetateMoist"],
    testUnit: "ppm",
    highestTest: 1500,
    depthIn: 6,
    roundTo: 1,
    removalSet: "iowa",
    rules: potashLimits.flatMap(([extractants, upTo]) => [
      rule("corn", extractants, upTo, 130, 90),
      rule("soybean", extractants, upTo, 120, 90),
    ]),
  },
};
