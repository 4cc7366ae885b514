import type { Cited } from "../table";

/** What each group does in the plant. */
export const sitesOfAction = {
  1: "ACCase inhibition",
  2: "ALS (AHAS) inhibition",
  3: "microtubule assembly inhibition",
  4: "auxin mimic",
  5: "photosystem II inhibition, D1 serine 264",
  6: "photosystem II inhibition, D1 histidine 215",
  9: "EPSPS inhibition",
  10: "glutamine synthetase inhibition",
  12: "phytoene desaturase (PDS) inhibition",
  13: "DXP synthase inhibition",
  14: "PPO inhibition",
  15: "very-long-chain fatty acid (VLCFA) synthesis inhibition",
  19: "auxin transport inhibition",
  22: "photosystem I electron diversion",
  27: "HPPD inhibition",
} as const;

export type SiteNumber = keyof typeof sitesOfAction;

export interface FormerNumber extends Cited {
  readonly former: number;
  readonly now: SiteNumber;
}

/** Numbers that some pages and labels still print. */
export const formerNumbers: readonly FormerNumber[] = [
  {
    former: 7,
    now: 5,
    mark: "M",
    source: "hrac-classification",
    note: "7 (ureas, amides) became 5 in the 2020 revision.",
  },
  {
    former: 8,
    now: 15,
    mark: "M",
    source: "hrac-classification",
    note: "8 (thiocarbamates) became 15 in the 2020 revision.",
  },
  {
    former: 28,
    now: 27,
    mark: "V",
    source: "pnw-weed-handbook",
    note: "28 stands on some pages for an HPPD inhibitor, which is 27; if a new label prints 28 for something else, go by the label.",
  },
];

/** Highest group number a label may print. */
export const highestSiteNumber = 40;
