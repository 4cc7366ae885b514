import type { CropKey } from "../crops";
import type { Cited } from "../table";
import type { PreviousKey, TextureKey } from "./words";

/** Regions that print nitrogen credits for a previous crop. */
export const creditGuides = {
  IA: { label: "IA", also: ["Iowa"] },
  "IN-MI-OH": { label: "IN-MI-OH", also: ["Ohio", "Indiana", "Michigan", "OH", "IN", "MI", "Tri-State"] },
  KS: { label: "KS", also: ["Kansas"] },
  MN: { label: "MN", also: ["Minnesota"] },
  ND: { label: "ND", also: ["North Dakota"] },
  NE: { label: "NE", also: ["Nebraska"] },
  SD: { label: "SD", also: ["South Dakota"] },
  WI: { label: "WI", also: ["Wisconsin"] },
} as const;

export type CreditGuideKey = keyof typeof creditGuides;

/** A printed credit. Rows of one crop split by stand run from the thickest stand down. */
export interface CreditRow extends Cited {
  readonly guide: CreditGuideKey;
  readonly previous: readonly PreviousKey[];
  /** Crops it is printed for; left out: any. */
  readonly before?: readonly CropKey[];
  readonly soils?: readonly TextureKey[];
  /** Fewest plants per square foot of this row. */
  readonly fromPlants?: number;
  /** lb N/ac; the middle of a printed range. */
  readonly lb: number;
  readonly low?: number;
  readonly high?: number;
  /** lb per bushel of the previous crop: below `upToBu`, or, where `lb` is a ceiling, everywhere. */
  readonly perBu?: { readonly lb: number; readonly upToBu: number };
  /** Taken off where an alfalfa regrowth is shorter than 8 in. */
  readonly shortRegrowthLb?: number;
}

const wheats = ["wheat", "springWheat"] as const;
const heavier = ["medium", "fine"] as const;

export const creditRows: readonly CreditRow[] = [
  {
    guide: "WI",
    previous: ["alfalfa"],
    soils: heavier,
    fromPlants: 4,
    lb: 190,
    shortRegrowthLb: 40,
    mark: "V",
    source: "hay-forage-credit",
    note: "Medium and fine soil; 40 lb less where regrowth is under 8 in.",
  },
  {
    guide: "MN",
    previous: ["alfalfa"],
    before: ["corn"],
    fromPlants: 4,
    lb: 150,
    mark: "V",
    source: "hay-forage-credit",
  },
  { guide: "MN", previous: ["alfalfa"], before: ["corn"], fromPlants: 2, lb: 100, mark: "M", source: "umn-corn" },
  { guide: "MN", previous: ["alfalfa"], before: ["corn"], fromPlants: 0, lb: 40, mark: "M", source: "umn-corn" },
  {
    guide: "MN",
    previous: ["alfalfa"],
    before: ["sunflower"],
    fromPlants: 4,
    lb: 75,
    mark: "V",
    source: "umn-sunflower",
    locator: "Table 1",
    note: "20 lb more where the third or fourth cut was left.",
  },
  {
    guide: "MN",
    previous: ["alfalfa"],
    before: ["sunflower"],
    fromPlants: 2,
    lb: 50,
    mark: "V",
    source: "umn-sunflower",
    locator: "Table 1",
    note: "20 lb more where the third or fourth cut was left.",
  },
  {
    guide: "MN",
    previous: ["alfalfa"],
    before: ["sunflower"],
    fromPlants: 0,
    lb: 0,
    mark: "V",
    source: "umn-sunflower",
    locator: "Table 1",
    note: "20 lb more where the third or fourth cut was left.",
  },
  {
    guide: "MN",
    previous: ["soybean"],
    before: ["corn"],
    soils: ["sandy"],
    lb: 30,
    mark: "V",
    source: "umn-corn",
    note: "Irrigated sand.",
  },
  {
    guide: "MN",
    previous: ["soybean"],
    before: [...wheats, "sunflower"],
    lb: 20,
    mark: "V",
    source: "umn-sunflower",
    locator: "Table 1",
    note: "The wheat page prints the same.",
  },
  {
    guide: "MN",
    previous: ["dryBean", "fieldPea"],
    before: [...wheats, "sunflower"],
    lb: 10,
    mark: "V",
    source: "umn-sunflower",
    locator: "Table 1",
    note: "The wheat page prints the same.",
  },
  {
    guide: "MN",
    previous: ["sweetClover"],
    before: ["sunflower"],
    lb: 10,
    mark: "V",
    source: "umn-sunflower",
    locator: "Table 1",
  },
  {
    guide: "MN",
    previous: ["redClover"],
    before: ["sunflower"],
    lb: 35,
    mark: "V",
    source: "umn-sunflower",
    locator: "Table 1",
  },
  { guide: "SD", previous: ["alfalfa"], fromPlants: 5.01, lb: 150, mark: "M", source: "sdsu-ec750" },
  { guide: "SD", previous: ["alfalfa"], fromPlants: 3, lb: 100, mark: "M", source: "sdsu-ec750" },
  { guide: "SD", previous: ["alfalfa"], fromPlants: 1, lb: 50, mark: "M", source: "sdsu-ec750" },
  { guide: "SD", previous: ["alfalfa"], fromPlants: 0, lb: 0, mark: "M", source: "sdsu-ec750" },
  { guide: "SD", previous: ["soybean", "dryBean", "fieldPea", "sweetClover"], lb: 40, mark: "M", source: "sdsu-ec750" },
  {
    guide: "SD",
    previous: ["redClover"],
    lb: 80,
    mark: "M",
    source: "unl-ec117",
    note: "Recalled as 80 % of the alfalfa credit, 80 lb.",
  },
  {
    guide: "ND",
    previous: ["soybean", "dryBean", "fieldPea", "lentil"],
    lb: 40,
    mark: "V",
    source: "ndsu-credit-2023",
  },
  {
    guide: "ND",
    previous: ["sugarBeet"],
    lb: 0,
    low: 0,
    high: 80,
    mark: "V",
    source: "ndsu-beet-tops-2018",
    note: "Yellow tops 0, dark green up to 80 lb: enter what yours leave under credits.",
  },
  {
    guide: "NE",
    previous: ["soybean"],
    soils: heavier,
    lb: 45,
    perBu: { lb: 1, upToBu: 30 },
    mark: "M",
    source: "unl-ec117",
    note: "Under 30 bu/ac of soybean: 1 lb per bushel.",
  },
  {
    guide: "NE",
    previous: ["soybean"],
    soils: ["sandy"],
    lb: 35,
    perBu: { lb: 1, upToBu: 30 },
    mark: "M",
    source: "unl-ec117",
    note: "Under 30 bu/ac of soybean: 1 lb per bushel.",
  },
  {
    guide: "NE",
    previous: ["alfalfa"],
    fromPlants: 4,
    lb: 100,
    low: 80,
    high: 120,
    mark: "V",
    source: "north-platte-credits",
  },
  {
    guide: "NE",
    previous: ["alfalfa"],
    fromPlants: 2,
    lb: 50,
    low: 40,
    high: 60,
    mark: "V",
    source: "north-platte-credits",
    note: "Half stand.",
  },
  { guide: "NE", previous: ["dryBean"], before: ["corn"], lb: 40, mark: "V", source: "north-platte-credits" },
  {
    guide: "NE",
    previous: ["redClover"],
    lb: 80,
    mark: "M",
    source: "unl-ec117",
    note: "Recalled as 80 % of the alfalfa credit, 80 lb.",
  },
  {
    guide: "KS",
    previous: ["alfalfa"],
    before: ["corn", "sorghum"],
    fromPlants: 4,
    lb: 120,
    low: 100,
    high: 140,
    mark: "V",
    source: "hay-forage-credit",
  },
  { guide: "KS", previous: ["soybean"], before: ["corn", "sorghum"], lb: 40, mark: "M", source: "ksu-mf2586" },
  {
    guide: "KS",
    previous: ["soybean"],
    before: ["wheat"],
    lb: 0,
    mark: "V",
    source: "ksu-legume-wheat",
    note: "Wheat drilled within days or weeks of the soybean harvest.",
  },
  {
    guide: "IA",
    previous: ["soybean"],
    lb: 50,
    perBu: { lb: 1, upToBu: 50 },
    mark: "M",
    source: "isu-pm1688-2013",
    note: "1 lb per bushel to 50. History: rates printed by rotation already hold it.",
  },
  { guide: "IN-MI-OH", previous: ["soybean"], before: ["wheat"], lb: 0, mark: "V", source: "osu-wheat-nitrogen-2011" },
];

/** Alfalfa in the second year after it: share of the first year's credit. */
export const secondYearCredit = {
  share: 0.5,
  mark: "V",
  source: "hay-forage-credit",
  note: "Second year: about half of the first.",
} as const satisfies Cited & { share: number };
