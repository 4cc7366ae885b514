import type { BlockTrial, TreatmentResult } from "../../core/trials/block-trial";
import { gainInWords, gainPays } from "../../core/trials/gain-in-words";
import { chanceUnit } from "../chance";
import { missingInWords } from "./missing-strips";
import type { TreatmentMoney } from "./treatment-costs";

export interface BlocksResult {
  readonly trial: BlockTrial;
  readonly money: TreatmentMoney | null;
}

type Cell = string | number;
type Row = readonly [string, Cell, string];

const heading = [
  "Treatment",
  "Strips",
  "Mean, bu/ac",
  "Letters",
  "Gain, bu/ac",
  "Likely from, bu/ac",
  "Likely to, bu/ac",
  "By luck (Holm), chance (0 to 1)",
];
const moneyHeading = ["Net, $/ac", "It pays, chance (0 to 1)"];

/** A row per treatment, then label, value and unit of everything else. */
export function blocksRows(result: BlocksResult): Cell[][] {
  const { trial, money } = result;
  const width = heading.length + (money ? moneyHeading.length : 0);
  const fill = (row: readonly Cell[]) => [...row, ...Array.from({ length: width - row.length }, () => "")];
  return [
    money ? [...heading, ...moneyHeading] : heading,
    ...trial.treatments.map((treatment) => fill(treatmentRow(treatment, money))),
    ...blocksWorking(result).map(fill),
  ];
}

function treatmentRow(result: TreatmentResult, money: TreatmentMoney | null): Cell[] {
  const { treatment, strips, mean, letters, againstCheck } = result;
  const means = [treatment, strips, mean, letters];
  if (!againstCheck) return [...means, "check"];
  const { gain, low, high, chance } = againstCheck;
  const against = [...means, gain, low, high, chance];
  const mine = money?.get(treatment);
  if (!mine) return against;
  const pays = gainPays(againstCheck, mine);
  return [...against, pays.netUsdPerAc, pays.chance];
}

export function blocksWorking({ trial, money }: BlocksResult): Row[] {
  const { fit } = trial;
  return [
    ["Strip-to-strip SD", trial.stripSd, "bu/ac"],
    ["CV", trial.cvPct, "%"],
    ["Degrees of freedom", fit.errorDf, ""],
    ["F of treatments", trial.f, ""],
    ["All alike, by luck (p)", trial.chance, chanceUnit],
    ["LSD, for planned differences", trial.leastSignificantDifference ?? "differs by pair", "bu/ac"],
    ["Tukey's difference", trial.tukeyDifference ?? "differs by pair", "bu/ac"],
    ["One strip in blocks equals strips without", trial.blockingEfficiency ?? "not with lost strips", "strips"],
    ...missingRows(trial),
    ["In words", inWords(trial, money), ""],
  ];
}

function missingRows({ missing }: BlockTrial): Row[] {
  if (missing.length === 0) return [];
  const strips = missing.map(({ treatment, block }) => `${treatment} in block ${block}`);
  return [["Without a yield", missingInWords(strips), ""]];
}

/** The best treatment that is not the check, in a sentence. */
function inWords({ treatments, check }: BlockTrial, money: TreatmentMoney | null): string {
  const best = treatments.find(({ againstCheck }) => againstCheck !== null);
  if (!best?.againstCheck) return "";
  return gainInWords(
    `The gain of ${best.treatment} over ${check}`,
    best.againstCheck,
    money?.get(best.treatment) ?? null,
  );
}
