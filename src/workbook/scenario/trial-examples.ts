/** How yields of strips come in. */
export const stripEntries = ["scale pounds", "bu/ac"] as const;

/** A strip trial of the invented farm, pair by pair. Every figure is invented. */
export interface TrialExample {
  readonly practice: string;
  /** What the treated strips are called for short. */
  readonly treated: string;
  readonly field: string;
  readonly season: string;
  readonly seed: number;
  readonly entered: (typeof stripEntries)[number];
  readonly lengthFt: number;
  readonly widthFt: number;
  readonly pairs: readonly TrialPair[];
}

/** As entered: pounds of the strip, or bu/ac; moisture where it was measured. */
export interface TrialPair {
  readonly check: number;
  readonly checkMoisturePct: number | null;
  readonly treated: number;
  readonly treatedMoisturePct: number | null;
}

const season = "its last soybean year";

export const trialExamples: readonly TrialExample[] = [
  {
    practice: "fungicide pass at pod set",
    treated: "fungicide",
    field: "Home Quarter",
    season,
    seed: 154,
    entered: "scale pounds",
    lengthFt: 1200,
    widthFt: 30,
    pairs: [
      pair(3000, 3210, [12.6, 12.9]),
      pair(3080, 3140, [12.4, 12.6]),
      pair(2930, 3120, [12.9, 13.2]),
      pair(3130, 3390, [12.5, 12.9]),
      pair(3050, 3030, [12.8, 12.9]),
      pair(3150, 3310, [12.3, 12.7]),
    ],
  },
  {
    practice: "potash before soybean",
    treated: "potash",
    field: "Mill Road",
    season,
    seed: 227,
    entered: "bu/ac",
    lengthFt: 1000,
    widthFt: 30,
    pairs: [pair(51.8, 57.9), pair(55.1, 59.2), pair(49.6, 56.4), pair(53.9, 58.8), pair(57.2, 63.9)],
  },
];

function pair(check: number, treated: number, moistures: readonly [number, number] | null = null): TrialPair {
  const [checkMoisturePct, treatedMoisturePct] = moistures ?? [null, null];
  return { check, checkMoisturePct, treated, treatedMoisturePct };
}
