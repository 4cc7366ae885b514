import { headersOf } from "../../model/table";

/** The tables of the farm plan and what their columns are called; every sheet refers to them by key. */
export const cropTable = headersOf("Crops", {
  crop: "Crop",
  price: "Price $/bu",
  yield: "Usual yield bu/ac",
  costPerBushel: "Haul and dry $/bu",
  nitrogen: "Nitrogen lb/ac",
  guideNitrogen: "N by guide lb/ac",
  rowWidth: "Row width in",
  targetStand: "Stand wanted plants/ac",
  germination: "Germination %",
  fieldSurvival: "Field survival %",
  seedsPerUnit: "Seeds per unit",
  unitPrice: "Seed $/unit",
  treatment: "Treatment $/unit",
});

export const materialTable = headersOf("Materials", {
  material: "Material",
  nitrogen: "N %",
  phosphate: "P2O5 %",
  potash: "K2O %",
  sulfur: "S %",
  price: "Price $/ton",
});

export const fieldTable = headersOf("Fields", {
  field: "Field",
  acres: "Acres",
  lastCrop: "Last crop",
  lastYield: "Last yield bu/ac",
  nextCrop: "Next crop",
  yieldGoal: "Yield goal bu/ac",
  phosphateOn: "P2O5 put on lb/ac",
  potashOn: "K2O put on lb/ac",
  ownPhosphate: "Your P2O5 rate lb/ac",
  ownPotash: "Your K2O rate lb/ac",
  drainage: "Drainage and remarks",
});

export const soilTable = headersOf("SoilTests", {
  field: "Field",
  ph: "Soil pH",
  bufferPh: "Buffer pH",
  phosphorus: "P ppm",
  potassium: "K ppm",
  cec: "CEC meq/100 g",
  organicMatter: "Organic matter %",
  phosphorusRating: "P rating",
  potassiumRating: "K rating",
});

const ledgerHeaders = {
  field: "Field",
  acres: "Acres",
  lastCrop: "Last crop",
  nextCrop: "Next crop",
  lastYield: "Last yield bu/ac",
  yieldGoal: "Yield goal bu/ac",
  putOn: "Put on lb/ac",
  lastTakes: "Last crop took lb/ac",
  left: "Left after it lb/ac",
  nextTakes: "Next crop takes lb/ac",
  balance: "Balance of both lb/ac",
  perYear: "A year lb/ac",
  test: "Test now ppm",
  testLater: "Test in 4 years ppm",
  words: "What it means",
} as const;

export const potashLedger = headersOf("PotashLedger", ledgerHeaders);
export const phosphateLedger = headersOf("PhosphateLedger", ledgerHeaders);

export const limePlan = headersOf("LimePlan", {
  field: "Field",
  acres: "Acres",
  ph: "Soil pH",
  bufferPh: "Buffer pH",
  need: "Effective lime needed ton/ac",
  rate: "Your lime ton/ac",
  tons: "Tons",
  perAcre: "Cost $/ac",
  cost: "Cost $",
  words: "What to do",
});

export const nutrientPlan = headersOf("NutrientPlan", {
  field: "Field",
  acres: "Acres",
  lastCrop: "Last crop",
  nextCrop: "Next crop",
  yieldGoal: "Yield goal bu/ac",
  phosphorus: "P ppm",
  phosphateNeed: "P2O5 by guide lb/ac",
  phosphate: "P2O5 to spread lb/ac",
  phosphateRate: "Phosphate product lb/ac",
  potassium: "K ppm",
  cec: "CEC meq/100 g",
  potashNeed: "K2O by guide lb/ac",
  potash: "K2O to spread lb/ac",
  potashRate: "Potash product lb/ac",
  nitrogenInIt: "N that comes along lb/ac",
  perAcre: "Cost $/ac",
  phosphateTons: "Phosphate tons",
  potashTons: "Potash tons",
  cost: "Cost $",
});

export const seedPlan = headersOf("SeedPlan", {
  field: "Field",
  acres: "Acres",
  nextCrop: "Crop",
  rowWidth: "Row width in",
  stand: "Stand wanted plants/ac",
  rate: "Seeds to plant seeds/ac",
  spacing: "Seed to seed in",
  units: "Units to buy",
  perAcre: "Cost $/ac",
  cost: "Cost $",
});
