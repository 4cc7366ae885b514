import { headersOf } from "../../model/table";

/** The tables of the farm plan and what their columns are called; every sheet refers to them by key. */
export const cropTable = headersOf("Crops", {
  crop: "Crop",
  price: "Price $/bu",
  yield: "Usual yield bu/ac",
  costPerBushel: "Haul and dry $/bu",
  nitrogen: "Nitrogen lb/ac",
  sulfur: "Sulfur lb/ac",
  zinc: "Zinc lb/ac",
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
  zinc: "Zn %",
  price: "Price $/ton",
  most: "Most in a blend lb/ac",
  nitrogenPrice: "N $/lb",
  phosphatePrice: "P2O5 $/lb",
  potashPrice: "K2O $/lb",
  sulfurPrice: "S $/lb",
  zincPrice: "Zn $/lb",
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
  sampled: "Sampled",
  ph: "Soil pH",
  bufferPh: "Buffer pH",
  phosphorus: "P ppm",
  potassium: "K ppm",
  cec: "CEC meq/100 g",
  organicMatter: "Organic matter %",
  texture: "Texture",
  sulfur: "S ppm",
  zinc: "Zn ppm",
  nitrate: "Nitrate-N 0 to 24 in lb/ac",
  sulfate: "Sulfate-S 0 to 24 in lb/ac",
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
  asBefore: "Test after as before ppm",
  planPutsOn: "Plan puts on lb/ac",
  withPlan: "Test after by plan ppm",
  withNothing: "Test after nothing on ppm",
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

export type PlannedNutrient = "nitrogen" | "phosphate" | "potash" | "sulfur" | "zinc";

/** What the guide asks for by nutrient, and what the plan puts on. */
const byGuide = {
  nitrogenNeed: "N by guide lb/ac",
  nitrogen: "N planned lb/ac",
  phosphateNeed: "P2O5 by guide lb/ac",
  phosphate: "P2O5 planned lb/ac",
  potashNeed: "K2O by guide lb/ac",
  potash: "K2O planned lb/ac",
  sulfurNeed: "S by guide lb/ac",
  sulfur: "S planned lb/ac",
  zincNeed: "Zn by guide lb/ac",
  zinc: "Zn planned lb/ac",
} as const;

export const fertilityPlan = headersOf("FertilityPlan", {
  field: "Field",
  acres: "Acres",
  nextCrop: "Next crop",
  yieldGoal: "Yield goal bu/ac",
  lime: "Your lime ton/ac",
  ...byGuide,
});

export const rotationPlan = headersOf("RotationPlan", {
  field: "Field",
  nextCrop: "Next crop",
  afterCrop: "Crop after it",
  afterYield: "Its yield bu/ac",
  nitrogenNeed: byGuide.nitrogenNeed,
  phosphateNeed: byGuide.phosphateNeed,
  potashNeed: byGuide.potashNeed,
  sulfurNeed: byGuide.sulfurNeed,
  zincNeed: byGuide.zincNeed,
  lime: "Lime once ton/ac",
  nitrogen: "N both crops lb/ac",
  phosphate: "P2O5 both crops lb/ac",
  potash: "K2O both crops lb/ac",
  sulfur: "S both crops lb/ac",
  zinc: "Zn both crops lb/ac",
});

/** Pounds of product that carry what is planned. */
export const productPlan = headersOf("ProductPlan", {
  field: "Field",
  acres: "Acres",
  nextCrop: "Next crop",
  phosphate: "Phosphate product lb/ac",
  potash: "Potash product lb/ac",
  sulfur: "Sulfur product lb/ac",
  zinc: "Zinc product lb/ac",
  nitrogenInIt: "N that comes along lb/ac",
  nitrogen: "Nitrogen product lb/ac",
  spread: "Acres to spread",
  perAcre: "Cost $/ac",
  cost: "Cost $",
});

export const shoppingList = headersOf("ShoppingList", {
  material: "Material",
  purpose: "What for",
  pounds: "Pounds",
  tons: "Tons",
  price: "Price $/ton",
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
  bestStand: "Stand that pays best plants/ac",
  bestRate: "Seeds for it seeds/ac",
});
