import { refuse } from "../fault";
import { within } from "../limit";
import { mean } from "../statistics/sums";
import { riskLimits } from "./risk-limits";

export interface Plans {
  /** Outcomes of each plan, as likely one as the other; the two need not be equally many. */
  readonly first: readonly number[];
  readonly second: readonly number[];
}

export type Preference = "first" | "second" | "neither" | "alike";

export interface PlanDominance {
  /** First degree: whom everyone prefers who wants more money. */
  readonly everyone: Preference;
  /** Second degree: whom every cautious person prefers. */
  readonly cautious: Preference;
  readonly firstMean: number;
  readonly secondMean: number;
  readonly firstLowest: number;
  readonly secondLowest: number;
}

/** Areas smaller than this share of the whole are the dust of adding up. */
const dust = 1e-12;

/**
 * Whether one plan is better than another whatever a person's liking for risk, or for all who dislike it.
 *
 *   first degree   F1(x) <= F2(x) everywhere, less somewhere
 *   second degree  the area under F2 - F1 up to any x is never below 0, above 0 somewhere
 *
 * Both are tested at every outcome, which is exact for steps.
 *
 * @source stochastic-dominance
 */
export function planDominance({ first, second }: Plans): PlanDominance {
  check("a", first);
  check("b", second);
  const outcomes = [...new Set([...first, ...second])].sort((x, y) => x - y);
  const gaps = gapsOf(
    outcomes,
    [...first].sort((x, y) => x - y),
    [...second].sort((x, y) => x - y),
  );
  return {
    everyone: preferenceOf(gaps, 0),
    cautious: preferenceOf(areasOf(outcomes, gaps), areaDust(outcomes)),
    firstMean: mean(first),
    secondMean: mean(second),
    firstLowest: Math.min(...first),
    secondLowest: Math.min(...second),
  };
}

/** F2 - F1 at each outcome, counted in whole numbers so that equal shares are equal. */
function gapsOf(outcomes: readonly number[], first: readonly number[], second: readonly number[]): number[] {
  let inFirst = 0;
  let inSecond = 0;
  return outcomes.map((outcome) => {
    while ((first[inFirst] ?? Infinity) <= outcome) inFirst++;
    while ((second[inSecond] ?? Infinity) <= outcome) inSecond++;
    return (inSecond * first.length - inFirst * second.length) / (first.length * second.length);
  });
}

function areasOf(outcomes: readonly number[], gaps: readonly number[]): number[] {
  let area = 0;
  return outcomes.map((outcome, index) => {
    if (index > 0) area += (gaps[index - 1] ?? 0) * (outcome - (outcomes[index - 1] ?? outcome));
    return area;
  });
}

function areaDust(outcomes: readonly number[]): number {
  return dust * ((outcomes.at(-1) ?? 0) - (outcomes[0] ?? 0));
}

function preferenceOf(differences: readonly number[], tolerance: number): Preference {
  const forFirst = differences.some((difference) => difference > tolerance);
  const forSecond = differences.some((difference) => difference < -tolerance);
  if (forFirst && forSecond) return "neither";
  if (forFirst) return "first";
  return forSecond ? "second" : "alike";
}

function check(argument: string, outcomes: readonly number[]): void {
  if (outcomes.length < 2) refuse({ kind: "tooFew", argument, received: outcomes.length, atLeast: 2 });
  for (const outcome of outcomes) within(argument, outcome, riskLimits.outcome);
}
