import type { Cited, ReferenceTable } from "../table";

/** Carriers that a person can name instead of typing their weight. */
export const solutions = {
  water: { label: "water", also: [] },
  kerosene: { label: "kerosene", also: [] },
  uan28: { label: "28-0-0", also: ["UAN 28", "28 % UAN", "28% nitrogen"] },
  uan32: { label: "32-0-0", also: ["UAN 32", "32 % UAN", "32% nitrogen"] },
  starter7: { label: "7-21-7", also: [] },
  polyphosphate10: { label: "10-34-0", also: ["ammonium polyphosphate"] },
  polyphosphate11: { label: "11-37-0", also: [] },
  thiosulfate: { label: "12-0-0-26S", also: ["ATS", "ammonium thiosulfate", "12-0-0-26"] },
} as const;

export type SolutionKey = keyof typeof solutions;

export interface SolutionRow extends Cited {
  /** null: a weight on its own. */
  readonly solution: SolutionKey | null;
  readonly lbPerGal: number;
  /** As printed, to two places. */
  readonly printedFactor: number;
}

const nebraska = { mark: "V", source: "unl-solutions-2016" } as const;

/**
 * Weight of spray solutions, and the factor printed for turning their rate into a water rate for a nozzle chart.
 * Two printed slips are mended: at 8.0 lb/gal the factor is 0.98 and not 0.88; at 12.0 the specific gravity is 1.44.
 */
export const solutionDensity = {
  title: "Weight and nozzle factor of spray solutions",
  units: { lbPerGal: "lb/gal", printedFactor: "water rate for one of the solution" },
  basis: "nozzle charts are for water at 8.34 lb/gal",
  rows: [
    { solution: "kerosene", lbPerGal: 6.6, printedFactor: 0.89, ...nebraska },
    { solution: null, lbPerGal: 7, printedFactor: 0.92, ...nebraska },
    { solution: null, lbPerGal: 8, printedFactor: 0.98, ...nebraska },
    { solution: "water", lbPerGal: 8.34, printedFactor: 1, ...nebraska },
    { solution: null, lbPerGal: 9, printedFactor: 1.04, ...nebraska },
    { solution: null, lbPerGal: 10, printedFactor: 1.1, ...nebraska },
    { solution: "uan28", lbPerGal: 10.65, printedFactor: 1.13, ...nebraska },
    { solution: "starter7", lbPerGal: 11, printedFactor: 1.15, ...nebraska },
    { solution: "uan32", lbPerGal: 11.06, printedFactor: 1.15, ...nebraska },
    { solution: "polyphosphate10", lbPerGal: 11.4, printedFactor: 1.17, ...nebraska },
    { solution: "thiosulfate", lbPerGal: 11.5, printedFactor: 1.17, ...nebraska },
    { solution: "polyphosphate11", lbPerGal: 11.6, printedFactor: 1.18, ...nebraska },
    { solution: null, lbPerGal: 12, printedFactor: 1.2, ...nebraska },
    { solution: null, lbPerGal: 14, printedFactor: 1.3, mark: "V", source: "uga-sumner-density" },
  ],
} as const satisfies ReferenceTable<SolutionRow>;

/** What nozzle charts are printed for. */
export const chartWater = { lbPerGal: 8.34, ...nebraska } as const satisfies Cited & { lbPerGal: number };
