import type { Cited } from "../table";
import type { Manure, ManureSpecies } from "./manures";

export const manureGuides = {
  IA: { label: "IA", also: ["Iowa"] },
  MN: { label: "MN", also: ["Minnesota"] },
  NY: { label: "NY", also: ["New York", "New York decay series", "Cornell"] },
} as const;

export type ManureGuideKey = keyof typeof manureGuides;

export const manurePlacements = {
  injected: { label: "injected", also: ["direct injection", "knifed"] },
  incorporated: { label: "incorporated at once", also: ["incorporated", "immediate incorporation"] },
  surface: { label: "not incorporated", also: ["surface", "broadcast", "top-dressed"] },
  sprinkler: { label: "sprinkler", also: ["irrigated", "sprinkler irrigation"] },
} as const;

export type ManurePlacementKey = keyof typeof manurePlacements;

/** Printed low and high ends, %. */
export type Ends = readonly [low: number, high: number];

export interface TotalRow extends Cited {
  readonly species: ManureSpecies;
  readonly forms: readonly Manure["form"][];
  /** Available % of total N in the first, second and third season. */
  readonly seasons: readonly Ends[];
}

/** Iowa: share of total N that crops can use, by season. */
export const iowaNitrogen: readonly TotalRow[] = [
  {
    species: "cattle",
    forms: ["slurry", "pit", "lagoon", "solid"],
    seasons: [
      [30, 50],
      [10, 10],
      [5, 5],
    ],
    mark: "V",
    source: "isu-pmr1003-2016",
  },
  {
    species: "swine",
    forms: ["pit"],
    seasons: [
      [90, 100],
      [0, 10],
      [0, 0],
    ],
    mark: "V",
    source: "isu-manure-2021",
    locator: "Tables 1-2",
  },
  { species: "swine", forms: ["solid"], seasons: [[30, 50]], mark: "M", source: "isu-pmr1003-2016" },
  {
    species: "poultry",
    forms: ["solid"],
    seasons: [
      [50, 60],
      [0, 10],
      [0, 0],
    ],
    mark: "V",
    source: "isu-manure-2021",
    locator: "Tables 1-2",
  },
];

/** Iowa: share of total N that is not lost to the air, %. */
export const iowaKept = {
  injected: [98, 100],
  incorporated: [95, 99],
  surfaceLiquid: [75, 90],
  surfaceSolid: [70, 85],
  sprinkler: [60, 75],
  mark: "V",
  source: "isu-manure-2021",
  locator: "Tables 1-2",
} as const satisfies Cited & Record<string, unknown>;

/** Iowa: available % of phosphate in the year of spreading. */
export const iowaPhosphate = {
  cattle: { ends: [80, 100], mark: "V", source: "isu-pmr1003-2016" },
  other: { ends: [90, 100], mark: "M", source: "isu-pmr1003-2016" },
} as const satisfies Record<string, Cited & { ends: Ends }>;

/** Iowa: available % of potash in the year of spreading. */
export const iowaPotash = { ends: [90, 100], mark: "M", source: "isu-pmr1003-2016" } as const satisfies Cited & {
  ends: Ends;
};

/** Minnesota: knife-injected swine pit manure, % of total N in the first season. */
export const minnesotaSwine = {
  ends: [80, 80],
  mark: "V",
  source: "mu-manure-regional",
  note: "One example: knife-injected swine pit manure.",
} as const satisfies Cited & { ends: Ends };

/** New York: % of organic N set free in the first season, thin and thick, then in the second and third. */
export const newYorkRelease = {
  thinUnderPct: 18,
  first: {
    cattle: [35, 25],
    swine: [35, 25],
    sheep: [35, 25],
    horse: [30, 25],
    poultry: [55, 55],
  },
  later: [12, 5],
  mark: "V",
  source: "cornell-manure-release",
} as const satisfies Cited & Record<string, unknown>;
