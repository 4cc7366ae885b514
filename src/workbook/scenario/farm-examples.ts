/** Fertilizer by analysis and price, as examples to overwrite. Prices in the range of retail reports of 2023 to 2025. */
export interface MaterialExample {
  readonly material: string;
  readonly nitrogenPct: number;
  readonly phosphatePct: number;
  readonly potashPct: number;
  readonly sulfurPct: number;
  readonly zincPct: number;
  readonly priceUsdPerTon: number;
  /** Most that goes into a dry blend, lb/ac; null: any amount. */
  readonly mostInBlendLbPerAc: number | null;
}

export const materialExamples: readonly MaterialExample[] = [
  material("anhydrous ammonia 82-0-0", [82, 0, 0, 0, 0], 800, 0),
  material("urea 46-0-0", [46, 0, 0, 0, 0], 560),
  material("UAN 28-0-0", [28, 0, 0, 0, 0], 390, 0),
  material("ammonium sulfate 21-0-0-24S", [21, 0, 0, 24, 0], 430),
  material("MAP 11-52-0", [11, 52, 0, 0, 0], 780),
  material("DAP 18-46-0", [18, 46, 0, 0, 0], 740),
  material("triple superphosphate 0-46-0", [0, 46, 0, 0, 0], 680),
  material("potash 0-0-60", [0, 0, 60, 0, 0], 460),
  material("zinc sulfate 35.5Zn-17.5S", [0, 0, 0, 17.5, 35.5], 1600),
];

/** The materials a plan starts with. */
export const usualMaterials = {
  nitrogen: "urea 46-0-0",
  phosphate: "MAP 11-52-0",
  potash: "potash 0-0-60",
  sulfur: "ammonium sulfate 21-0-0-24S",
  zinc: "zinc sulfate 35.5Zn-17.5S",
} as const;

/** Lime, money and other figures of the farm, as examples to overwrite. */
export const farmExamples = {
  limeCcePct: 92,
  limeMoisturePct: 4,
  limePriceUsdPerTon: 34,
  limeLastsYears: 5,
  limeTriggerPh: 0.2,
  spreadingUsdPerAc: 8,
  interestRate: 0.08,
  interestMonths: 7,
} as const;

/** How fine the lime of the example is: percent that passes a sieve, by meshes per inch. */
export const limePassingPct: Readonly<Record<number, number>> = {
  4: 99,
  8: 95,
  10: 92,
  20: 75,
  30: 66,
  40: 59,
  50: 54,
  60: 50,
  100: 38,
};

function material(
  name: string,
  [nitrogenPct, phosphatePct, potashPct, sulfurPct, zincPct]: readonly [number, number, number, number, number],
  priceUsdPerTon: number,
  mostInBlendLbPerAc: number | null = null,
): MaterialExample {
  return {
    material: name,
    nitrogenPct,
    phosphatePct,
    potashPct,
    sulfurPct,
    zincPct,
    priceUsdPerTon,
    mostInBlendLbPerAc,
  };
}
