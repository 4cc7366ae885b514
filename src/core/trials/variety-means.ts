import { refuseArgument } from "../fault";
import { within } from "../limit";
import { sameLength } from "../same-length";
import { zForConfidence } from "../statistics/normal";
import { dot, mean, sum } from "../statistics/sums";
import { sharedOf, type BlockFit } from "./block-fit";
import { judgedFit } from "./block-trial";
import { chanceOfBest } from "./chance-of-best";
import { namedStrips, type NamedStrips } from "./named-strips";
import { positiveInverse } from "./positive-inverse";
import { trialLimits } from "./trial-limits";

export interface VarietyMeansInput {
  readonly varieties: readonly (string | null)[];
  readonly locations: readonly (string | null)[];
  readonly yields: readonly (number | null)[];
  /** Whether the variety of each row has the traits that are needed; null: all have. */
  readonly hasTraits: readonly (boolean | null)[] | null;
  readonly confidencePct: number;
}

export interface VarietyMean {
  readonly variety: string;
  readonly locations: number;
  /** Mean as if grown at every location. */
  readonly mean: number;
  /** The same, pulled toward the mean of all as far as the trials are noisy. */
  readonly shrunkenMean: number;
  readonly low: number;
  readonly high: number;
  /** Chance of being the best, 0 to 1. */
  readonly bestChance: number;
}

export interface VarietyMeans {
  readonly fit: BlockFit;
  /** Best first; only varieties that have the traits. */
  readonly varieties: readonly VarietyMean[];
  readonly leftOut: readonly string[];
  readonly locations: number;
  /** Standard deviation of the true varieties and of a variety at one location about its own mean. */
  readonly varietySd: number;
  readonly locationSd: number;
  /** Share of the differences between means that is the varieties' own, with every location seen. */
  readonly heritablePct: number;
}

/**
 * Varieties over locations, shrunken: true variety values are taken to scatter about a common mean, and each observed
 * difference is believed as far as the trials repeat it (best linear unbiased prediction, locations fixed).
 *
 * @source robinson-1991
 */
export function varietyMeans(input: VarietyMeansInput): VarietyMeans {
  within("confidence", input.confidencePct, trialLimits.confidence);
  const named = namedStrips(
    { treatments: input.varieties, blocks: input.locations, yields: input.yields },
    { treatments: "varieties", blocks: "locations" },
  );
  const fit = judgedFit(named, "yields");
  const locationVariance = fit.errorMeanSquare;
  const varietyVariance = varietyVarianceOf(fit, named);
  const shrunken = shrink(fit, named, varietyVariance);
  const keeps = keptVarieties(input, named);
  const z = zForConfidence(input.confidencePct);
  const best = chanceOfBest(shrunken.filter((_, index) => keeps[index]));
  const order = named.treatments.map((_, index) => index).filter((index) => keeps[index]);
  const rows = order.map((index, place): VarietyMean => {
    const { value, sd } = shrunken[index] ?? { value: 0, sd: 0 };
    return {
      variety: named.treatments[index] ?? "",
      locations: fit.stripsOf[index] ?? 0,
      mean: fit.means[index] ?? 0,
      shrunkenMean: value,
      low: value - z * sd,
      high: value + z * sd,
      bestChance: best[place] ?? 0,
    };
  });
  const perMean = locationVariance / named.blocks.length;
  return {
    fit,
    varieties: rows.sort((a, b) => b.shrunkenMean - a.shrunkenMean || b.mean - a.mean),
    leftOut: named.treatments.filter((_, index) => !keeps[index]),
    locations: named.blocks.length,
    varietySd: Math.sqrt(varietyVariance),
    locationSd: Math.sqrt(locationVariance),
    heritablePct: (100 * varietyVariance) / (varietyVariance + perMean),
  };
}

/** From the mean squares, not below 0; the divisor counts locations per variety, corrected for gaps (Henderson). */
function varietyVarianceOf(fit: BlockFit, named: NamedStrips): number {
  const perVariety = trace(information(named)) / fit.treatmentDf;
  return Math.max(0, (fit.treatmentSquares / fit.treatmentDf - fit.errorMeanSquare) / perVariety);
}

interface Shrunken {
  readonly value: number;
  readonly sd: number;
}

function shrink(fit: BlockFit, named: NamedStrips, varietyVariance: number): Shrunken[] {
  const center = mean(fit.means);
  if (varietyVariance === 0) return fit.means.map(() => ({ value: center, sd: 0 }));
  const ratio = fit.errorMeanSquare / varietyVariance;
  const matrix = information(named);
  const inverse = positiveInverse(
    matrix.map((row, index) => row.map((cell, column) => cell + (index === column ? ratio : 0))),
  );
  if (!inverse) return fit.means.map((value) => ({ value, sd: 0 }));
  const effects = fit.means.map((value) => value - center);
  const told = matrix.map((cells) => dot(cells, effects));
  const pulled = inverse.map((row) => dot(row, told));
  const common = commonCovariance(inverse);
  return pulled.map((effect, index) => ({
    value: center + effect,
    sd: Math.sqrt(fit.errorMeanSquare * Math.max(0, (inverse[index]?.[index] ?? 0) - common)),
  }));
}

/** What the locations tell of the varieties: identity of strips less what is shared within locations. */
function information({ strips, treatments, blocks }: NamedStrips): number[][] {
  const grown = treatments.map(() => new Float64Array(blocks.length));
  for (const { treatment, block } of strips) {
    const row = grown[treatment];
    if (row) row[block] = 1;
  }
  const sizes = blocks.map((_, block) => sum(grown.map((row) => row[block] ?? 0)));
  const shares = grown.map((row) => row.map((here, block) => here / (sizes[block] ?? 1)));
  return grown.map((mine, row) =>
    shares.map((other, column) => (row === column ? sharedOf(mine, mine) : 0) - sharedOf(mine, other)),
  );
}

/** Errors that all varieties share do not change their order. */
function commonCovariance(inverse: readonly (readonly number[])[]): number {
  const size = inverse.length;
  const all = sum(inverse.flat());
  return (all - trace(inverse)) / (size * (size - 1));
}

function trace(matrix: readonly (readonly number[])[]): number {
  return sum(matrix.map((row, index) => row[index] ?? 0));
}

function keptVarieties({ varieties, hasTraits }: VarietyMeansInput, named: NamedStrips): boolean[] {
  if (hasTraits === null) return named.treatments.map(() => true);
  sameLength("varieties", varieties, "mustHave", hasTraits);
  const without = new Set(varieties.filter((_, index) => hasTraits[index] === false));
  const keeps = named.treatments.map((name) => !without.has(name));
  if (!keeps.includes(true)) {
    refuseArgument("mustHave", "no variety has what you need; at least one row must say yes.");
  }
  return keeps;
}
