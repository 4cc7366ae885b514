import { gainInWords, gainPays, type GainMoney } from "../../core/trials/gain-in-words";
import { pairedGain, type PairedGain } from "../../core/trials/paired-gain";
import { trialLimits } from "../../core/trials/trial-limits";
import { line, optional, quantity, worksheetFunction, type CellOut } from "../frame";
import { moneyOf, price, yields } from "./trial-arguments";
import { oneSeason, stripsNotPoints } from "../cautions";
import { chanceUnit, confidence } from "../chance";

interface PairsResult {
  readonly measured: PairedGain;
  readonly money: GainMoney | null;
}

export const trialPairs = worksheetFunction({
  name: "TRIALPAIRS",
  family: "trials",
  summary: "Gain of treated over untreated strips in pairs, its likely range, and the chance that it pays.",
  asks: [
    "did the treated strips beat the check",
    "did my strip trial pay",
    "check against treated",
    "is the yield difference real",
  ],
  args: {
    check: yields("yields of the untreated strips, a cell per pair; blank where a strip was lost"),
    treated: yields("yields of the treated strips, in the same order of pairs"),
    confidence: confidence(90),
    price,
    cost: optional(quantity(trialLimits.cost, { says: "cost of the treatment" }), null, "no money"),
  },
  returns: { shape: "table", unit: "bu/ac", says: "a row per result with its value and unit, then a sentence" },
  sources: ["student-1908"],
  cautions: [stripsNotPoints, oneSeason],
  example: {
    call: [
      [[180], [176], [171], [183], [190], [174]],
      [[187.1], [179.4], [180.8], [188.2], [188.5], [180.6]],
      90,
      4.5,
      18.5,
    ],
    gives: [
      ["Result", "Value", "Unit"],
      ["Pairs", 6, "pairs"],
      ["Check", 179, "bu/ac"],
      ["Treated", 184.1, "bu/ac"],
      ["Gain", 5.1, "bu/ac"],
      ["Standard error of the gain", 1.579, "bu/ac"],
      ["Likely from", 1.918, "bu/ac"],
      ["Likely to", 8.282, "bu/ac"],
      ["t", 3.2298, ""],
      ["Degrees of freedom", 5, ""],
      ["Chance of such a gain by luck (p)", 0.0232, "chance (0 to 1)"],
      ["The same by swapping strips (p)", 0.0625, "chance (0 to 1)"],
      ["Smallest gain seen with 80 % chance", 4.5863, "bu/ac"],
      ["Gain that pays", 4.1111, "bu/ac"],
      ["Net", 4.45, "$/ac"],
      ["Net likely from", -9.868, "$/ac"],
      ["Net likely to", 18.768, "$/ac"],
      ["Chance that it pays", 0.72069, "chance (0 to 1)"],
      [
        "In words",
        "The gain is 5.1 bu/ac, likely between 1.9 and 8.3; at $4.50/bu and a cost of $18.50/ac the chance that it pays is 72 %.",
        "",
      ],
    ],
    because:
      "by hand: differences 7.1, 3.4, 9.8, 5.2, −1.5, 6.6 have mean 5.1 and SD 3.868; ± 2.015 × 1.579; 18.5 / 4.5; chances from another program (SciPy); swapping: 4 of 64 ways reach as far",
  },
  compute: (values): PairsResult => ({
    measured: pairedGain({ check: values.check, treated: values.treated, confidencePct: values.confidence }),
    money: moneyOf(values.price, values.cost),
  }),
  value: (result) => [["Result", "Value", "Unit"], ...pairRows(result)],
  working: (result) => pairRows(result).map(([label, value, unit]) => line(label, value, unit)),
});

type Row = readonly [string, number | string, string];

function pairRows({ measured, money }: PairsResult): (readonly [string, Extract<CellOut, number | string>, string])[] {
  const rows: Row[] = [
    ["Pairs", measured.pairs, "pairs"],
    ["Check", measured.checkMean, "bu/ac"],
    ["Treated", measured.treatedMean, "bu/ac"],
    ["Gain", measured.gain, "bu/ac"],
    ["Standard error of the gain", measured.standardError, "bu/ac"],
    ["Likely from", measured.low, "bu/ac"],
    ["Likely to", measured.high, "bu/ac"],
    ["t", measured.t, ""],
    ["Degrees of freedom", measured.df, ""],
    ["Chance of such a gain by luck (p)", measured.chance, chanceUnit],
    [
      "The same by swapping strips (p)",
      measured.flipChance ?? "more than 12 pairs",
      measured.flipChance === null ? "" : chanceUnit,
    ],
    ["Smallest gain seen with 80 % chance", measured.smallestSeen, "bu/ac"],
  ];
  return [...rows, ...moneyRows(measured, money), ["In words", gainInWords("The gain", measured, money), ""]];
}

function moneyRows(measured: PairedGain, money: GainMoney | null): Row[] {
  if (!money) return [];
  const pays = gainPays(measured, money);
  return [
    ["Gain that pays", pays.paysFromBuPerAc, "bu/ac"],
    ["Net", pays.netUsdPerAc, "$/ac"],
    ["Net likely from", pays.netLowUsdPerAc, "$/ac"],
    ["Net likely to", pays.netHighUsdPerAc, "$/ac"],
    ["Chance that it pays", pays.chance, chanceUnit],
  ];
}
