import type { Cited } from "../table";

export type ManureSpecies = "cattle" | "swine" | "poultry" | "horse" | "sheep";

/** A manure with what it typically holds. A laboratory's own figures come first. */
export interface Manure extends Partial<Cited> {
  readonly label: string;
  readonly also: readonly string[];
  readonly species: ManureSpecies;
  /** How it is stored, as availability tables tell it apart. */
  readonly form: "slurry" | "pit" | "lagoon" | "solid";
  /** lb per unit; left out: the laboratory's figure is needed. */
  readonly N?: number;
  readonly ammoniumN?: number;
  readonly P2O5?: number;
  readonly K2O?: number;
}

const mwps = { mark: "M", source: "mwps-18" } as const;
const midAtlantic = { mark: "V", source: "mid-atlantic-manure" } as const;

/** Liquids per 1,000 gal, solids per ton, as applied. */
export const manures = {
  swineFinishing: {
    label: "swine finishing, deep pit",
    also: ["swine finishing", "swine", "hog", "pig", "swine pit"],
    species: "swine",
    form: "pit",
    N: 50,
    ammoniumN: 33,
    P2O5: 42,
    K2O: 30,
    ...mwps,
  },
  swineWetDry: {
    label: "swine finishing, wet-dry feeders",
    also: ["swine wet-dry"],
    species: "swine",
    form: "pit",
    N: 75,
    ammoniumN: 50,
    P2O5: 54,
    K2O: 40,
    ...mwps,
  },
  swineNursery: {
    label: "swine nursery",
    also: ["nursery pig"],
    species: "swine",
    form: "pit",
    N: 25,
    ammoniumN: 14,
    P2O5: 19,
    K2O: 22,
    ...mwps,
  },
  swineFarrow: {
    label: "swine farrow-to-finish",
    also: ["farrow to finish"],
    species: "swine",
    form: "pit",
    N: 28,
    ammoniumN: 16,
    P2O5: 24,
    K2O: 23,
    ...mwps,
  },
  swineLagoon: {
    label: "swine lagoon",
    also: ["lagoon effluent"],
    species: "swine",
    form: "lagoon",
    N: 4,
    ammoniumN: 3,
    P2O5: 3,
    K2O: 4,
    ...mwps,
    note: "Highly variable.",
  },
  swineBedded: { label: "swine, bedded", also: ["bedded swine", "swine solid"], species: "swine", form: "solid" },
  dairySlurry: {
    label: "dairy slurry",
    also: ["dairy", "dairy cow slurry", "cow slurry"],
    species: "cattle",
    form: "slurry",
    N: 31,
    ammoniumN: 6,
    P2O5: 15,
    K2O: 19,
    ...mwps,
  },
  heiferSlurry: {
    label: "dairy heifer slurry",
    also: ["heifer slurry"],
    species: "cattle",
    form: "slurry",
    N: 32,
    ammoniumN: 6,
    P2O5: 14,
    K2O: 28,
    ...mwps,
  },
  beefSlurry: {
    label: "beef slurry",
    also: ["beef finishing slurry"],
    species: "cattle",
    form: "slurry",
    N: 29,
    ammoniumN: 8,
    P2O5: 18,
    K2O: 26,
    ...mwps,
  },
  dairySolid: {
    label: "dairy solid, bedded",
    also: ["dairy solid", "dairy pack"],
    species: "cattle",
    form: "solid",
    N: 9,
    ammoniumN: 2,
    P2O5: 4,
    K2O: 7,
    ...mwps,
  },
  beefSolid: {
    label: "beef solid, earthen lot",
    also: ["beef solid", "beef", "feedlot"],
    species: "cattle",
    form: "solid",
    N: 11,
    ammoniumN: 4,
    P2O5: 7,
    K2O: 11,
    ...mwps,
  },
  broilerLitter: {
    label: "broiler litter",
    also: ["broiler", "poultry litter", "chicken litter"],
    species: "poultry",
    form: "solid",
    N: 59,
    P2O5: 63,
    K2O: 40,
    ...midAtlantic,
  },
  broilerLitterMidwest: {
    label: "broiler litter, Midwest",
    also: ["Midwest broiler litter"],
    species: "poultry",
    form: "solid",
    N: 46,
    ammoniumN: 12,
    P2O5: 53,
    K2O: 36,
    ...mwps,
  },
  turkeyFresh: {
    label: "turkey, fresh",
    also: ["turkey"],
    species: "poultry",
    form: "solid",
    N: 27,
    P2O5: 25,
    K2O: 12,
    ...midAtlantic,
  },
  turkeyLitter: {
    label: "turkey tom litter",
    also: ["turkey litter"],
    species: "poultry",
    form: "solid",
    N: 40,
    ammoniumN: 16,
    P2O5: 50,
    K2O: 30,
    ...mwps,
  },
  layer: {
    label: "layer, solid",
    also: ["layer", "hen", "laying hen"],
    species: "poultry",
    form: "solid",
    N: 35,
    P2O5: 42,
    K2O: 28,
    ...midAtlantic,
  },
  horse: {
    label: "horse",
    also: ["horse, solid"],
    species: "horse",
    form: "solid",
    N: 9,
    P2O5: 6,
    K2O: 11,
    ...midAtlantic,
  },
  sheep: { label: "sheep", also: ["sheep, solid"], species: "sheep", form: "solid" },
} as const satisfies Record<string, Manure>;

export type ManureKey = keyof typeof manures;

export const manureNutrients = {
  N: { label: "N", also: ["nitrogen"] },
  P2O5: { label: "P2O5", also: ["phosphate", "P", "phosphorus"] },
  K2O: { label: "K2O", also: ["potash", "K", "potassium"] },
} as const;

export type ManureNutrientKey = keyof typeof manureNutrients;
