import { refuseArgument } from "../fault";
import { within } from "../limit";
import { bushelWeight } from "../units/bushel-weight";
import { squareFootPerAcre } from "../units/units";
import {
  bushelOf,
  lossCounts,
  lossTargets,
  seedsPerPound,
  type LossCropKey,
  type LossTargetRow,
} from "../../reference/harvest/loss-crops";
import type { Cited } from "../../reference/table";
import { harvestLimits } from "./harvest-limits";

/** Seeds on a square foot that are one bushel an acre. */
export interface BushelCount {
  readonly seedsPerSqFt: number;
  readonly from: "printed" | "seeds in a pound";
  readonly cited: readonly Cited[];
}

/**
 * Seeds on a square foot that make a bushel an acre: worked out from the seeds in a pound where they are given, as
 * printed otherwise. Rye and winter wheat are worked out from printed seeds in a pound.
 *
 *   seeds per pound × bushel weight / 43,560
 *
 * @source ndsu-harvest-losses-2002, seeds-per-area
 */
export function bushelCount(crop: LossCropKey, seedsPerLb: number | null): BushelCount {
  if (seedsPerLb !== null) {
    within("seedsPerPound", seedsPerLb, harvestLimits.seedsPerPound);
    return countFromPounds(crop, seedsPerLb, []);
  }
  const printed = lossCounts.rows.find((row) => row.crop === crop);
  if (printed) return { seedsPerSqFt: printed.seedsPerSqFtPerBu, from: "printed", cited: [printed] };
  const seeds = seedsPerPound.rows.find((row) => row.crop === crop);
  return countFromPounds(crop, seeds?.seedsPerLb ?? Number.NaN, seeds ? [seeds] : []);
}

function countFromPounds(crop: LossCropKey, seedsPerLb: number, cited: readonly Cited[]): BushelCount {
  const bushel = bushelWeight(bushelOf[crop] ?? "sunflower");
  return {
    seedsPerSqFt: (seedsPerLb * bushel.bushelWeightLb) / squareFootPerAcre,
    from: "seeds in a pound",
    cited: [...cited, bushel],
  };
}

export interface LossCount {
  readonly crop: LossCropKey;
  /** Counted behind the machine. */
  readonly seedsPerSqFt: number;
  /** Counted in the standing crop. */
  readonly standingPerSqFt: number;
  readonly seedsPerLb: number | null;
  readonly yieldBuPerAc: number | null;
  readonly priceUsdPerBu: number | null;
}

export interface HarvestLoss {
  readonly lossBuPerAc: number;
  readonly beforeHarvestBuPerAc: number;
  readonly count: BushelCount;
  /** Of the crop that the machine met: harvested plus lost. */
  readonly lossPct: number | null;
  readonly valueUsdPerAc: number | null;
  readonly target: LossTargetRow | null;
  readonly cited: readonly Cited[];
}

/**
 * Bushels an acre that a harvest leaves on the ground.
 *
 *   (seeds behind the machine - seeds under the standing crop) / seeds per sq ft that are a bushel an acre
 *
 * @source ndsu-harvest-losses-2002
 */
export function harvestLoss(input: LossCount): HarvestLoss {
  within("seedsPerSqFt", input.seedsPerSqFt, harvestLimits.seedsOnGround);
  within("standing", input.standingPerSqFt, harvestLimits.seedsOnGround);
  if (input.standingPerSqFt > input.seedsPerSqFt) refuseStanding();
  if (input.yieldBuPerAc !== null) within("yield", input.yieldBuPerAc, harvestLimits.yield);
  if (input.priceUsdPerBu !== null) within("price", input.priceUsdPerBu, harvestLimits.price);
  const count = bushelCount(input.crop, input.seedsPerLb);

  const lossBuPerAc = (input.seedsPerSqFt - input.standingPerSqFt) / count.seedsPerSqFt;
  const met = (input.yieldBuPerAc ?? 0) + lossBuPerAc;
  const target = targetOf(input.crop);
  return {
    lossBuPerAc,
    beforeHarvestBuPerAc: input.standingPerSqFt / count.seedsPerSqFt,
    count,
    lossPct: input.yieldBuPerAc === null || met === 0 ? null : (100 * lossBuPerAc) / met,
    valueUsdPerAc: input.priceUsdPerBu === null ? null : lossBuPerAc * input.priceUsdPerBu,
    target,
    cited: target ? [...count.cited, target] : count.cited,
  };
}

function targetOf(crop: LossCropKey): LossTargetRow | null {
  const rows: readonly LossTargetRow[] = lossTargets.rows;
  return rows.find(({ crops }) => crops.includes(crop)) ?? null;
}

function refuseStanding(): never {
  refuseArgument("standing", "more seeds lie under the standing crop than behind the machine: count both again.");
}
