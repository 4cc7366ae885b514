import type { CropKey } from "../crops";
import type { Guide, NeedRule, Threshold, ZoneRate } from "./guide";
import type { ExtractantKey } from "./words";

const zones = { below: "below critical", above: "at or above critical" } as const;

const level = (critical: number, below: ZoneRate): Threshold => ({
  kind: "threshold",
  critical,
  below,
  above: 0,
  zones,
});

function levels(
  crops: readonly CropKey[],
  byMethod: readonly (readonly [ExtractantKey, number])[],
): readonly NeedRule[] {
  return byMethod.map(([extractant, critical]) => ({
    crops,
    extractants: [extractant],
    form: level(critical, null),
    mark: "V",
    source: "unl-postponing-2016",
    locator: "Tables 1-2",
  }));
}

/** (25 − test) × 4 below the critical level. */
const cornPhosphate = (critical: number, note: string, after?: CropKey): NeedRule => ({
  crops: ["corn"],
  extractants: ["bray"],
  ...(after && { after }),
  form: { kind: "plane", constant: 100, perYield: 0, perTest: -4, perYieldTest: 0, critical, least: 0, zones },
  mark: "M",
  source: "unl-ec117",
  note,
});

export const nebraska: Guide = {
  label: "NE",
  also: ["Nebraska", "EC117"],
  title: "EC117, Nutrient Management Suggestions for Corn",
  year: "2016-2019",
  sources: ["unl-ec117", "unl-postponing-2016", "unl-phosphorus-2018"],
  approach: "sufficiency",
  isPartial: true,
  P2O5: {
    extractants: ["bray", "mehlich3", "olsen"],
    testUnit: "ppm",
    highestTest: 500,
    depthIn: 8,
    roundTo: 5,
    removalSet: null,
    rules: [
      cornPhosphate(20, "Corn after corn. Broadcast; half of it in a band.", "corn"),
      cornPhosphate(15, "Broadcast; half of it in a band. Corn after corn has a critical level of 20."),
      {
        crops: ["corn"],
        extractants: ["bray"],
        approaches: ["removal"],
        form: level(20, { times: 1, plus: 0 }),
        mark: "V",
        source: "unl-phosphorus-2018",
        note: "The P taken off by the crop before, below 20 ppm.",
      },
      ...levels(
        ["corn"],
        [
          ["mehlich3", 18],
          ["olsen", 10],
        ],
      ),
      ...levels(
        ["sorghum"],
        [
          ["bray", 15],
          ["mehlich3", 18],
          ["olsen", 10],
        ],
      ),
      ...levels(
        ["soybean"],
        [
          ["bray", 12],
          ["mehlich3", 14],
          ["olsen", 8],
        ],
      ),
      ...levels(
        ["wheat", "alfalfa"],
        [
          ["bray", 25],
          ["mehlich3", 29],
          ["olsen", 17],
        ],
      ),
    ],
  },
  K2O: {
    extractants: ["ammoniumAcetate"],
    testUnit: "ppm",
    highestTest: 1500,
    depthIn: 8,
    roundTo: 5,
    removalSet: null,
    rules: [
      {
        crops: ["corn"],
        form: {
          kind: "classes",
          classes: [
            ["below critical", 40, 140],
            ["below critical", 74, 90],
            ["below critical", 124, 50],
            ["at or above critical", null, 0],
          ],
        },
        mark: "M",
        source: "unl-ec117",
        note: "Broadcast and row together: 120 + 20 to 40 ppm, 80 + 10 to 74, 40 + 10 to 124.",
      },
      ...levels(["sorghum", "soybean", "wheat", "alfalfa"], [["ammoniumAcetate", 125]]),
    ],
  },
};
