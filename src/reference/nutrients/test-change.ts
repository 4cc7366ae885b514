import type { Cited } from "../table";

/** lb of oxide that move a soil test by 1 ppm. */
export interface TestChangeRow extends Cited {
  readonly nutrient: "P2O5" | "K2O";
  readonly system: string;
  readonly lbPerPpm: number;
  /** Added per meq/100 g of CEC. */
  readonly lbPerPpmPerCec: number;
}

export const testChange = {
  phosphate: {
    nutrient: "P2O5",
    system: "IN-MI-OH",
    lbPerPpm: 20,
    lbPerPpmPerCec: 0,
    mark: "V",
    source: "osu-build-2012",
    note: "Build-up spread over four years: 4 × 5 lb.",
  },
  potashByCec: {
    nutrient: "K2O",
    system: "IN-MI-OH",
    lbPerPpm: 4,
    lbPerPpmPerCec: 0.2,
    mark: "V",
    source: "osu-build-2012",
    note: "4 × (1 + 0.05 × CEC): 5 at CEC 5, 6 at 10, 8 at 20, 10 at 30.",
  },
  potash: {
    nutrient: "K2O",
    system: "IL",
    lbPerPpm: 8,
    lbPerPpmPerCec: 0,
    mark: "V",
    source: "uiuc-handbook-8",
    note: "Published as 4 lb K2O per lb/ac of soil test.",
  },
} as const satisfies Record<string, TestChangeRow>;

/** Range to show beside any one factor, and the floor a test does not fall below; soils differ. */
export const testChangeRange = {
  P2O5: { low: 16, high: 30, floorPpm: 5, mark: "M", source: "umn-randall", note: "Floor 5 ppm." },
  K2O: { low: 6, high: 10, floorPpm: 40, mark: "M", source: "osu-build-2012", note: "Floor 40 ppm." },
} as const satisfies Record<string, { low: number; high: number; floorPpm: number } & Cited>;
