import type { GrainKey } from "../grain";
import type { Cited, ReferenceTable } from "../table";

/** Crops and seed sizes whose loss on the ground can be counted. */
export const lossCrops = {
  corn: { label: "corn", also: ["shelled corn", "maize"] },
  soybean: { label: "soybean", also: ["soy", "soya", "bean"] },
  smallSoybean: { label: "small soybean", also: ["small-seeded soybean", "soybean (small seed)"] },
  largeSoybean: { label: "large soybean", also: ["large-seeded soybean", "soybean (large seed)"] },
  springWheat: { label: "spring wheat", also: ["hard red spring wheat", "hrs wheat"] },
  durum: { label: "durum", also: ["durum wheat"] },
  winterWheat: { label: "winter wheat", also: ["wheat", "soft red winter wheat", "hard red winter wheat"] },
  barley: { label: "barley", also: ["malting barley", "feed barley"] },
  oat: { label: "oat", also: ["oats"] },
  rye: { label: "rye", also: ["cereal rye", "winter rye"] },
  sorghum: { label: "grain sorghum", also: ["sorghum", "milo"] },
  oilSunflower: { label: "oil sunflower", also: ["sunflower", "sunflower (oil)"] },
  confectionSunflower: { label: "confection sunflower", also: ["confectionery sunflower", "sunflower (confection)"] },
  canola: { label: "canola", also: ["rapeseed", "oilseed rape"] },
  flax: { label: "flax", also: ["linseed", "flaxseed"] },
  navyBean: { label: "navy bean", also: ["dry bean (navy)"] },
  pintoBean: { label: "pinto bean", also: ["pinto", "dry bean (pinto)"] },
  buckwheat: { label: "buckwheat", also: [] },
  prosoMillet: { label: "proso millet", also: ["proso"] },
  foxtailMillet: { label: "foxtail millet", also: [] },
} as const;
export type LossCropKey = keyof typeof lossCrops;

/** The bushel behind each; null: bushels differ by state. */
export const bushelOf: Readonly<Record<LossCropKey, GrainKey | null>> = {
  corn: "corn",
  soybean: "soybean",
  smallSoybean: "soybean",
  largeSoybean: "soybean",
  springWheat: "springWheat",
  durum: "springWheat",
  winterWheat: "wheat",
  barley: "barley",
  oat: "oat",
  rye: "rye",
  sorghum: "sorghum",
  oilSunflower: null,
  confectionSunflower: null,
  canola: "canola",
  flax: "flax",
  navyBean: "dryBean",
  pintoBean: "dryBean",
  buckwheat: "buckwheat",
  prosoMillet: "prosoMillet",
  foxtailMillet: "foxtailMillet",
};

export interface LossCountRow extends Cited {
  readonly crop: LossCropKey;
  readonly seedsPerSqFtPerBu: number;
}

const ndsu = { mark: "V", source: "ndsu-harvest-losses-2002" } as const;

/** Seeds on a square foot that make a bushel an acre, as printed. */
export const lossCounts = {
  title: "Seeds per square foot that are a bushel an acre",
  units: { seedsPerSqFtPerBu: "seeds/sq ft" },
  basis: "average seed size; a count of the seeds in a pound of the crop at hand is better",
  rows: [
    { crop: "corn", seedsPerSqFtPerBu: 2, ...ndsu },
    { crop: "soybean", seedsPerSqFtPerBu: 4, mark: "V", source: "msu-soybean-loss-2012" },
    { crop: "smallSoybean", seedsPerSqFtPerBu: 4.5, ...ndsu },
    { crop: "largeSoybean", seedsPerSqFtPerBu: 3.5, ...ndsu },
    { crop: "springWheat", seedsPerSqFtPerBu: 20, ...ndsu },
    { crop: "durum", seedsPerSqFtPerBu: 16, ...ndsu },
    { crop: "barley", seedsPerSqFtPerBu: 15, ...ndsu, note: "Hofman prints 14." },
    { crop: "oat", seedsPerSqFtPerBu: 11, ...ndsu, note: "Hofman prints 10." },
    { crop: "flax", seedsPerSqFtPerBu: 113, ...ndsu },
    { crop: "sorghum", seedsPerSqFtPerBu: 18, ...ndsu },
    {
      crop: "oilSunflower",
      seedsPerSqFtPerBu: 5,
      ...ndsu,
      note: "Stands for a bushel of 24 lb at its 9,000 seeds in a pound.",
    },
    {
      crop: "confectionSunflower",
      seedsPerSqFtPerBu: 2.5,
      ...ndsu,
      note: "Stands for a bushel of 22 lb at its 5,000 seeds in a pound.",
    },
    { crop: "canola", seedsPerSqFtPerBu: 172, ...ndsu },
    { crop: "navyBean", seedsPerSqFtPerBu: 4, ...ndsu },
    { crop: "pintoBean", seedsPerSqFtPerBu: 2, ...ndsu },
    { crop: "buckwheat", seedsPerSqFtPerBu: 16, ...ndsu },
    {
      crop: "prosoMillet",
      seedsPerSqFtPerBu: 84,
      ...ndsu,
      note: "Stands for a bushel of about 46 lb at its 80,000 seeds in a pound.",
    },
    {
      crop: "foxtailMillet",
      seedsPerSqFtPerBu: 242,
      ...ndsu,
      note: "Stands for a bushel of about 48 lb at its 220,000 seeds in a pound.",
    },
  ],
} as const satisfies ReferenceTable<LossCountRow>;

export interface SeedsPerPoundRow extends Cited {
  readonly crop: LossCropKey;
  readonly seedsPerLb: number;
}

/** Seeds in a pound, for crops whose printed count is missing or contradicts them. */
export const seedsPerPound = {
  title: "Seeds in a pound",
  units: { seedsPerLb: "seeds/lb" },
  basis: "average seed size",
  rows: [
    {
      crop: "winterWheat",
      seedsPerLb: 16_000,
      mark: "V",
      source: "unl-cropwatch-wheat-2012",
      note: "10,000 to 20,000 is printed elsewhere.",
    },
    {
      crop: "rye",
      seedsPerLb: 18_000,
      ...ndsu,
      note: "The 42 seeds per square foot printed beside it do not fit these 18,000 seeds in a pound, which give 23.",
    },
  ],
} as const satisfies ReferenceTable<SeedsPerPoundRow>;

export interface LossTargetRow extends Cited {
  readonly crops: readonly LossCropKey[];
  readonly lowPct: number;
  readonly highPct: number;
}

/** Losses that good work keeps to. */
export const lossTargets = {
  title: "Harvest loss that good work keeps to",
  units: { lowPct: "%", highPct: "%" },
  basis: "percent of the crop that stood: harvested plus lost",
  rows: [
    {
      crops: ["corn"],
      lowPct: 3,
      highPct: 5,
      mark: "V",
      source: "missouri-g1290",
      note: "Machine loss; 1 % of whole ears is attainable.",
    },
    {
      crops: ["soybean", "smallSoybean", "largeSoybean"],
      lowPct: 3,
      highPct: 3,
      mark: "V",
      source: "unl-soybean-loss",
      note: "About 80 % of soybean losses happen at the header (Michigan State University 2012).",
    },
    {
      crops: ["springWheat", "durum", "winterWheat", "barley", "oat", "rye"],
      lowPct: 3,
      highPct: 3,
      mark: "V",
      source: "hofman-grain-losses",
    },
  ],
} as const satisfies ReferenceTable<LossTargetRow>;

/** Whole ears: one ear of three quarters of a pound on a hundredth of an acre is about a bushel an acre. */
export const earLoss = {
  title: "Dropped ears of corn",
  units: { earLb: "lb", fractionOfAcre: "of an acre" },
  basis: "one ear on that ground is one bushel an acre",
  rows: [{ earLb: 0.75, fractionOfAcre: 0.01, mark: "V", source: "missouri-g1290" }],
} as const satisfies ReferenceTable<Cited & { readonly earLb: number; readonly fractionOfAcre: number }>;
