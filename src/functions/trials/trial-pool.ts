import { trialLimits } from "../../core/trials/trial-limits";
import { trialPool as trialPoolOf, type TrialPool } from "../../core/trials/trial-pool";
import { line, listWithGaps, quantity, worksheetFunction } from "../frame";
import { chanceUnit, confidence } from "../chance";

type Row = readonly [string, string | number, string];

export const trialPool = worksheetFunction({
  name: "TRIALPOOL",
  family: "trials",
  summary: "One gain from trials in several fields or years, its range, and the range to plan on in a new field.",
  asks: ["combine trials over years", "average several fields", "what gain to expect in a new field"],
  args: {
    gains: listWithGaps(quantity(trialLimits.gain, { says: "gain" }), { says: "gain of each field or year" }),
    standardErrors: listWithGaps(quantity(trialLimits.standardError, { says: "standard error" }), {
      says: "standard error of each gain, in the same order",
    }),
    confidence: confidence(90),
  },
  returns: { shape: "table", unit: "bu/ac", says: "a row per result with its value and unit" },
  sources: ["dersimonian-laird-1986", "knapp-hartung-2003", "higgins-2009"],
  cautions: [
    "Plan on the range for a new field, not on the range of the average.",
    "Trials that were not told because they showed nothing are missing from the pool, and the gain comes out too high.",
  ],
  example: {
    call: [[[6.2], [1.8], [9.5], [-1.1], [4.7]], [[2.1], [1.6], [3], [2.4], [1.9]], 95],
    gives: [
      ["Result", "Value", "Unit"],
      ["Fields or years", 5, ""],
      ["Pooled gain", 3.9466, "bu/ac"],
      ["Standard error", 1.6992, "bu/ac"],
      ["Likely from", -0.7711, "bu/ac"],
      ["Likely to", 8.6643, "bu/ac"],
      ["Chance of such a gain by luck (p)", 0.0809, "chance (0 to 1)"],
      ["A new field, likely from", -6.1207, "bu/ac"],
      ["A new field, likely to", 14.0139, "bu/ac"],
      ["True gains differ by (SD)", 2.7483, "bu/ac"],
      ["Differences between fields (Q)", 10.8357, ""],
      ["Such differences by luck (p)", 0.0285, "chance (0 to 1)"],
      ["Share of differences that is real", 63.085, "%"],
      ["Gain if all fields were alike", 3.6261, "bu/ac"],
    ],
    because:
      "by hand: weights 1/SE² give 3.6261 and Q 10.8357; τ² = (10.8357 − 4) / (Σw − Σw²/Σw) = 7.5534; weights 1/(SE² + τ²) give 3.9466; chances from another program (SciPy)",
  },
  compute: (values) =>
    trialPoolOf({ gains: values.gains, standardErrors: values.standardErrors, confidencePct: values.confidence }),
  value: (result) => [["Result", "Value", "Unit"], ...poolRows(result)],
  working: (result) => [
    ...poolRows(result).map(([label, value, unit]) => line(label, value, unit)),
    ...result.weightsPct.flatMap((weight, index) =>
      weight === null ? [] : [line(`Weight of row ${index + 1}`, weight, "%")],
    ),
  ],
});

function poolRows(pool: TrialPool): Row[] {
  const { newField } = pool;
  return [
    ["Fields or years", pool.fields, ""],
    ["Pooled gain", pool.gain, "bu/ac"],
    ["Standard error", pool.standardError, "bu/ac"],
    ["Likely from", pool.low, "bu/ac"],
    ["Likely to", pool.high, "bu/ac"],
    ["Chance of such a gain by luck (p)", pool.chance, chanceUnit],
    ["A new field, likely from", newField?.low ?? "needs three fields", newField ? "bu/ac" : ""],
    ["A new field, likely to", newField?.high ?? "needs three fields", newField ? "bu/ac" : ""],
    ["True gains differ by (SD)", pool.betweenSd, "bu/ac"],
    ["Differences between fields (Q)", pool.q, ""],
    ["Such differences by luck (p)", pool.qChance, chanceUnit],
    ["Share of differences that is real", pool.realSharePct, "%"],
    ["Gain if all fields were alike", pool.fixedGain, "bu/ac"],
  ];
}
