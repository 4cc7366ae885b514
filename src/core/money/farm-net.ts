import { refuseArgument } from "../fault";
import { within } from "../limit";
import { sum } from "../statistics/sums";
import { moneyLimits } from "./money-limits";
import { pairsOf } from "./pairs";

export interface FarmNetInput {
  readonly acres: readonly (number | null)[];
  /** Margin over variable cost of each crop. */
  readonly marginsUsdPerAc: readonly (number | null)[];
  /** Whole-farm costs, entered once. */
  readonly overheadUsd: readonly number[];
  /** Crop acres of the farm; null: not checked. */
  readonly cropAcres: number | null;
}

export interface FarmNet {
  readonly netUsd: number;
  readonly marginUsd: number;
  readonly overheadUsd: number;
  readonly acres: number;
  /** null without acres. */
  readonly netUsdPerAc: number | null;
  /** Crop acres that no crop is put on; null when they are not given. */
  readonly idleAcres: number | null;
}

/**
 * What the farm nets from all crops together.
 *
 *   sum of acres × margin over variable cost - whole-farm costs
 *
 * @source enterprise-budget
 */
export function farmNet({ acres, marginsUsdPerAc, overheadUsd, cropAcres }: FarmNetInput): FarmNet {
  const crops = pairsOf({ argument: "acres", values: acres }, { argument: "margins", values: marginsUsdPerAc });
  for (const { first, second } of crops) {
    within("acres", first, moneyLimits.acres);
    within("margins", second, moneyLimits.margin);
  }
  for (const cost of overheadUsd) within("overhead", cost, moneyLimits.amount);
  const planted = sum(crops.map(({ first }) => first));
  if (cropAcres !== null) checkAcres(planted, cropAcres);

  const marginUsd = sum(crops.map(({ first, second }) => first * second));
  const overhead = sum(overheadUsd);
  return {
    netUsd: marginUsd - overhead,
    marginUsd,
    overheadUsd: overhead,
    acres: planted,
    netUsdPerAc: planted > 0 ? (marginUsd - overhead) / planted : null,
    idleAcres: cropAcres === null ? null : Math.max(0, cropAcres - planted),
  };
}

function checkAcres(planted: number, cropAcres: number): void {
  within("cropAcres", cropAcres, moneyLimits.acres);
  // A hair of room: acres of fields are rounded.
  if (planted <= cropAcres * (1 + 1e-9)) return;
  const because = `add up to ${Number(planted.toPrecision(9))} ac, more than the ${cropAcres} ac of cropAcres.`;
  refuseArgument("acres", because);
}
