import { capitalized } from "../../core/capitalized";
import { chanceInWords } from "../../core/statistics/chance-in-words";
import { practiceDecision as practiceDecisionOf, type PracticeDecision } from "../../core/practices/practice-decision";
import { practiceLimits } from "../../core/practices/practice-limits";
import { choice, line, optional, quantity, vocabulary, worksheetFunction } from "../frame";
import { acres, cost, dollars, gainRange, price, seasonLine, seasons, seasonSd } from "./practice-arguments";
import { rangeShape } from "../range-shape";
import { pairCost, pairSd } from "./practice-strips";
import { practiceCautions } from "../cautions";

type Shown = "decision" | "reason" | "testAcres" | "pairs";

const shownWords = vocabulary<Shown>("decision answer", {
  decision: { label: "decision", also: ["verdict", "what to do"] },
  reason: { label: "reason", also: ["why", "because"] },
  testAcres: { label: "test acres", also: ["acres", "acres to test"] },
  pairs: { label: "pairs", also: ["pairs of strips", "strips"] },
});

const ownRule = "then 80 % either way is sure enough, our own choice";

export const practiceDecision = worksheetFunction({
  name: "PRACTICEDECISION",
  family: "practices",
  summary: "Whether to adopt a practice, test it on strips first, or skip it, and why.",
  asks: [
    "should I adopt this practice",
    "which practices should I test",
    "is it worth doing",
    "run a trial or buy now",
  ],
  args: {
    ...gainRange,
    cost,
    price,
    acres,
    pairCost: optional(pairCost, null, `not known: ${ownRule}`),
    pairSd: optional(pairSd, null, `not known: ${ownRule}`),
    pairAcres: optional(quantity(practiceLimits.pairAcres, { says: "acres of one pair of strips" }), 1, "1"),
    seasons,
    show: optional(
      choice(shownWords, { says: "what to answer: the decision, its reason, acres to test on, or pairs of strips" }),
      "decision",
      "decision",
    ),
    shape: rangeShape,
    seasonSd,
  },
  returns: { shape: "one", unit: "", says: "adopt, test or skip; or what show asks for" },
  sources: ["raiffa-schlaifer-1961", "three-point-range"],
  cautions: practiceCautions,
  example: {
    call: [4, 6, 8, 18, 4.5, 100],
    gives: "adopt",
    because:
      "by hand: 18 / 4.50 = 4 bu/ac pays, the lowest gain: it pays in 10 cases of 10, and 27 − 18 = $9/ac on average",
  },
  compute: (values) =>
    practiceDecisionOf({
      lowGainBuPerAc: values.lowGain,
      likelyGainBuPerAc: values.likelyGain,
      highGainBuPerAc: values.highGain,
      shape: values.shape,
      costUsdPerAc: values.cost,
      priceUsdPerBu: values.price,
      acres: values.acres,
      seasons: values.seasons,
      pairCostUsd: values.pairCost,
      pairSdBuPerAc: values.pairSd,
      pairAcres: values.pairAcres,
      seasonSdBuPerAc: values.seasonSd,
    }),
  value: (result, { show }) => {
    if (show === "testAcres") return result.testAcres;
    if (show === "pairs") return result.pairs;
    return show === "reason" ? reasonFor(result) : result.decision;
  },
  working: (result, values) => [
    line("Decision", result.decision),
    line("Reason", reasonFor(result)),
    line("Gain that pays", result.odds.gainThatPaysBuPerAc, "bu/ac"),
    line("Gain to expect", result.odds.meanGainBuPerAc, "bu/ac"),
    line("Net on average", result.odds.meanNetUsdPerAc, "$/ac"),
    ...(result.strips ? [seasonLine(values.seasonSd)] : []),
    line("Pairs of strips", result.pairs, "pairs"),
    line("Acres to test on", result.testAcres, "ac"),
  ],
});

function reasonFor({ decision, odds, strips, testAcres }: PracticeDecision): string {
  const chance = `it pays with ${chanceInWords(odds.chance)} chance and ${nets(odds.meanNetUsdPerAc)} on average`;
  if (strips) return `${capitalized(chance)}. ${trialReason(strips, testAcres)}`;
  if (decision === "adopt") return `${capitalized(chance)}: sure enough to go ahead.`;
  if (decision === "skip") return `${capitalized(chance)}: not worth the money.`;
  const meanwhile = odds.meanNetUsdPerAc > 0 ? "it may go on elsewhere meanwhile" : "hold off elsewhere meanwhile";
  return `${capitalized(chance)}: too close to call. Test on ${rounded(testAcres)} ac; ${meanwhile}.`;
}

function trialReason({ best, isWorthIt }: NonNullable<PracticeDecision["strips"]>, testAcres: number): string {
  const [pairs, cost, worth] = [`${best.pairs} pairs of strips`, dollars(best.costUsd), dollars(best.valueUsd)];
  return isWorthIt
    ? `${pairs} on ${rounded(testAcres)} ac cost ${cost} and are worth ${worth} to the decision.`
    : `No trial is worth its cost: ${pairs} cost ${cost} and would be worth ${worth}.`;
}

function nets(usdPerAc: number): string {
  return usdPerAc < 0 ? `loses ${dollars(-usdPerAc)}/ac` : `nets ${dollars(usdPerAc)}/ac`;
}

function rounded(acresToShow: number): string {
  return acresToShow.toLocaleString("en-US", { maximumFractionDigits: 1 });
}
