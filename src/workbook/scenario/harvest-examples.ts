import type { StarterCrop } from "./crop-examples";

/** Counts, losses and offers of a harvest on the invented farm; every figure is invented and there to be overwritten. */

/** Five places of one corn field, milk stage: ears on 1/1000 acre, rows and kernels along a row of an ear. */
export const earCounts = {
  field: "Long Eighty",
  crop: "corn",
  places: [
    { place: "Long Eighty, gate", ears: 31, kernelRows: 16, kernelsPerRow: 37 },
    { place: "Long Eighty, hill", ears: 30, kernelRows: 16, kernelsPerRow: 34 },
    { place: "Long Eighty, swale", ears: 32, kernelRows: 16.4, kernelsPerRow: 38 },
    { place: "Long Eighty, east", ears: 31, kernelRows: 16.2, kernelsPerRow: 36 },
    { place: "Long Eighty, back", ears: 29, kernelRows: 16.4, kernelsPerRow: 38 },
  ],
} as const;

/** Pods on ten plants at each place, and the stand counted in June. */
export const podCounts = {
  field: "Home Quarter",
  crop: "soybean",
  places: [
    { place: "Home Quarter, yard", plants: 118_000, podsPerPlant: 35, seedsPerPod: 2.5, seedsPerPound: 2800 },
    { place: "Home Quarter, west", plants: 112_000, podsPerPlant: 37, seedsPerPod: 2.5, seedsPerPound: 2800 },
    { place: "Home Quarter, draw", plants: 104_000, podsPerPlant: 38, seedsPerPod: 2.4, seedsPerPound: 2900 },
    { place: "Home Quarter, ridge", plants: 109_000, podsPerPlant: 33, seedsPerPod: 2.5, seedsPerPound: 2900 },
    { place: "Home Quarter, road", plants: 116_000, podsPerPlant: 36, seedsPerPod: 2.5, seedsPerPound: 2800 },
  ],
} as const;

/** Heads along three feet of 7.5-inch row. */
export const headCounts = {
  field: "Orchard Forty",
  crop: "wheat",
  places: [
    { place: "Orchard Forty, lane", heads: 142, spikelets: 14 },
    { place: "Orchard Forty, north", heads: 150, spikelets: 14 },
    { place: "Orchard Forty, wet end", heads: 128, spikelets: 13 },
  ],
} as const;

export interface LossExample {
  readonly field: string;
  readonly crop: StarterCrop;
  /** Seeds on a square foot: under the standing crop, behind the cutterbar, behind the machine. */
  readonly standing: number;
  readonly header: number;
  readonly behind: number;
}

export const lossExamples: readonly LossExample[] = [
  { field: "Home Quarter", crop: "soybean", standing: 1.5, header: 9, behind: 11.5 },
  { field: "Long Eighty", crop: "corn", standing: 0.4, header: 1.4, behind: 2.2 },
  { field: "Orchard Forty", crop: "wheat", standing: 3, header: 14, behind: 22 },
];

export interface WetLotExample {
  readonly field: string;
  readonly crop: StarterCrop;
  readonly wetBu: number;
  readonly moisturePct: number;
  readonly marketMoisturePct: number;
}

export const wetLotExamples: readonly WetLotExample[] = [
  { field: "Long Eighty", crop: "corn", wetBu: 17_000, moisturePct: 21, marketMoisturePct: 15.5 },
  { field: "Far Bottoms", crop: "corn", wetBu: 75_000, moisturePct: 24, marketMoisturePct: 15.5 },
  { field: "Home Quarter", crop: "soybean", wetBu: 9_700, moisturePct: 14.5, marketMoisturePct: 13 },
];

/** What the elevator and the dryer charge. */
export const grainTerms = {
  gasUsdPerGal: 1.9,
  gasGalPerBuPoint: 0.02,
  dryerUsdPerBu: 0.06,
  wetDiscountUsdPerPoint: 0.11,
  elevatorUsdPerPoint: 0.05,
  elevatorShrinkPctPerPoint: 1.4,
} as const;

export interface StoreExample {
  readonly crop: StarterCrop;
  readonly months: number;
  readonly chargeUsdPerBuMonth: number;
  readonly handlingUsdPerBu: number;
  readonly extraDryingUsdPerBu: number;
  readonly extraShrinkPct: number;
  readonly expectedUsdPerBu: number;
}

export const storeExamples: readonly StoreExample[] = [
  {
    crop: "corn",
    months: 6,
    chargeUsdPerBuMonth: 0.025,
    handlingUsdPerBu: 0.06,
    extraDryingUsdPerBu: 0.04,
    extraShrinkPct: 1,
    expectedUsdPerBu: 4.85,
  },
  {
    crop: "soybean",
    months: 5,
    chargeUsdPerBuMonth: 0.025,
    handlingUsdPerBu: 0.06,
    extraDryingUsdPerBu: 0,
    extraShrinkPct: 0,
    expectedUsdPerBu: 10.95,
  },
  {
    crop: "wheat",
    months: 4,
    chargeUsdPerBuMonth: 0.03,
    handlingUsdPerBu: 0.06,
    extraDryingUsdPerBu: 0,
    extraShrinkPct: 0,
    expectedUsdPerBu: 5.9,
  },
];
