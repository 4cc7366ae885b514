import type { CropKey } from "../crops";
import type { Guide, NeedRule } from "./guide";

/** Demand levels; crops we do not know by name (sweet corn, tomato) are left out. */
const demand: Readonly<Record<1 | 2 | 4, readonly CropKey[]>> = {
  1: ["soybean", "oat", "barley", "rye", "triticale", "sunflower", "canola", "flax", "redClover"],
  2: ["alfalfa", "dryBean"],
  4: ["potato", "tobacco"],
};

/** Removal at optimum, half of it when high, nothing above; the build-up of the low classes is not held. */
function rule(
  level: 1 | 2 | 4,
  group: "loamy" | "sandy",
  [veryLow, low, optimum, high]: readonly [number, number, number, number | null],
): NeedRule {
  return {
    crops: demand[level],
    group,
    form: {
      kind: "classes",
      criticalZone: "optimum",
      classes: [
        ["very low", veryLow, null],
        ["low", low, null],
        ["optimum", optimum, { times: 1, plus: 0 }],
        ["high", high, { times: 0.5, plus: 0 }],
        ...(high === null ? [] : [["excessively high", null, 0] as const]),
      ],
    },
    mark: "M",
    source: "uw-demand-levels",
    note: `Demand level ${level}. Very low and low: removal and a build-up that stands in the bulletin.`,
  };
}

export const wisconsin: Guide = {
  label: "WI",
  also: ["Wisconsin", "A2809"],
  title: "A2809, Nutrient Application Guidelines",
  year: "undated",
  sources: ["uw-demand-levels"],
  approach: "sufficiency",
  isPartial: true,
  P2O5: {
    extractants: ["bray"],
    testUnit: "ppm",
    highestTest: 500,
    depthIn: null,
    roundTo: 5,
    removalSet: null,
    rules: [
      rule(1, "loamy", [9, 15, 20, 30]),
      rule(1, "sandy", [11, 22, 32, 42]),
      rule(2, "loamy", [11, 17, 25, 35]),
      rule(2, "sandy", [17, 25, 37, 55]),
      rule(4, "loamy", [99, 160, 200, null]),
      rule(4, "sandy", [29, 60, 90, 120]),
    ],
  },
  K2O: {
    extractants: ["brayK"],
    testUnit: "ppm",
    highestTest: 1500,
    depthIn: null,
    roundTo: 5,
    removalSet: null,
    rules: [
      rule(1, "loamy", [69, 100, 130, 160]),
      rule(1, "sandy", [44, 65, 90, 130]),
      rule(2, "loamy", [89, 110, 140, 170]),
      rule(2, "sandy", [49, 80, 120, 160]),
      rule(4, "loamy", [79, 120, 170, 190]),
      rule(4, "sandy", [69, 100, 130, 160]),
    ],
  },
};
