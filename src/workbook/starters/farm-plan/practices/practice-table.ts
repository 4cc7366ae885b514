import { limits } from "../../../../core/limits";
import { practiceLimits } from "../../../../core/practices/practice-limits";
import { breakEvenGain } from "../../../../functions/money/partial-budget";
import { practiceOdds } from "../../../../functions/practices/practice-odds";
import { call } from "../../../formula/call";
import { formula } from "../../../formula/expression";
import { whenNamed, whenNumbers } from "../../../formula/natives";
import { formats, type Allow } from "../../../model/cell";
import { computed, oneOf, pick, typedNumber, typedWords, within } from "../../../model/columns";
import { tableBlock, type TableBlock } from "../../../model/table";
import { fieldTable } from "../headers";
import type { PracticeContext } from "./practice-context";
import { practiceTable } from "./practice-headers";
import { term } from "./practice-terms-block";

const own = practiceTable.own;
const range = [own("low"), own("likely"), own("high")] as const;

const notes = {
  practice: "Something paid for to gain yield, in a few words. Trials and the stack find it by this name.",
  field: "Blank: all acres of the crop. A field: only there, and only while the crop is grown on it.",
  inBudget:
    "yes: the crop budget pays for it already, so the stack leaves it out and no cost or gain is counted twice.",
  cost:
    "On an acre, less what it saves, and only what the crop budget does not carry already. " +
    "Potash: the budget charges what the grain takes; what goes beyond belongs here.",
  low: "A gain it would hardly fall below. Below 0 where it may cost yield.",
  high: "A gain it would hardly pass. Most people set the two too close together.",
  pairCost: "Blank: what a pair costs above. A figure where strips of this practice cost more.",
  pays: "Bushels per acre that pay the cost, at what a bushel leaves.",
  odds: "Chance that the gain is above the one that pays: a triangle from low over likely to high.",
  net: "The mean of low, likely and high at what a bushel leaves, less the cost; before any trial.",
};

export function practiceListBlock(context: PracticeContext): TableBlock {
  return tableBlock(
    practiceTable,
    { title: "Practices under discussion", rows: context.rows },
    { ...whatColumns(context), ...gainColumns(context), ...answerColumns() },
  );
}

function whatColumns({ practices }: PracticeContext) {
  const field = oneOf({ table: fieldTable.table, column: "field" }, "A field, or blank for all acres of the crop.");
  const onField = formula`SUMIFS(${fieldTable.all("acres")},${fieldTable.all("field")},${own("field")},${fieldTable.all("nextCrop")},${term("crop")})`;
  return {
    practice: typedWords(pick(practices, "practice"), { width: 31, note: notes.practice }),
    field: typedWords(pick(practices, "field"), { width: 13, allow: field, note: notes.field }),
    acres: computed(whenNamed(own("practice"), formula`IF(${own("field")}&""="",${term("acres")},${onField})`), {
      width: 10,
      format: formats.one,
    }),
    inBudget: typedWords(
      practices.map(({ isInBudget }) => (isInBudget ? "yes" : null)),
      {
        width: 11,
        allow: oneOf(["yes", "no"], "yes where the crop budget pays for it already."),
        note: notes.inBudget,
      },
    ),
    cost: typedNumber(pick(practices, "costUsdPerAc"), {
      width: 10,
      format: formats.cents,
      allow: within(practiceLimits.cost, "Cost on an acre, less what it saves"),
      note: notes.cost,
    }),
  };
}

function gainColumns({ practices }: PracticeContext) {
  const allow: Allow = { kind: "between", min: -100, max: 200, prompt: "Bushels per acre over doing nothing." };
  const bushels = { width: 10, format: formats.signedOne, allow };
  return {
    low: typedNumber(pick(practices, "lowGainBuPerAc"), { ...bushels, note: notes.low }),
    likely: typedNumber(pick(practices, "likelyGainBuPerAc"), bushels),
    high: typedNumber(pick(practices, "highGainBuPerAc"), { ...bushels, note: notes.high }),
    pairCost: typedNumber(pick(practices, "pairCostUsd"), {
      width: 10,
      format: formats.dollars,
      allow: within({ ...limits.price, max: practiceLimits.stripCost.max }, "Dollars for one pair of strips"),
      note: notes.pairCost,
    }),
  };
}

function answerColumns() {
  const price = term("price");
  const [lowGain, likelyGain, highGain] = range;
  const odds = call(practiceOdds, { lowGain, likelyGain, highGain, cost: own("cost"), price });
  const mean = formula`(${lowGain}+${likelyGain}+${highGain})/3`;
  return {
    pays: computed(whenNumbers([own("cost"), price], call(breakEvenGain, { cost: own("cost"), price })), {
      width: 10,
      format: formats.one,
      note: notes.pays,
    }),
    odds: computed(whenNumbers([...range, own("cost"), price], odds), {
      width: 10,
      format: formats.chance,
      note: notes.odds,
    }),
    net: computed(whenNumbers([...range, own("cost"), price], formula`${mean}*${price}-${own("cost")}`), {
      width: 11,
      format: formats.cents,
      note: notes.net,
      rules: [{ kind: "formula", formula: formula`AND(ISNUMBER(${own("net")}),${own("net")}<0)`, look: "bad" }],
    }),
  };
}
