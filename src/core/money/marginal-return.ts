import { within } from "../limit";
import { moneyLimits } from "./money-limits";
import { pairsOf } from "./pairs";

export interface MarginalReturnInput {
  /** Costs that vary between the options, null where a cell is blank. */
  readonly costsUsdPerAc: readonly (number | null)[];
  /** Net benefits: returns less those costs. */
  readonly benefitsUsdPerAc: readonly (number | null)[];
  /** Least return that more money has to bring, a fraction a season; null: no choice is made. */
  readonly leastReturn: number | null;
}

export interface Option {
  /** Place in the lists, from 0. */
  readonly place: number;
  readonly costUsdPerAc: number;
  readonly benefitUsdPerAc: number;
  /** A cheaper or equal option brings at least as much. */
  readonly isDominated: boolean;
  /** Return on the money added since the last option that is not dominated; null for the first and the dominated. */
  readonly marginalReturn: number | null;
  readonly isChosen: boolean;
}

export interface MarginalReturn {
  /** Cheapest first. */
  readonly options: readonly Option[];
  readonly chosen: Option | null;
}

/**
 * What each further dollar brings, from the cheapest option to the dearest.
 *
 *   (benefit j - benefit i) / (cost j - cost i)      between options that are not dominated
 *
 * The choice moves up from the cheapest option wherever the money added since the last choice returns the least that
 * is asked: so a poor step is passed over when a later one makes good for it.
 *
 * @source cimmyt-1976
 */
export function marginalReturn(input: MarginalReturnInput): MarginalReturn {
  if (input.leastReturn !== null) within("leastReturn", input.leastReturn, moneyLimits.leastReturn);
  const sorted = optionsOf(input);
  const standing = sorted.filter((option) => !option.isDominated);
  const place = input.leastReturn === null ? null : chosenPlace(standing, input.leastReturn);

  const options = sorted.map((option) => {
    const before = standing[standing.indexOf(option) - 1];
    return {
      ...option,
      marginalReturn: option.isDominated || before === undefined ? null : returnBetween(before, option),
      isChosen: option.place === place,
    };
  });
  return { options, chosen: options.find(({ isChosen }) => isChosen) ?? null };
}

type Plain = Omit<Option, "marginalReturn" | "isChosen">;

function optionsOf({ costsUsdPerAc, benefitsUsdPerAc }: MarginalReturnInput): Plain[] {
  const pairs = pairsOf(
    { argument: "costs", values: costsUsdPerAc },
    { argument: "benefits", values: benefitsUsdPerAc },
  );
  for (const { first, second } of pairs) {
    within("costs", first, moneyLimits.costPerAc);
    within("benefits", second, moneyLimits.margin);
  }
  let best = Number.NEGATIVE_INFINITY;
  return pairs
    .sort((a, b) => a.first - b.first || b.second - a.second || a.place - b.place)
    .map(({ place, first, second }) => {
      const isDominated = second <= best;
      best = Math.max(best, second);
      return { place, costUsdPerAc: first, benefitUsdPerAc: second, isDominated };
    });
}

function returnBetween(lower: Plain, higher: Plain): number {
  return (higher.benefitUsdPerAc - lower.benefitUsdPerAc) / (higher.costUsdPerAc - lower.costUsdPerAc);
}

function chosenPlace(standing: readonly Plain[], leastReturn: number): number | null {
  const [first, ...dearer] = standing;
  if (first === undefined) return null;
  return dearer.reduce((held, next) => (returnBetween(held, next) >= leastReturn ? next : held), first).place;
}
