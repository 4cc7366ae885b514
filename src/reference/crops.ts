import type { Cited } from "./table";

/** The crops we know by name: what people call them and the unit their yield is counted in. */
export interface Crop {
  readonly label: string;
  readonly also: readonly string[];
  /** Unit of the harvested main part, per acre. */
  readonly yieldUnit: "bu" | "ton" | "cwt" | "bale";
  /** Above published records, so that only slips are refused; same unit. */
  readonly yieldCeiling: number;
}

export const crops = {
  corn: {
    label: "corn",
    also: ["maize", "field corn", "corn grain", "shelled corn"],
    yieldUnit: "bu",
    yieldCeiling: 650,
  },
  cornSilage: {
    label: "corn silage",
    also: ["silage corn", "maize silage", "corn for silage"],
    yieldUnit: "ton",
    yieldCeiling: 60,
  },
  soybean: { label: "soybean", also: ["soy", "soya", "bean", "soybean grain"], yieldUnit: "bu", yieldCeiling: 250 },
  wheat: {
    label: "wheat",
    also: ["winter wheat", "soft red winter wheat", "hard red winter wheat"],
    yieldUnit: "bu",
    yieldCeiling: 300,
  },
  springWheat: {
    label: "spring wheat",
    also: ["hard red spring wheat", "durum", "durum wheat"],
    yieldUnit: "bu",
    yieldCeiling: 250,
  },
  oat: { label: "oat", also: ["oats grain"], yieldUnit: "bu", yieldCeiling: 300 },
  barley: { label: "barley", also: ["malting barley", "feed barley"], yieldUnit: "bu", yieldCeiling: 300 },
  rye: { label: "rye", also: ["cereal rye", "winter rye"], yieldUnit: "bu", yieldCeiling: 200 },
  triticale: { label: "triticale", also: [], yieldUnit: "bu", yieldCeiling: 250 },
  sorghum: { label: "grain sorghum", also: ["sorghum", "milo"], yieldUnit: "bu", yieldCeiling: 300 },
  sunflower: { label: "sunflower", also: ["oil sunflower", "sunflower seed"], yieldUnit: "cwt", yieldCeiling: 60 },
  canola: { label: "canola", also: ["rapeseed", "oilseed rape"], yieldUnit: "bu", yieldCeiling: 150 },
  dryBean: { label: "dry bean", also: ["edible bean", "navy bean", "pinto bean"], yieldUnit: "bu", yieldCeiling: 100 },
  fieldPea: { label: "field pea", also: ["pea", "dry pea"], yieldUnit: "bu", yieldCeiling: 150 },
  chickpea: { label: "chickpea", also: ["garbanzo", "chick pea"], yieldUnit: "bu", yieldCeiling: 80 },
  lentil: { label: "lentil", also: [], yieldUnit: "bu", yieldCeiling: 80 },
  flax: { label: "flax", also: ["linseed", "flaxseed"], yieldUnit: "bu", yieldCeiling: 80 },
  buckwheat: { label: "buckwheat", also: [], yieldUnit: "bu", yieldCeiling: 80 },
  sugarBeet: { label: "sugar beet", also: ["sugarbeet", "beet"], yieldUnit: "ton", yieldCeiling: 70 },
  potato: { label: "potato", also: ["potatoes"], yieldUnit: "cwt", yieldCeiling: 1000 },
  alfalfa: { label: "alfalfa", also: ["lucerne", "alfalfa hay"], yieldUnit: "ton", yieldCeiling: 25 },
  redClover: { label: "red clover", also: ["red clover hay"], yieldUnit: "ton", yieldCeiling: 15 },
  trefoil: { label: "birdsfoot trefoil", also: ["trefoil"], yieldUnit: "ton", yieldCeiling: 15 },
  bromegrass: { label: "bromegrass", also: ["brome"], yieldUnit: "ton", yieldCeiling: 15 },
  orchardgrass: { label: "orchardgrass", also: ["orchard grass"], yieldUnit: "ton", yieldCeiling: 15 },
  fescue: { label: "tall fescue", also: ["fescue"], yieldUnit: "ton", yieldCeiling: 15 },
  timothy: { label: "timothy", also: ["timothy hay"], yieldUnit: "ton", yieldCeiling: 15 },
  bermudagrass: {
    label: "bermudagrass",
    also: ["bermuda", "coastal bermudagrass"],
    yieldUnit: "ton",
    yieldCeiling: 20,
  },
  switchgrass: { label: "switchgrass", also: [], yieldUnit: "ton", yieldCeiling: 20 },
  sorghumSudan: {
    label: "sorghum-sudangrass",
    also: ["sorghum sudan", "sudangrass"],
    yieldUnit: "ton",
    yieldCeiling: 20,
  },
  cotton: { label: "cotton", also: ["cotton lint"], yieldUnit: "bale", yieldCeiling: 8 },
  rice: { label: "rice", also: ["rough rice", "paddy rice"], yieldUnit: "cwt", yieldCeiling: 200 },
  peanut: { label: "peanut", also: ["groundnut"], yieldUnit: "ton", yieldCeiling: 6 },
  tobacco: { label: "tobacco", also: ["flue-cured tobacco"], yieldUnit: "cwt", yieldCeiling: 60 },
} as const satisfies Record<string, Crop>;

export type CropKey = keyof typeof crops;

/** Weight of a trade bushel. A grain without a row has no agreed bushel here. */
export interface GrainRow<Grain extends string> extends Cited {
  readonly grain: Grain;
  readonly bushelWeightLb: number;
}

/** The moisture at which a bushel is paid in full. */
export interface MarketMoistureRow<Grain extends string> extends Cited {
  readonly grain: Grain;
  /** % of wet weight. */
  readonly marketMoisturePct: number;
}
