import { refuseArgument } from "../fault";
import { within } from "../limit";
import { pairsOf } from "../money/pairs";
import { riskLimits } from "./risk-limits";

export interface CertaintyEquivalentInput {
  readonly outcomesUsd: readonly (number | null)[];
  /** How likely each is, in any unit; null: all alike. */
  readonly chances: readonly (number | null)[] | null;
  /** Absolute risk aversion, per dollar of the outcomes. */
  readonly riskAversion: number;
}

export interface CertaintyEquivalent {
  readonly certainUsd: number;
  readonly meanUsd: number;
  /** Given up to be rid of the risk. */
  readonly premiumUsd: number;
}

/**
 * Certain amount worth as much as uncertain outcomes to a person of constant absolute risk aversion.
 *
 *   -ln(mean of e^(-r x)) / r, and the mean without risk aversion
 *
 * @source risk-measures
 */
export function certaintyEquivalent(input: CertaintyEquivalentInput): CertaintyEquivalent {
  const { outcomesUsd, riskAversion } = input;
  within("riskAversion", riskAversion, riskLimits.riskAversion);
  const chances = input.chances ?? outcomesUsd.map((outcome) => (outcome === null ? null : 1));
  const pairs = pairsOf({ argument: "outcomes", values: outcomesUsd }, { argument: "chances", values: chances });
  for (const { first, second } of pairs) {
    within("outcomes", first, riskLimits.outcome);
    within("chances", second, riskLimits.chance);
  }
  const total = pairs.reduce((sum, { second }) => sum + second, 0);
  if (total <= 0) refuseArgument("chances", "add up to 0: one at least must be above 0.");
  const meanUsd = pairs.reduce((sum, { first, second }) => sum + (first * second) / total, 0);
  if (riskAversion === 0) return { certainUsd: meanUsd, meanUsd, premiumUsd: 0 };

  // Measured from the worst outcome that can happen, so that no power overflows.
  const worst = Math.min(...pairs.filter(({ second }) => second > 0).map(({ first }) => first));
  const power = pairs.reduce((sum, { first, second }) => {
    return second > 0 ? sum + (second / total) * Math.exp(-riskAversion * (first - worst)) : sum;
  }, 0);
  const certainUsd = worst - Math.log(power) / riskAversion;
  return { certainUsd, meanUsd, premiumUsd: meanUsd - certainUsd };
}

/**
 * What a person of this risk aversion gives up to be rid of a coin flip for plus or minus an amount.
 *
 *   ln(cosh(r amount)) / r
 *
 * @source babcock-1993
 */
export function coinFlipPremium(riskAversion: number, amountUsd: number): number {
  return riskAversion === 0 ? 0 : Math.log(Math.cosh(riskAversion * amountUsd)) / riskAversion;
}
