import type { CropKey } from "../crops";
import type { Cited, ReferenceTable } from "../table";

export const populationCurveWords = {
  cornIllinois: { label: "corn Illinois", also: ["corn Illinois 1994", "Illinois corn", "corn-naf94"] },
  cornIowa: { label: "corn Iowa", also: ["Iowa corn", "corn-isu"] },
  soybeanIllinois: { label: "soybean Illinois", also: ["Illinois soybean", "soy-il"] },
} as const;

export type PopulationCurveKey = keyof typeof populationCurveWords;

interface CurveRow extends Cited {
  readonly key: PopulationCurveKey;
  readonly crop: CropKey;
  /** Stands the curve was drawn over, thousand plants/ac. */
  readonly fewest: number;
  readonly most: number;
}

/** % of full yield = constant + linear × P + quadratic × P² + day terms; P thousand plants/ac. */
export interface QuadraticCurve extends CurveRow {
  readonly form: "quadratic";
  readonly constant: number;
  readonly linear: number;
  readonly quadratic: number;
  /** Days after April 1, and their square; 0 where the curve is of one date. */
  readonly dayLinear: number;
  readonly dayQuadratic: number;
  /** Day after April 1 that the stand's worth is worked at: the best one. */
  readonly bestDay: number;
}

/** % of full yield = 100 × (1 − e^(−rise × P)); P thousand plants/ac. */
export interface ExponentialCurve extends CurveRow {
  readonly form: "exponential";
  readonly rise: number;
}

export type PopulationCurve = QuadraticCurve | ExponentialCurve;

export const populationCurves = {
  title: "Yield by stand, as curves",
  units: {
    constant: "% of full yield",
    linear: "% per thousand plants",
    quadratic: "% per (thousand plants)²",
    dayLinear: "% per day",
    dayQuadratic: "% per day²",
    bestDay: "days after April 1",
    rise: "per thousand plants",
    fewest: "thousand plants/ac",
    most: "thousand plants/ac",
  },
  basis: "share of the full yield of the field and season",
  rows: [
    {
      key: "cornIllinois",
      crop: "corn",
      form: "quadratic",
      constant: 15.0114,
      linear: 4.69327,
      quadratic: -0.0773721,
      dayLinear: 1.010851,
      dayQuadratic: -0.0185115,
      bestDay: 27.3,
      fewest: 10,
      most: 36,
      mark: "V",
      source: "nafziger-1994",
      note: "Our least squares on its 182 cells, within 0.53 of each. For fields above about 125 bu/ac; below 100 bu/ac expect nothing above 24,000 plants.",
    },
    {
      key: "cornIowa",
      crop: "corn",
      form: "quadratic",
      constant: 44.2083,
      linear: 3.10595,
      quadratic: -0.0430952,
      dayLinear: 0,
      dayQuadratic: 0,
      bestDay: 0,
      fewest: 10,
      most: 45,
      // Rows of 20,000 and below are from memory, and the curve rests on them too.
      mark: "M",
      source: "isu-ipm0001",
      note: "Our least squares on its early-planting column, within 0.5 of each cell.",
    },
    {
      key: "soybeanIllinois",
      crop: "soybean",
      form: "exponential",
      rise: 0.0460517,
      fewest: 40,
      most: 200,
      mark: "V",
      source: "illinois-bulletin-2009",
      note: "Drawn by us through its two ratios: 50,000 plants give 91 % of 100,000 and 90 % of 150,000. Penn State prints 90 to 95 % for 70,000 plants, where this gives 96.",
    },
  ],
} as const satisfies ReferenceTable<PopulationCurve>;
