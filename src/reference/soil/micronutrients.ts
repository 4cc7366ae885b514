import type { CropKey } from "../crops";
import type { Cited } from "../table";

export const micronutrients = {
  Zn: { label: "Zn", also: ["zinc"] },
  Mn: { label: "Mn", also: ["manganese"] },
  B: { label: "B", also: ["boron"] },
  Cu: { label: "Cu", also: ["copper"] },
  Fe: { label: "Fe", also: ["iron"] },
  Mg: { label: "Mg", also: ["magnesium"] },
  Cl: { label: "Cl", also: ["chloride", "chlorine"] },
} as const;

export type MicronutrientKey = keyof typeof micronutrients;

export const microGuides = {
  IA: { label: "IA", also: ["Iowa"] },
  KS: { label: "KS", also: ["Kansas"] },
  MI: { label: "MI", also: ["Michigan"] },
  MN: { label: "MN", also: ["Minnesota"] },
  ncA: { label: "NC equation A", also: ["NC A", "North Carolina A"] },
  ncB: { label: "NC equation B", also: ["NC B", "North Carolina B"] },
  ND: { label: "ND", also: ["North Dakota"] },
  NE: { label: "NE", also: ["Nebraska"] },
  NJ: { label: "NJ", also: ["New Jersey"] },
  OH: { label: "OH", also: ["Ohio"] },
  PA: { label: "PA", also: ["Pennsylvania"] },
  SD: { label: "SD", also: ["South Dakota"] },
  south: { label: "southern US", also: ["southern USA", "South"] },
  general: { label: "general", also: ["any state"] },
} as const;

export type MicroGuideKey = keyof typeof microGuides;

export const microPlacements = {
  broadcast: { label: "broadcast", also: ["broadcast and incorporated"] },
  band: { label: "band", also: ["banded", "starter", "row"] },
  foliar: { label: "foliar", also: ["spray"] },
} as const;

export type MicroPlacementKey = keyof typeof microPlacements;

/** How a guide reckons a micronutrient, lb/ac. */
export type MicroForm =
  /** Upper bounds belong to their class; tests are rounded to the printed decimals. */
  | {
      readonly kind: "classes";
      readonly decimals: number;
      readonly classes: readonly { readonly upTo: number | null; readonly broadcast: number; readonly band?: number }[];
    }
  /** constant + perTest × test + perPh × pH, not below `least` under `below`, none from there up. */
  | {
      readonly kind: "line";
      readonly constant: number;
      readonly perTest: number;
      readonly perPh: number;
      readonly least: number;
      readonly below: number | null;
    }
  /** An availability index; a rate up to a critical value, none above. null: no rate is printed. */
  | {
      readonly kind: "index";
      readonly constant: number;
      readonly perTest: number;
      readonly perPh: number;
      readonly critical: number;
      readonly lb: number | null;
    }
  /** Prints a critical level and no rate. */
  | { readonly kind: "critical"; readonly level: number; readonly richCecLevel?: number; readonly how: string }
  /** One rate, whatever the test. */
  | { readonly kind: "fixed"; readonly lb: number; readonly low: number; readonly high: number };

export interface MicroRule extends Cited {
  readonly guide: MicroGuideKey;
  readonly nutrient: MicronutrientKey;
  readonly crops: readonly CropKey[] | "all";
  /** The test it reads, in words and unit. */
  readonly test: string;
  readonly unit: "ppm" | "lb/ac" | "index";
  /** Placement its rate is printed for; left out: classes print their own. */
  readonly placement?: MicroPlacementKey;
  readonly on?: "mineral" | "organic";
  readonly form: MicroForm;
}

const forages = ["redClover", "trefoil", "bromegrass", "orchardgrass", "fescue", "timothy"] as const;
const dtpa = { test: "DTPA", unit: "ppm" } as const;
const mehlich3 = { test: "Mehlich-3", unit: "ppm" } as const;
const acid = { test: "0.1 N hydrochloric acid", unit: "ppm" } as const;
const jersey = { guide: "NJ", crops: "all", ...mehlich3, mark: "V", source: "rutgers-soil-lab" } as const;
const noRate = "the page prints no rate";

export const microRules: readonly MicroRule[] = [
  {
    guide: "MN",
    nutrient: "Zn",
    crops: ["corn", "dryBean"],
    ...dtpa,
    mark: "V",
    source: "umn-micronutrients-2009",
    form: {
      kind: "classes",
      decimals: 2,
      classes: [
        { upTo: 0.5, broadcast: 10, band: 2 },
        { upTo: 0.75, broadcast: 5, band: 1 },
        { upTo: null, broadcast: 0, band: 0 },
      ],
    },
  },
  {
    guide: "IA",
    nutrient: "Zn",
    crops: ["corn", "sorghum"],
    ...dtpa,
    mark: "M",
    source: "isu-pm1688-2013",
    placement: "broadcast",
    form: {
      kind: "classes",
      decimals: 1,
      classes: [
        { upTo: 0.4, broadcast: 10 },
        { upTo: 0.8, broadcast: 5 },
        { upTo: null, broadcast: 0 },
      ],
    },
  },
  {
    guide: "KS",
    nutrient: "Zn",
    crops: ["corn", "sorghum", "soybean"],
    ...dtpa,
    mark: "M",
    source: "ksu-mf2586",
    placement: "broadcast",
    form: { kind: "line", constant: 11.5, perTest: -11.25, perPh: 0, least: 1, below: 1 },
    note: "None above 1.0 ppm.",
  },
  {
    guide: "south",
    nutrient: "Zn",
    crops: ["corn"],
    test: "DTPA or its equivalent",
    unit: "ppm",
    mark: "V",
    source: "ipni-zinc-2013",
    placement: "broadcast",
    form: { kind: "line", constant: 10, perTest: 0, perPh: 0, least: 0, below: 1 },
    note: "Lasts 3 to 5 years.",
  },
  {
    guide: "NE",
    nutrient: "Zn",
    crops: ["corn"],
    ...dtpa,
    mark: "V",
    source: "unl-zinc",
    form: { kind: "critical", level: 0.8, how: "apply below 0.8 ppm; the page prints no rate" },
  },
  {
    guide: "ND",
    nutrient: "Zn",
    crops: ["corn"],
    ...dtpa,
    mark: "V",
    source: "ndsu-costs-2022",
    form: { kind: "critical", level: 1, how: "put zinc in the starter below 1.0 ppm; the page prints no rate" },
  },
  {
    guide: "MI",
    nutrient: "Zn",
    crops: "all",
    ...acid,
    mark: "M",
    source: "msu-e2567-1995",
    placement: "band",
    form: { kind: "line", constant: -32, perTest: -0.4, perPh: 5, least: 0, below: null },
    note: "Responsive crops.",
  },
  {
    guide: "MI",
    nutrient: "Mn",
    crops: "all",
    ...acid,
    on: "mineral",
    mark: "M",
    source: "msu-e2567-1995",
    placement: "band",
    form: { kind: "line", constant: -36, perTest: -0.35, perPh: 6.2, least: 0, below: null },
    note: "Responsive crops.",
  },
  {
    guide: "MI",
    nutrient: "Mn",
    crops: "all",
    ...acid,
    on: "organic",
    mark: "M",
    source: "msu-e2567-1995",
    placement: "band",
    form: { kind: "line", constant: -46, perTest: -0.31, perPh: 8.38, least: 0, below: null },
    note: "Responsive crops.",
  },
  {
    guide: "ncA",
    nutrient: "Mn",
    crops: "all",
    test: "Mehlich-3 manganese index",
    unit: "index",
    mark: "M",
    source: "ncda-circular1-2014",
    locator: "Table 2.3",
    placement: "broadcast",
    form: { kind: "index", constant: 101.2, perTest: 0.6, perPh: -15.2, critical: 25, lb: 10 },
    note: "Manganese-sensitive crops. The equation is printed; its threshold of 25 is from memory.",
  },
  {
    guide: "ncB",
    nutrient: "Mn",
    crops: "all",
    test: "Mehlich-3 manganese index",
    unit: "index",
    mark: "M",
    source: "ncda-circular1-2014",
    placement: "broadcast",
    form: { kind: "index", constant: 108.2, perTest: 0.6, perPh: -15.2, critical: 25, lb: 10 },
    note: "Less sensitive crops.",
  },
  {
    ...jersey,
    nutrient: "Mn",
    form: { kind: "index", constant: 101.7, perTest: 3.75, perPh: -15.2, critical: 25, lb: null },
    note: "Index 25 is critical, 100 high.",
  },
  { ...jersey, nutrient: "Zn", form: { kind: "critical", level: 1, how: noRate } },
  { ...jersey, nutrient: "Cu", form: { kind: "critical", level: 0.5, how: noRate } },
  {
    ...jersey,
    nutrient: "Fe",
    form: { kind: "critical", level: 50, how: "no soil-test iron rate is meaningful; see CHLOROSISRISK" },
  },
  { ...jersey, nutrient: "B", test: "hot water", form: { kind: "critical", level: 0.5, how: noRate } },
  {
    guide: "PA",
    nutrient: "B",
    crops: ["alfalfa"],
    test: "soil test",
    unit: "ppm",
    mark: "V",
    source: "psu-boron",
    placement: "broadcast",
    form: {
      kind: "classes",
      decimals: 2,
      classes: [
        { upTo: 1, broadcast: 2 },
        { upTo: null, broadcast: 0 },
      ],
    },
    note: "Up to 4 lb where the lack is severe.",
  },
  {
    guide: "PA",
    nutrient: "B",
    crops: forages,
    test: "soil test",
    unit: "ppm",
    mark: "V",
    source: "psu-boron",
    form: { kind: "critical", level: 0.5, how: noRate },
  },
  {
    guide: "MN",
    nutrient: "B",
    crops: ["corn", "soybean"],
    test: "any",
    unit: "ppm",
    mark: "V",
    source: "umn-boron",
    form: { kind: "fixed", lb: 0, low: 0, high: 0 },
    note: "Discouraged: boron can poison these crops.",
  },
  {
    guide: "general",
    nutrient: "Mn",
    crops: ["soybean"],
    test: "leaves that show the lack",
    unit: "ppm",
    mark: "M",
    source: "foliar-manganese",
    placement: "foliar",
    form: { kind: "fixed", lb: 1.5, low: 1, high: 2 },
  },
  {
    guide: "OH",
    nutrient: "Mg",
    crops: ["corn"],
    test: "ammonium acetate",
    unit: "ppm",
    mark: "M",
    source: "msu-e2567-1995",
    form: {
      kind: "critical",
      level: 35,
      richCecLevel: 50,
      how: "the bulletin prints a level by CEC: 35 ppm to CEC 5, 50 above",
    },
  },
  {
    guide: "KS",
    nutrient: "Cl",
    crops: ["wheat"],
    test: "profile chloride, 0 to 24 in",
    unit: "lb/ac",
    mark: "V",
    source: "ksu-chloride",
    placement: "broadcast",
    form: {
      kind: "classes",
      decimals: 0,
      classes: [
        { upTo: 29, broadcast: 20 },
        { upTo: 45, broadcast: 10 },
        { upTo: null, broadcast: 0 },
      ],
    },
  },
  {
    guide: "SD",
    nutrient: "Cl",
    crops: ["wheat", "springWheat", "barley"],
    test: "profile chloride, 0 to 24 in",
    unit: "lb/ac",
    mark: "V",
    source: "sdsu-chloride",
    placement: "broadcast",
    form: { kind: "line", constant: 60, perTest: -1, perPh: 0, least: 0, below: null },
    note: "Not with the seed. 2.2 lb of 0-0-60 carry 1 lb of chloride.",
  },
];

/** Rates a circular prints for crops that its report marks, without the level that marks them. */
export const markedRates = {
  Zn: "where the laboratory report recommends zinc: 6 lb/ac broadcast or 3 banded",
  Cu: "where the laboratory report recommends copper: 2 lb/ac on mineral, 4 on mineral-organic, 6 on organic soil",
} as const;
