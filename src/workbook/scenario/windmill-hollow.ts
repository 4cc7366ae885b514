import type { CropKey } from "../../reference/crops";
import type { TextureKey } from "../../reference/nitrogen";
import { serialDay } from "./serial-day";

/** A field of the invented farm, as its owner would note it in winter. */
export interface FieldExample {
  readonly field: string;
  readonly acres: number;
  readonly lastCrop: CropKey;
  readonly lastYieldBuPerAc: number;
  readonly nextCrop: CropKey;
  readonly yieldGoalBuPerAc: number;
  /** Put on over the last two crops, fertilizer and manure. */
  readonly appliedP2o5LbPerAc: number;
  readonly appliedK2oLbPerAc: number;
  readonly drainage: string;
  /** The day the soil sample was taken, as a day of a spreadsheet. */
  readonly sampledOn: number;
  readonly soilPh: number;
  /** null where the laboratory saw no need to measure it. */
  readonly bufferPh: number | null;
  /** Mehlich-3. */
  readonly phosphorusPpm: number;
  readonly potassiumPpm: number;
  readonly cecMeq: number;
  readonly organicMatterPct: number;
  readonly texture: TextureKey;
  /** Mehlich-3. */
  readonly sulfurPpm: number;
  readonly zincPpm: number;
  /** 0 to 24 in, as a deep sample would have shown them; only some regions take one. */
  readonly nitrateLbPerAc: number;
  readonly sulfateLbPerAc: number;
}

export const demoFarmName = "Windmill Hollow Farm";

/** Half of the farm is sampled each fall, after harvest. */
const sampled = { before: serialDay(2024, 11, 6), last: serialDay(2025, 10, 29) } as const;

/**
 * Windmill Hollow Farm is invented, and so is every figure here: 1,480 acres of corn, soybean and wheat in the
 * Indiana, Michigan and Ohio guide area, where corn has climbed for ten years and soybean has stood still.
 */
export const demoFields: readonly FieldExample[] = [
  field(
    "Home Quarter",
    154,
    ["corn", 204],
    ["soybean", 62],
    [100, 90],
    "good",
    sampled.last,
    [6.4, 6.9, 34, 138, 14, 3.1],
    ["medium", 12, 3.1, 28, 36],
  ),
  field(
    "Creek Bend",
    96,
    ["corn", 171],
    ["soybean", 54],
    [80, 60],
    "poor, no tile",
    sampled.last,
    [5.9, 6.6, 17, 96, 11, 2.4],
    ["medium", 9, 2.2, 24, 28],
  ),
  field(
    "Long Eighty",
    78,
    ["soybean", 58],
    ["corn", 205],
    [110, 100],
    "tiled",
    sampled.before,
    [6.2, 6.7, 22, 121, 16, 3.4],
    ["medium", 11, 2.8, 36, 40],
  ),
  field(
    "Sand Knob",
    61,
    ["soybean", 52],
    ["corn", 165],
    [60, 80],
    "droughty",
    sampled.before,
    [5.7, 6.8, 41, 74, 5, 1.3],
    ["sandy", 5, 0.9, 14, 12],
  ),
  field(
    "Schoolhouse",
    118,
    ["wheat", 84],
    ["corn", 198],
    [110, 60],
    "tiled",
    sampled.before,
    [6.6, null, 29, 164, 18, 3.6],
    ["fine", 14, 3.6, 40, 44],
  ),
  field(
    "Twin Oaks",
    140,
    ["corn", 188],
    ["soybean", 58],
    [80, 60],
    "fair",
    sampled.last,
    [6.1, 6.7, 13, 109, 12, 2.7],
    ["medium", 10, 1.9, 26, 30],
  ),
  field(
    "North Flat",
    203,
    ["corn", 193],
    ["soybean", 60],
    [90, 60],
    "poor, old tile",
    sampled.before,
    [7.3, null, 19, 187, 22, 4.2],
    ["fine", 16, 1.4, 44, 52],
  ),
  field(
    "Orchard Forty",
    39,
    ["soybean", 56],
    ["wheat", 88],
    [90, 90],
    "good",
    sampled.before,
    [6.3, 6.8, 26, 132, 13, 2.9],
    ["medium", 11, 2.6, 33, 34],
  ),
  field(
    "Mill Road",
    227,
    ["corn", 182],
    ["soybean", 57],
    [60, 40],
    "fair",
    sampled.last,
    [6.0, 6.6, 11, 88, 10, 2.2],
    ["medium", 8, 1.6, 22, 24],
  ),
  field(
    "Far Bottoms",
    364,
    ["soybean", 55],
    ["corn", 192],
    [60, 100],
    "floods",
    sampled.last,
    [6.8, null, 38, 151, 20, 3.9],
    ["fine", 15, 4.0, 38, 46],
  ),
];

function field(
  name: string,
  acres: number,
  [lastCrop, lastYieldBuPerAc]: readonly [CropKey, number],
  [nextCrop, yieldGoalBuPerAc]: readonly [CropKey, number],
  [appliedP2o5LbPerAc, appliedK2oLbPerAc]: readonly [number, number],
  drainage: string,
  sampledOn: number,
  [soilPh, bufferPh, phosphorusPpm, potassiumPpm, cecMeq, organicMatterPct]: readonly [
    number,
    number | null,
    number,
    number,
    number,
    number,
  ],
  [texture, sulfurPpm, zincPpm, nitrateLbPerAc, sulfateLbPerAc]: readonly [TextureKey, number, number, number, number],
): FieldExample {
  return {
    field: name,
    acres,
    lastCrop,
    lastYieldBuPerAc,
    nextCrop,
    yieldGoalBuPerAc,
    appliedP2o5LbPerAc,
    appliedK2oLbPerAc,
    drainage,
    sampledOn,
    soilPh,
    bufferPh,
    phosphorusPpm,
    potassiumPpm,
    cecMeq,
    organicMatterPct,
    texture,
    sulfurPpm,
    zincPpm,
    nitrateLbPerAc,
    sulfateLbPerAc,
  };
}
