import { practiceDecision } from "../../../../functions/practices/practice-decision";
import { practiceOdds } from "../../../../functions/practices/practice-odds";
import { practiceTestValue } from "../../../../functions/practices/practice-test-value";
import { practiceUpdate } from "../../../../functions/practices/practice-update";
import { call } from "../../../formula/call";
import { formula, type Expression, type Term } from "../../../formula/expression";
import { quiet, whenNamed, whenNumbers } from "../../../formula/natives";
import { formats } from "../../../model/cell";
import { computed, computedWords } from "../../../model/columns";
import { tableBlock, type TableBlock } from "../../../model/table";
import type { PracticeContext } from "./practice-context";
import { practiceDecisions, practiceTable, trialResults } from "./practice-headers";
import { besidePractice, practiceOfRow } from "./practice-lookup";
import { term } from "./practice-terms-block";

const own = practiceDecisions.own;
const name = own("practice");
const before = (column: keyof typeof practiceTable.headers) => besidePractice(practiceDecisions, column);

/** Rows of PRACTICEUPDATE's table, from 1: its heading, before, the trial, after. */
const afterRow = 4;
/** A triangle even to both sides reaches √6 standard deviations from its middle. */
const reach = formula`6^0.5`;

const notes = {
  decision:
    "test: a trial is worth more than its strips cost; otherwise adopt what pays on average and skip what does not.",
  odds: "Chance that it pays by what is believed now; with a trial this is the belief after it.",
  expected: "The mean of the belief: of low, likely and high, drawn towards the trials as far as these are sure.",
  sd: "Standard deviation of that belief.",
  testValue:
    "What a usual trial is worth to the decision over its acres and seasons, before its own cost; " +
    "it is of one season, and worth less the more seasons differ.",
  pairs: "The number of pairs that leaves most over their cost; 0 where no trial is worth it.",
  trialGain: "Mean of the trials of this practice, weighed by how sure each is.",
  trialSpread: "Standard error of that mean, how far seasons differ included.",
  low: "After a trial: the expected gain less √6 times its standard deviation, an even triangle with the same mean and spread.",
};

export function decisionTableBlock({ rows }: PracticeContext): TableBlock {
  return tableBlock(
    practiceDecisions,
    { title: "What to believe now, and what to do", rows },
    { ...decisionColumns(), ...beliefColumns(), ...testColumns(), ...trialColumns(), ...rangeColumns() },
  );
}

/** Why a practice is adopted, tested or skipped; for the row of this place. */
export function whyExpression(place: Expression): Expression {
  const at = (column: keyof typeof practiceDecisions.headers) =>
    formula`INDEX(${practiceDecisions.all(column)},${place})`;
  const inList = (column: keyof typeof practiceTable.headers) => formula`INDEX(${practiceTable.all(column)},${place})`;
  const reason = decided({
    low: at("low"),
    likely: at("likely"),
    high: at("high"),
    cost: inList("cost"),
    acres: inList("acres"),
    pairCost: inList("pairCost"),
    show: "reason",
  });
  return formula`IF(COUNT(${at("odds")})=1,${reason},"")`;
}

interface Weighed {
  readonly low: Term;
  readonly likely: Term;
  readonly high: Term;
  readonly cost: Term;
  readonly acres: Term;
  /** Its own, or a blank cell for the usual. */
  readonly pairCost: Term;
  readonly show: string;
}

function decided({ low, likely, high, cost, acres, pairCost, show }: Weighed): Expression {
  return call(practiceDecision, {
    lowGain: low,
    likelyGain: likely,
    highGain: high,
    cost,
    price: term("price"),
    acres,
    pairCost: formula`IF(COUNT(${pairCost})=1,${pairCost},${term("pairCost")})`,
    pairSd: term("pairSd"),
    pairAcres: term("pairAcres"),
    seasons: term("seasons"),
    seasonSd: term("seasonSd"),
    show,
  });
}

const range = [own("low"), own("likely"), own("high")] as const;

function whenWeighed(value: Term): Expression {
  return whenNumbers([own("odds"), before("acres")], value);
}

function decisionNow(show: string): Expression {
  const [low, likely, high] = range;
  return decided({
    low,
    likely,
    high,
    cost: before("cost"),
    acres: before("acres"),
    pairCost: before("pairCost"),
    show,
  });
}

function decisionColumns() {
  const [lowGain, likelyGain, highGain] = range;
  const odds = call(practiceOdds, { lowGain, likelyGain, highGain, cost: before("cost"), price: term("price") });
  const looks = [
    ["adopt", "good"],
    ["test", "attention"],
  ] as const;
  return {
    practice: computedWords(practiceOfRow(practiceDecisions), { width: 31 }),
    decision: computedWords(whenNamed(name, formula`IF(COUNT(${own("odds")})=1,${decisionNow("decision")},"waits")`), {
      width: 13,
      note: notes.decision,
      rules: looks.map(([word, look]) => ({ kind: "formula", formula: formula`${own("decision")}=${word}`, look })),
    }),
    odds: computed(whenNumbers([...range, before("cost"), term("price")], odds), {
      width: 10,
      format: formats.chance,
      note: notes.odds,
    }),
  };
}

function beliefColumns() {
  const [low, likely, high] = [before("low"), before("likely"), before("high")];
  const update = (column: number) =>
    formula`INDEX(${call(practiceUpdate, {
      lowGain: low,
      likelyGain: likely,
      highGain: high,
      trialGain: own("trialGain"),
      trialError: own("trialSpread"),
    })},${afterRow},${column})`;
  const mean = formula`(${low}+${likely}+${high})/3`;
  const variance = formula`(${low}^2+${likely}^2+${high}^2-${low}*${likely}-${low}*${high}-${likely}*${high})/18`;
  const believed = (updated: Expression, held: Expression) =>
    whenNumbers([low, likely, high], formula`IF(COUNT(${own("trialGain")})=1,${updated},${held})`);
  return {
    expected: computed(believed(update(2), mean), { width: 11, format: formats.signedOne, note: notes.expected }),
    sd: computed(believed(update(3), formula`(${variance})^0.5`), { width: 10, format: formats.two, note: notes.sd }),
    net: computed(
      whenNumbers(
        [own("expected"), before("cost"), term("price")],
        formula`${own("expected")}*${term("price")}-${before("cost")}`,
      ),
      {
        width: 10,
        format: formats.cents,
        rules: [{ kind: "formula", formula: formula`AND(ISNUMBER(${own("net")}),${own("net")}<0)`, look: "bad" }],
      },
    ),
  };
}

function testColumns() {
  const worth = call(practiceTestValue, {
    gain: own("expected"),
    gainError: own("sd"),
    cost: before("cost"),
    price: term("price"),
    acres: before("acres"),
    trialError: formula`${term("pairSd")}/${term("pairs")}^0.5`,
    seasons: term("seasons"),
    seasonSd: term("seasonSd"),
  });
  return {
    testValue: computed(whenWeighed(worth), { width: 10, format: formats.dollars, note: notes.testValue }),
    pairs: computed(whenWeighed(decisionNow("pairs")), { width: 10, format: formats.whole, note: notes.pairs }),
    testAcres: computed(whenWeighed(decisionNow("test acres")), { width: 10, format: formats.one }),
  };
}

function trialColumns() {
  const sum = (column: "weight" | "weighted") =>
    formula`SUMIF(${trialResults.all("practice")},${name},${trialResults.all(column)})`;
  const tried = (value: Expression) => whenNamed(name, formula`IF(${sum("weight")}>0,${value},"")`);
  return {
    trialGain: computed(tried(formula`${sum("weighted")}/${sum("weight")}`), {
      width: 10,
      format: formats.signedOne,
      note: notes.trialGain,
    }),
    trialSpread: computed(tried(formula`1/${sum("weight")}^0.5`), {
      width: 10,
      format: formats.two,
      note: notes.trialSpread,
    }),
  };
}

function rangeColumns() {
  const now = (column: "low" | "likely" | "high", after: Expression) => {
    const held = before(column);
    return computed(
      quiet(whenNumbers([own("expected"), held], formula`IF(COUNT(${own("trialGain")})=1,${after},${held})`)),
      { width: 10, format: formats.signedOne, note: notes.low },
    );
  };
  const half = formula`${reach}*${own("sd")}`;
  return {
    low: now("low", formula`${own("expected")}-${half}`),
    likely: now("likely", formula`${own("expected")}`),
    high: now("high", formula`${own("expected")}+${half}`),
  };
}
