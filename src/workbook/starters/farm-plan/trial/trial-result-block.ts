import { trialLimits } from "../../../../core/trials/trial-limits";
import { breakEvenGain } from "../../../../functions/money/partial-budget";
import { trialPairs } from "../../../../functions/trials/trial-pairs";
import { trialSize } from "../../../../functions/trials/trial-size";
import { call } from "../../../formula/call";
import { formula, type Expression, type Term } from "../../../formula/expression";
import { whenNumbers } from "../../../formula/natives";
import type { EntriesBlock, Entry } from "../../../model/block";
import { formats } from "../../../model/cell";
import { within } from "../../../model/columns";
import { computedEntry, typedEntry, wordsEntry } from "../../../model/entries";
import { trialKey, trialLine, type TrialLine } from "./trial-places";
import type { Trial } from "./trial";

/** Rows of the table of TRIALPAIRS, from 1, its heading first. */
const resultRows = { pairs: 2, gain: 5, se: 6, from: 7, to: 8, luck: 11, seen: 13 } as const;
/** With price and cost there are five more before the sentence. */
const moneyRows = { pays: 14, net: 15, chance: 18, words: 19 } as const;
const wordsWithoutMoney = 14;

export function trialResultBlock(trial: Trial): EntriesBlock {
  return {
    kind: "entries",
    key: trialKey(trial.index),
    title: "What it says",
    entries: [...gainLines(trial), ...moneyLines(trial), ...nextLines(trial)],
  };
}

interface Line {
  readonly key: TrialLine;
  readonly label: string;
  readonly unit?: string;
  readonly format: string;
  readonly says?: string;
}

function resultOf({ index, strips }: Trial, row: number, withMoney: boolean): Expression {
  const at = (line: TrialLine) => trialLine(index, line);
  const result = call(trialPairs, {
    check: strips.all("checkYield"),
    treated: strips.all("treatedYield"),
    confidence: at("confidence"),
    ...(withMoney && { price: at("price"), cost: at("cost") }),
  });
  return formula`INDEX(${result},${row},2)`;
}

/** Once two pairs have both of their yields. */
function whenTried({ strips }: Trial, value: Term): Expression {
  return formula`IF(COUNT(${strips.all("difference")})>=2,${value},"")`;
}

function hasMoney({ index }: Trial): Expression {
  return formula`COUNT(${trialLine(index, "price")},${trialLine(index, "cost")})=2`;
}

function gainLines(trial: Trial): Entry[] {
  const words = formula`IF(${hasMoney(trial)},${resultOf(trial, moneyRows.words, true)},${resultOf(trial, wordsWithoutMoney, false)})`;
  const line = (facts: Line, row: number) => computedEntry(facts, whenTried(trial, resultOf(trial, row, false)));
  const bushels = { unit: "bu/ac", format: formats.signedOne };
  return [
    wordsEntry(
      { key: "words", label: "In words" },
      formula`IF(COUNT(${trial.strips.all("difference")})>=2,${words},"waits for yields of at least two pairs")`,
    ),
    line({ key: "pairs", label: "Pairs with both yields", unit: "pairs", format: formats.whole }, resultRows.pairs),
    line(
      { key: "gain", label: "Gain", ...bushels, says: "Treated less check, the mean of the pairs." },
      resultRows.gain,
    ),
    line(
      { key: "se", label: "Standard error", unit: "bu/ac", format: formats.two, says: "How far that mean may be off." },
      resultRows.se,
    ),
    line(
      { key: "from", label: "Likely from", ...bushels, says: "As sure as set above; 90 unless changed." },
      resultRows.from,
    ),
    line({ key: "to", label: "Likely to", ...bushels }, resultRows.to),
    line(
      {
        key: "luck",
        label: "By luck (p)",
        format: "0.0000_)",
        says: "Chance of a gain this far from 0 if the practice did nothing.",
      },
      resultRows.luck,
    ),
  ];
}

function moneyLines(trial: Trial): Entry[] {
  const line = (facts: Line, row: number) =>
    computedEntry(facts, whenTried(trial, formula`IF(${hasMoney(trial)},${resultOf(trial, row, true)},"")`));
  return [
    line(
      {
        key: "pays",
        label: "Gain that pays",
        unit: "bu/ac",
        format: formats.one,
        says: "Cost over what a bushel leaves.",
      },
      moneyRows.pays,
    ),
    line({ key: "net", label: "Net of the practice", unit: "$/ac", format: formats.cents }, moneyRows.net),
    line(
      {
        key: "chance",
        label: "Pays with chance",
        format: formats.chance,
        says: "By this trial alone; the sheet of practices weighs it with what was held before.",
      },
      moneyRows.chance,
    ),
  ];
}

function nextLines(trial: Trial): Entry[] {
  const at = (line: TrialLine) => trialLine(trial.index, line);
  const pays = call(breakEvenGain, { cost: at("cost"), price: at("price") });
  const size = call(trialSize, {
    gainToSee: at("gainToSee"),
    stripSD: formula`${at("scatter")}/2^0.5`,
    confidence: at("confidence"),
  });
  return [
    computedEntry(
      {
        key: "scatter",
        label: "Pairs scatter by (SD)",
        unit: "bu/ac",
        format: formats.two,
        says: "From pair to pair: your own figure for the sheet of practices.",
      },
      whenNumbers([at("se"), at("pairs")], formula`${at("se")}*${at("pairs")}^0.5`),
    ),
    typedEntry(
      {
        key: "worthFinding",
        label: "Gain worth finding next time",
        unit: "bu/ac",
        format: formats.one,
        says: "Blank: the gain that pays.",
      },
      null,
      within(trialLimits.gainToSee, "Smallest gain worth finding"),
    ),
    computedEntry(
      { key: "gainToSee", label: "A next trial shall see", unit: "bu/ac", format: formats.one },
      formula`IF(COUNT(${at("worthFinding")})=1,${at("worthFinding")},IF(${hasMoney(trial)},${pays},""))`,
    ),
    computedEntry(
      {
        key: "nextBlocks",
        label: "Pairs it needs for that",
        unit: "pairs",
        format: formats.whole,
        says: "Seen eight times in ten, on ground and weather as uneven as in this trial.",
      },
      whenNumbers([at("scatter"), at("gainToSee")], size),
    ),
  ];
}
