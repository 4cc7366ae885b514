import type { Cited, ReferenceTable } from "../table";
import { extractants } from "./words";

const ppm = "ppm";

/** What a number on a report may stand for: an extraction, a unit, an element or its oxide, a buffer pH. */
export const testBases = {
  ppm: { label: "ppm", also: ["mg/kg", "parts per million"], unit: ppm },
  lbPerAc: { label: "lb/ac", also: ["lb/acre", "pounds per acre"], unit: "lb/ac" },
  mehlich3: { ...extractants.mehlich3, unit: ppm },
  mehlich3Icp: { ...extractants.mehlich3Icp, unit: ppm },
  mehlich3Color: { ...extractants.mehlich3Color, unit: ppm },
  bray: { ...extractants.bray, unit: ppm },
  olsen: { ...extractants.olsen, unit: ppm },
  ammoniumAcetate: { ...extractants.ammoniumAcetate, unit: ppm },
  index: { label: "fertility index", also: ["FIV", "Delaware index", "index"], unit: "" },
  meq: { label: "meq/100 g", also: ["meq", "cmol/kg"], unit: "meq/100 g" },
  nitratePpm: { label: "nitrate-N ppm", also: ["NO3-N ppm", "nitrate ppm"], unit: ppm },
  nitrateLb: { label: "nitrate-N lb/ac", also: ["NO3-N lb/ac", "nitrate lb/ac"], unit: "lb/ac" },
  P: { label: "P", also: ["phosphorus"], unit: "" },
  P2O5: { label: "P2O5", also: ["phosphate"], unit: "" },
  K: { label: "K", also: ["potassium"], unit: "" },
  K2O: { label: "K2O", also: ["potash"], unit: "" },
  Mg: { label: "Mg", also: ["magnesium"], unit: "" },
  MgO: { label: "MgO", also: ["magnesia"], unit: "" },
  Ca: { label: "Ca", also: ["calcium"], unit: "" },
  CaO: { label: "CaO", also: ["quicklime"], unit: "" },
  limestone: { label: "CaCO3 equivalent", also: ["CaCO3", "calcium carbonate"], unit: "" },
  NO3: { label: "NO3", also: ["nitrate"], unit: "" },
  N: { label: "N", also: ["nitrogen", "NO3-N"], unit: "" },
  SO4: { label: "SO4", also: ["sulfate", "sulphate"], unit: "" },
  S: { label: "S", also: ["sulfur", "sulphur"], unit: "" },
  adamsEvans: { label: "Adams-Evans buffer pH", also: ["Adams-Evans"], unit: "" },
  smp: { label: "SMP buffer pH", also: ["SMP"], unit: "" },
  mehlichBuffer: { label: "Mehlich buffer pH", also: ["Mehlich buffer"], unit: "" },
  hydrogen: { label: "H meq/100 g", also: ["H", "hydrogen"], unit: "meq/100 g" },
  acidity: { label: "acidity meq/100 cm3", also: ["acidity"], unit: "meq/100 cm3" },
  kgPerHa: { label: "kg/ha", also: ["kilograms per hectare"], unit: "kg/ha" },
  tPerHa: { label: "t/ha", also: ["tonnes per hectare"], unit: "t/ha" },
  tonPerAc: { label: "ton/ac", also: ["tons per acre"], unit: "ton/ac" },
} as const;

export type TestBasisKey = keyof typeof testBases;

/** Elements that some conversions differ by. */
export const testedElements = {
  P: { label: "P", also: ["phosphorus", "P2O5", "phosphate"] },
  K: { label: "K", also: ["potassium", "K2O", "potash"] },
  Ca: { label: "Ca", also: ["calcium"] },
  Mg: { label: "Mg", also: ["magnesium"] },
  Na: { label: "Na", also: ["sodium"] },
} as const;

export type TestedElementKey = keyof typeof testedElements;

/** Names for formulas of a pair that has several. */
export const conversionFormulas = {
  ratio: { label: "ratio", also: ["Tri-State ratio", "ANR-75"] },
  ohioIcp: { label: "Ohio ICP", also: ["ICP formula", "agBMP"] },
  laboratory: { label: "laboratory", also: ["commercial laboratory", "laboratory 2005"] },
} as const;

export type ConversionFormulaKey = keyof typeof conversionFormulas;

/** to = times × from + plus, never below 0. */
export interface ConversionRow extends Cited {
  readonly from: TestBasisKey;
  readonly to: TestBasisKey;
  /** The element it is printed for, where that matters. */
  readonly element?: TestedElementKey;
  readonly formula?: ConversionFormulaKey;
  readonly times: number;
  readonly plus?: number;
  /** times is per inch of depth (1), or has to be divided by the depth (-1). */
  readonly depth?: 1 | -1;
  /** The equation as printed. */
  readonly equation: string;
  /** What it holds for. */
  readonly range: string;
  readonly valid?: readonly [min: number, max: number];
}

/** Pounds per acre that 1 ppm makes in an inch: 2,000,000 lb of soil fill 6.67 inches. */
const poundsPerPpmInch = 2 / 6.67;

const ratio = { formula: "ratio", range: "Tri-State agronomic range", mark: "V", source: "osu-anr75-2019" } as const;
const laboratory = {
  formula: "laboratory",
  range: "one commercial laboratory, Ohio Valley",
  mark: "V",
  source: "lab-conversion-2005",
} as const;
const nebraska = {
  range: "ratio implied by the Nebraska critical levels",
  mark: "V",
  source: "unl-postponing-2016",
  locator: "Tables 1-2",
} as const;
const index = { from: "mehlich3", to: "index", mark: "V", source: "udel-nutrients" } as const;
const bases = { from: "lbPerAc", to: "meq", range: "6.67 in slice", mark: "V", source: "clemson-cec" } as const;
const masses = { range: "molar masses", mark: "M", source: "molar-masses" } as const;
const oxides = { range: "fertilizer accounting", mark: "V", source: "psu-results" } as const;
const slice = { mark: "V", source: "psu-results" } as const;

/** Every published conversion, in the direction it is printed for. */
export const testConversions: ReferenceTable<ConversionRow> = {
  title: "Soil-test and nutrient conversions",
  units: { times: "to per from", plus: "to" },
  basis: "mineral soil; extraction numbers in ppm",
  rows: [
    { ...slice, from: "ppm", to: "lbPerAc", times: 2, equation: "2 × ppm", range: "a slice of 6 to 7 in" },
    {
      ...slice,
      from: "ppm",
      to: "lbPerAc",
      times: poundsPerPpmInch,
      depth: 1,
      equation: "2 × ppm × depth / 6.67",
      range: "2,000,000 lb of soil in 6.67 in",
    },
    {
      from: "lbPerAc",
      to: "ppm",
      times: 0.5,
      equation: "lb/ac / 2",
      range: "a slice of 6 to 7 in",
      mark: "V",
      source: "osu-agbmp-p",
    },
    {
      ...slice,
      from: "lbPerAc",
      to: "ppm",
      times: 1 / poundsPerPpmInch,
      depth: -1,
      equation: "lb/ac × 6.67 / (2 × depth)",
      range: "2,000,000 lb of soil in 6.67 in",
      note: "The printed equation turned round.",
    },
    {
      from: "nitratePpm",
      to: "nitrateLb",
      times: 0.3,
      depth: 1,
      equation: "0.3 × ppm × depth",
      range: "mineral soil",
      mark: "M",
      source: "unl-ec117",
    },
    { ...ratio, from: "mehlich3", to: "bray", element: "P", times: 1 / 1.35, equation: "M3 / 1.35" },
    {
      from: "mehlich3",
      to: "bray",
      element: "P",
      formula: "ohioIcp",
      times: 0.832,
      plus: -8.08,
      equation: "0.832 × M3-ICP − 8.08",
      range: "M3-ICP 10 to 150 ppm, Ohio",
      valid: [10, 150],
      mark: "V",
      source: "osu-agbmp-p",
    },
    { ...laboratory, from: "mehlich3", to: "bray", element: "P", times: 0.7, equation: "0.70 × M3" },
    { ...ratio, from: "bray", to: "mehlich3", element: "P", times: 1.35, equation: "1.35 × Bray" },
    { ...nebraska, from: "bray", to: "mehlich3Color", element: "P", times: 1.17, equation: "1.17 × Bray" },
    { ...nebraska, from: "bray", to: "olsen", element: "P", times: 0.667, equation: "0.667 × Bray" },
    { ...ratio, from: "ammoniumAcetate", to: "mehlich3", element: "K", times: 1.14, equation: "1.14 × AA" },
    { ...ratio, from: "mehlich3", to: "ammoniumAcetate", element: "K", times: 1 / 1.14, equation: "M3 / 1.14" },
    { ...laboratory, from: "mehlich3", to: "ammoniumAcetate", element: "K", times: 0.84, equation: "0.84 × M3" },
    { ...laboratory, from: "mehlich3", to: "ammoniumAcetate", element: "Ca", times: 0.75, equation: "0.75 × M3" },
    { ...laboratory, from: "mehlich3", to: "ammoniumAcetate", element: "Mg", times: 0.88, equation: "0.88 × M3" },
    { ...index, element: "P", times: 1, equation: "M3", range: "P: 25, 50 and 100 at the class limits" },
    { ...index, element: "K", times: 1 / 2.8, equation: "M3 / 2.8", range: "K: 70 to 25, 140 to 50, 280 to 100" },
    { ...index, element: "Mg", times: 1 / 2.2, equation: "M3 / 2.2", range: "Mg: 55 to 25, 110 to 50, 220 to 100" },
    { ...index, element: "Ca", times: 1 / 18, equation: "M3 / 18", range: "Ca: 450 to 25, 900 to 50, 1800 to 100" },
    { ...bases, element: "K", times: 1 / 782, equation: "K / 782" },
    { ...bases, element: "Mg", times: 1 / 240, equation: "Mg / 240" },
    { ...bases, element: "Ca", times: 1 / 400, equation: "Ca / 400" },
    { ...bases, element: "Na", times: 1 / 460, equation: "Na / 460" },
    {
      from: "adamsEvans",
      to: "hydrogen",
      times: -8,
      plus: 64,
      equation: "8 × (8.00 − buffer pH)",
      range: "buffer pH of 8.00 or less",
      valid: [5, 8],
      mark: "V",
      source: "clemson-cec",
    },
    {
      from: "smp",
      to: "hydrogen",
      times: -12,
      plus: 84,
      equation: "12 × (7.0 − buffer pH), 0 from 7.0",
      range: "soil pH of 6.4 or less",
      valid: [5, 8],
      mark: "V",
      source: "lab-conversion-2005",
    },
    {
      from: "mehlichBuffer",
      to: "acidity",
      times: -4,
      plus: 26.4,
      equation: "4 × (6.6 − buffer pH)",
      range: "buffer pH of 6.6 or less",
      valid: [3.5, 6.6],
      mark: "V",
      source: "ncda-circular1-2014",
    },
    { ...oxides, from: "P", to: "P2O5", times: 2.29, equation: "2.29 × P", note: "Also printed 2.3." },
    { ...oxides, from: "P2O5", to: "P", times: 0.44, equation: "0.44 × P2O5", source: "ncda-circular1-2014" },
    { ...oxides, from: "K", to: "K2O", times: 1.2, equation: "1.2 × K" },
    { ...masses, from: "K2O", to: "K", times: 0.83, equation: "0.83 × K2O" },
    { ...oxides, from: "Mg", to: "MgO", times: 1.6, equation: "1.6 × Mg" },
    { ...masses, from: "Ca", to: "CaO", times: 1.4, equation: "1.4 × Ca" },
    { ...masses, from: "CaO", to: "limestone", times: 1.785, equation: "1.785 × CaO" },
    { ...masses, from: "NO3", to: "N", times: 0.226, equation: "0.226 × NO3" },
    { ...masses, from: "SO4", to: "S", times: 0.334, equation: "0.334 × SO4" },
    {
      from: "kgPerHa",
      to: "lbPerAc",
      times: 0.8922,
      equation: "0.8922 × kg/ha",
      range: "unit definition; Ontario tables print 0.9",
      mark: "V",
      source: "omafra-corn-p-2025",
    },
    {
      from: "tPerHa",
      to: "tonPerAc",
      times: 0.4461,
      equation: "0.4461 × t/ha",
      range: "unit definition",
      mark: "M",
      source: "nist-sp-811-2008",
    },
  ],
};
