import type { Cited } from "../table";

/** A state's measure of effective lime: the sieves it uses and how much of each size reacts. */
export interface FinenessSystem extends Cited {
  readonly label: string;
  readonly also: readonly string[];
  /** Sieve openings, meshes per inch, coarse to fine. */
  readonly sieves: readonly number[];
  /** Share that reacts of each size class, coarser than the first sieve first, finer than the last one last. */
  readonly efficiency: readonly number[];
  /** lb that a ton of fully effective lime carries in this state's own unit; 0: the state prints a percentage. */
  readonly fullLbPerTon: number;
  readonly ownUnit: string;
  /** Whether the published measure already takes off water. */
  readonly countsMoisture: boolean;
}

export const finenessSystems = {
  mn: {
    label: "MN ENP",
    also: ["Minnesota", "Minnesota ENP", "MN"],
    sieves: [8, 20, 60],
    efficiency: [0, 0.2, 0.6, 1],
    fullLbPerTon: 2000,
    ownUnit: "lb ENP/ton",
    countsMoisture: true,
    mark: "M",
    source: "mda-lime",
    note: "Method seen; factors 0.2 and 0.6 from memory.",
  },
  oh: {
    label: "OH ENP",
    also: ["Ohio", "Ohio ENP", "IN-MI-OH", "OH", "ENP"],
    sieves: [8, 20, 60],
    efficiency: [0, 0.2, 0.6, 1],
    fullLbPerTon: 2000,
    ownUnit: "lb ENP/ton",
    countsMoisture: true,
    mark: "M",
    source: "oaima-enp",
    note: "Factor 0.2 seen; 0.6 from memory.",
  },
  wi: {
    label: "WI NI",
    also: ["Wisconsin", "Wisconsin NI", "NI", "WI"],
    sieves: [8, 20, 60],
    efficiency: [0, 0.2, 0.6, 1],
    fullLbPerTon: 0,
    ownUnit: "neutralizing index",
    countsMoisture: false,
    mark: "M",
    source: "uw-a2809",
    note: "State rates are for an index of 60-69: multiply them by 65 / index.",
  },
  ny: {
    label: "NY ENV",
    also: ["New York", "New York ENV", "NY"],
    sieves: [20, 60, 100],
    efficiency: [0, 0.4, 0.8, 1],
    fullLbPerTon: 0,
    ownUnit: "% ENV",
    countsMoisture: false,
    mark: "V",
    source: "cornell-cca-po41",
  },
  ks: {
    label: "KS-OK ECC",
    also: ["Kansas", "Oklahoma", "ECC", "KS", "OK"],
    sieves: [8, 60],
    efficiency: [0, 0.5, 1],
    fullLbPerTon: 2000,
    ownUnit: "lb ECC/ton",
    countsMoisture: false,
    mark: "M",
    source: "ksu-mf2586",
    note: "Half of what passes 8 mesh and half of what passes 60 mesh.",
  },
  ia: {
    label: "IA ECCE",
    also: ["Iowa", "ECCE", "IA"],
    sieves: [4, 8, 60],
    efficiency: [0, 0.1, 0.4, 1],
    fullLbPerTon: 2000,
    ownUnit: "lb ECCE/ton",
    countsMoisture: true,
    mark: "V",
    source: "isu-ecce-laboski",
    note: "0.1, 0.3 and 0.6 of what passes 4, 8 and 60 mesh.",
  },
  mo: {
    label: "MO ENM",
    also: ["Missouri", "ENM", "MO"],
    sieves: [8, 40, 60],
    efficiency: [0, 0.25, 0.6, 1],
    fullLbPerTon: 800,
    ownUnit: "lb ENM/ton",
    countsMoisture: false,
    mark: "V",
    source: "mu-ag-lime",
  },
  ky: {
    label: "KY-MS RNV",
    also: ["Kentucky", "Mississippi", "RNV", "KY", "MS"],
    sieves: [10, 50],
    efficiency: [0, 0.5, 1],
    fullLbPerTon: 0,
    ownUnit: "% RNV",
    countsMoisture: false,
    mark: "V",
    source: "msstate-p3762",
  },
  on: {
    label: "ON AI",
    also: ["Ontario", "Agricultural Index", "AI", "ON"],
    sieves: [10, 60],
    efficiency: [0, 0.4, 1],
    fullLbPerTon: 0,
    ownUnit: "Agricultural Index",
    countsMoisture: false,
    mark: "M",
    source: "omafra-811",
    note: "Provincial rates are for an index of 75: multiply them by 75 / index.",
  },
  il1: {
    label: "IL ENV 1-year",
    also: ["Illinois", "Illinois 1 year", "IL"],
    sieves: [8, 30, 60],
    efficiency: [0.05, 0.2, 0.5, 1],
    fullLbPerTon: 0,
    ownUnit: "% ENV in a year",
    countsMoisture: false,
    mark: "M",
    source: "uiuc-handbook-8",
    note: "State rates are for 46.35: multiply them by 46.35 / ENV.",
  },
  il4: {
    label: "IL ENV 4-year",
    also: ["Illinois 4 year"],
    sieves: [8, 30, 60],
    efficiency: [0.15, 0.45, 1, 1],
    fullLbPerTon: 0,
    ownUnit: "% ENV in four years",
    countsMoisture: false,
    mark: "M",
    source: "uiuc-handbook-8",
  },
} as const satisfies Record<string, FinenessSystem>;

export type FinenessSystemKey = keyof typeof finenessSystems;

/** How a laboratory prints its sieve analysis. */
export const sieveReports = {
  shares: { label: "shares", also: ["fractions", "share in each size"] },
  passing: { label: "passing", also: ["cumulative", "percent passing"] },
} as const;

export type SieveReportKey = keyof typeof sieveReports;

/** Tons worked in at once above which a split is advised, and the most that is left on the surface. */
export const limeSplit = {
  tilledTon: 4,
  surfaceTon: 2,
  mark: "M",
  source: "mu-lime-surface",
  note: "2 ton/ac on the surface seen; 4 ton/ac with tillage from memory.",
} as const satisfies { tilledTon: number; surfaceTon: number } & Cited;
