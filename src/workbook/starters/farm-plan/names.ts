import { nameOf, type Reference } from "../../formula/reference";

/** Defined names of the single inputs and of what follows from them, by key in the code. */
export const farmNames = {
  farmName: "farm_name",
  season: "season",
  guide: "guide",
  phosphorusMethod: "phosphorus_method",
  potassiumMethod: "potassium_method",
  approach: "reckoning",
  soilGroup: "soil_group",
  buildYears: "buildup_years",
  zincMethod: "zinc_method",
  nitrogenAnalysis: "nitrogen_analysis",
  nitrogenTonPrice: "nitrogen_ton_price",
  nitrogenPrice: "nitrogen_price",
  phosphateAnalysis: "phosphate_analysis",
  phosphateNitrogen: "phosphate_nitrogen",
  phosphateTonPrice: "phosphate_ton_price",
  phosphatePrice: "phosphate_price",
  potashAnalysis: "potash_analysis",
  potashNitrogen: "potash_nitrogen",
  potashTonPrice: "potash_ton_price",
  potashPrice: "potash_price",
  sulfurAnalysis: "sulfur_analysis",
  sulfurNitrogen: "sulfur_nitrogen",
  sulfurTonPrice: "sulfur_ton_price",
  sulfurPrice: "sulfur_price",
  zincAnalysis: "zinc_analysis",
  zincNitrogen: "zinc_nitrogen",
  zincTonPrice: "zinc_ton_price",
  zincPrice: "zinc_price",
  spreadingCost: "spreading_cost",
  limeMethod: "lime_method",
  targetPh: "target_ph",
  limeTrigger: "lime_trigger",
  limeDepth: "lime_depth",
  limeQuality: "lime_quality",
  limePrice: "lime_price",
  limeYears: "lime_years",
  interestRate: "interest_rate",
  interestMonths: "interest_months",
} as const;

export type FarmName = keyof typeof farmNames;

/** Points to a named input. */
export function named(name: FarmName): Reference {
  return nameOf(farmNames[name]);
}
