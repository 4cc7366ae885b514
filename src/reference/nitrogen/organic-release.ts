import type { Cited } from "../table";

export interface ReleaseRow extends Cited {
  readonly label: string;
  readonly also: readonly string[];
  /** lb N/ac a year per 1 % of organic matter. */
  readonly lbPerPct: number;
  readonly low: number;
  readonly high: number;
}

/** Nitrogen that soil organic matter sets free in a season. */
export const organicRelease = {
  cornBelt: {
    label: "Corn Belt",
    also: ["summer crops", "Corn Belt summer crops"],
    lbPerPct: 20,
    low: 10,
    high: 30,
    mark: "M",
    source: "organic-release-rule",
  },
  kansasSummer: {
    label: "KS summer crops",
    also: ["Kansas", "Kansas corn", "Kansas sorghum", "KS corn"],
    lbPerPct: 20,
    low: 20,
    high: 20,
    mark: "M",
    source: "ksu-mf2586",
  },
  kansasWheat: {
    label: "KS wheat",
    also: ["Kansas wheat", "Kansas winter wheat"],
    lbPerPct: 10,
    low: 10,
    high: 10,
    mark: "V",
    source: "ksu-organic-matter-2022",
  },
  westernCanada: {
    label: "western Canada",
    also: ["Alberta", "Saskatchewan", "Manitoba", "prairies"],
    lbPerPct: 11.2,
    low: 6,
    high: 30,
    mark: "V",
    source: "canola-watch-2016",
    note: "14 lb per 1 %, of which 80 %.",
  },
} as const satisfies Record<string, ReleaseRow>;

export type ReleaseKey = keyof typeof organicRelease;
