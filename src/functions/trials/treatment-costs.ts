import { countInWords } from "../../core/count-in-words";
import { needed, refuse } from "../../core/fault";
import type { BlockTrial } from "../../core/trials/block-trial";
import type { GainMoney } from "../../core/trials/gain-in-words";
import { moneyOf } from "./trial-arguments";

/** Price, and what each treatment costs beyond the check. */
export type TreatmentMoney = ReadonlyMap<string, GainMoney>;

interface MoneyArguments {
  readonly price: number | null;
  readonly costs: readonly (number | null)[] | null;
}

/** One cost stands for every treatment but the check; otherwise one each, in the order first listed. */
export function treatmentCosts(trial: BlockTrial, { price, costs }: MoneyArguments): TreatmentMoney | null {
  const given = trimmed(costs ?? []);
  const [first = null] = given;
  const money = moneyOf(price, given.length === 0 ? null : (first ?? 0));
  if (!money) return null;
  const costOf = given.length === 1 ? () => first ?? 0 : costInList(trial, given);
  const checkCost = given.length === 1 ? 0 : costOf(trial.check);
  return new Map(
    trial.listed.map((name) => [
      name,
      { priceUsdPerBu: money.priceUsdPerBu, costUsdPerAc: name === trial.check ? 0 : costOf(name) - checkCost },
    ]),
  );
}

function costInList(trial: BlockTrial, costs: readonly (number | null)[]): (name: string) => number {
  if (costs.length !== trial.listed.length) {
    refuse({
      kind: "sizesDiffer",
      first: { argument: "costs", size: countInWords(costs.length, "cell") },
      second: { argument: "treatments", size: countInWords(trial.listed.length, "name") },
    });
  }
  return (name) => needed("costs", costs[trial.listed.indexOf(name)]);
}

/** Blank cells below the last cost are no costs. */
function trimmed(costs: readonly (number | null)[]): readonly (number | null)[] {
  return costs.slice(0, costs.findIndex((_, index) => costs.slice(index).every((cost) => cost === null)) >>> 0);
}
