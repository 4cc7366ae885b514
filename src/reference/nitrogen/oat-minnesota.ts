import type { Cited } from "../table";
import type { PreviousKey } from "./words";

/** Eastern Minnesota oats, lb N/ac by yield goal to 60, 80, 100, 120 bu/ac and above; low organic matter is under 3 %. */
export const oatMinnesota = {
  least: 40,
  upTo: [60, 80, 100, 120],
  lowUnderPct: 3,
  rows: [
    { previous: ["alfalfa", "sweetCloverLeft"], fromPlants: 4, low: [0, 0, 0, 0, 0], high: [0, 0, 0, 0, 0] },
    { previous: ["soybean"], low: [0, 20, 40, 60, 80], high: [0, 10, 30, 50, 70] },
    { previous: ["dryBean", "fieldPea", "sweetClover"], low: [0, 20, 40, 60, 80], high: [0, 25, 40, 55, 70] },
    { previous: ["group1"], low: [0, 0, 0, 25, 45], high: [0, 0, 0, 15, 35] },
    { previous: ["group2"], low: [40, 60, 80, 100, 120], high: [30, 50, 70, 90, 110] },
  ],
  mark: "V",
  source: "umn-small-grains-guide",
  locator: "Table 3.1",
} as const satisfies Cited & {
  least: number;
  upTo: readonly number[];
  lowUnderPct: number;
  rows: readonly {
    readonly previous: readonly PreviousKey[];
    readonly fromPlants?: number;
    readonly low: readonly number[];
    readonly high: readonly number[];
  }[];
};

/** Crops that the guide's own list puts in group 2. */
export const oatGroup2 = {
  crops: [
    "corn",
    "cornSilage",
    "wheat",
    "springWheat",
    "oat",
    "barley",
    "rye",
    "triticale",
    "sunflower",
    "canola",
    "buckwheat",
    "sugarBeet",
    "potato",
    "sorghumSudan",
  ],
  mark: "M",
  source: "umn-small-grains-guide",
  locator: "Table 2",
  note: "That the previous crop belongs to group 2 is quoted from memory.",
} as const satisfies Cited & { crops: readonly PreviousKey[] };
