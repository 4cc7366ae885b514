import type { CropKey } from "../../reference/crops";

/**
 * What a crop costs and brings, as an example to overwrite. The dollar figures are invented in the range of
 * Corn Belt university budgets of 2023 to 2025; none is a quotation or a recommendation.
 */
export interface CropExample {
  readonly priceUsdPerBu: number;
  readonly yieldBuPerAc: number;
  /** Hauling, drying and storing. */
  readonly costUsdPerBu: number;
  /** All costs before hauling in one figure, for a quick look. */
  readonly costBeforeHaulingUsdPerAc: number;
  readonly nitrogenLbPerAc: number;
  readonly rowWidthIn: number;
  readonly targetStandPerAc: number;
  readonly germinationPct: number;
  readonly fieldSurvivalPct: number;
  readonly seedsPerUnit: number;
  readonly unitPriceUsd: number;
  readonly treatmentUsdPerUnit: number;
  /** $/ac, by budget line. */
  readonly costs: Readonly<Record<CostLine, number>>;
}

/** Budget lines whose amount is typed rather than worked out. */
export const costLines = {
  weedControl: "Weed control",
  insectsAndDisease: "Insect and disease control",
  fuel: "Fuel and oil",
  repairs: "Repairs",
  insurance: "Crop insurance",
  customHire: "Custom hire",
  hiredLabor: "Hired labor",
  scouting: "Soil tests and scouting",
  machinery: "Machinery ownership",
  overhead: "Buildings and overhead",
  operatorLabor: "Your own labor and management",
  land: "Land",
} as const;

export type CostLine = keyof typeof costLines;

export const cropExamples = {
  corn: {
    priceUsdPerBu: 4.35,
    yieldBuPerAc: 190,
    costUsdPerBu: 0.3,
    costBeforeHaulingUsdPerAc: 825,
    nitrogenLbPerAc: 175,
    rowWidthIn: 30,
    targetStandPerAc: 32_000,
    germinationPct: 95,
    fieldSurvivalPct: 95,
    seedsPerUnit: 80_000,
    unitPriceUsd: 290,
    treatmentUsdPerUnit: 0,
    costs: {
      weedControl: 45,
      insectsAndDisease: 12,
      fuel: 18,
      repairs: 20,
      insurance: 16,
      customHire: 10,
      hiredLabor: 12,
      scouting: 5,
      machinery: 80,
      overhead: 26,
      operatorLabor: 32,
      land: 225,
    },
  },
  soybean: {
    priceUsdPerBu: 10.6,
    yieldBuPerAc: 58,
    costUsdPerBu: 0.12,
    costBeforeHaulingUsdPerAc: 620,
    nitrogenLbPerAc: 0,
    rowWidthIn: 15,
    targetStandPerAc: 115_000,
    germinationPct: 90,
    fieldSurvivalPct: 90,
    seedsPerUnit: 140_000,
    unitPriceUsd: 58,
    treatmentUsdPerUnit: 12,
    costs: {
      weedControl: 52,
      insectsAndDisease: 14,
      fuel: 13,
      repairs: 17,
      insurance: 11,
      customHire: 9,
      hiredLabor: 10,
      scouting: 5,
      machinery: 66,
      overhead: 22,
      operatorLabor: 28,
      land: 225,
    },
  },
  wheat: {
    priceUsdPerBu: 5.7,
    yieldBuPerAc: 85,
    costUsdPerBu: 0.14,
    costBeforeHaulingUsdPerAc: 575,
    nitrogenLbPerAc: 100,
    rowWidthIn: 7.5,
    targetStandPerAc: 1_250_000,
    germinationPct: 92,
    fieldSurvivalPct: 85,
    seedsPerUnit: 650_000,
    unitPriceUsd: 18,
    treatmentUsdPerUnit: 2,
    costs: {
      weedControl: 14,
      insectsAndDisease: 18,
      fuel: 11,
      repairs: 14,
      insurance: 8,
      customHire: 9,
      hiredLabor: 8,
      scouting: 4,
      machinery: 54,
      overhead: 18,
      operatorLabor: 24,
      land: 225,
    },
  },
} as const satisfies Partial<Record<CropKey, CropExample>>;

/** Crops the starters can plan. */
export type StarterCrop = keyof typeof cropExamples;

/** Published curves of yield by stand to begin with; none is held for wheat. */
export const usualCurves: Readonly<Record<StarterCrop, string | null>> = {
  corn: "corn Illinois",
  soybean: "soybean Illinois",
  wheat: null,
};
