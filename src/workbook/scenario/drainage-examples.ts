import type { StarterCrop } from "./crop-examples";

/** Tile for the invented farm's wet field; every figure is invented, in the range of contractors' offers. */
export const drainageExample = {
  field: "Creek Bend",
  depthFt: 3.5,
  midwayTableFt: 1.5,
  conductivityFtPerDay: 1.6,
  drainRateInPerDay: 0.375,
  depthToBarrierFt: 8,
  spacingFt: 60,
  gradePct: 0.15,
} as const;

/** What the job costs and how long it lasts. */
export const drainageTerms = {
  lateralUsdPerFt: 1.1,
  mainFt: 2100,
  mainUsdPerFt: 6.5,
  fixedUsd: 8900,
  years: 30,
  interestRate: 0.08,
  upkeepUsdPerAc: 2,
} as const;

export interface DrainageGain {
  readonly crop: StarterCrop;
  readonly yearsPct: number;
  readonly lowBuPerAc: number;
  readonly likelyBuPerAc: number;
  readonly highBuPerAc: number;
}

/** Bushels that tile adds in a year of the crop, over the years, wet ones and dry ones. */
export const drainageGains: readonly DrainageGain[] = [
  { crop: "corn", yearsPct: 50, lowBuPerAc: 10, likelyBuPerAc: 20, highBuPerAc: 32 },
  { crop: "soybean", yearsPct: 50, lowBuPerAc: 3, likelyBuPerAc: 7, highBuPerAc: 12 },
];
