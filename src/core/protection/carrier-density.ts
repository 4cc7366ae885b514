import { within } from "../limit";
import { chartWater, solutionDensity, type SolutionKey, type SolutionRow } from "../../reference/protection/solutions";
import { sprayLimits } from "./spray-limits";

/** A carrier's weight: typed, or that of a published solution. */
export type CarrierWeight = { readonly lbPerGal: number } | { readonly solution: SolutionKey };

export interface CarrierDensity {
  readonly waterGalPerAc: number;
  readonly lbPerGal: number;
  readonly specificGravity: number;
  readonly factor: number;
  /** The published row, when a solution was named. */
  readonly published?: SolutionRow;
}

/**
 * Water rate to look up in a nozzle chart for a rate of a heavier or lighter carrier.
 *
 *   rate × √(lb/gal / 8.34)
 *
 * @source unl-solutions-2016
 */
export function carrierDensity({
  rateGalPerAc,
  weight,
}: {
  readonly rateGalPerAc: number;
  readonly weight: CarrierWeight;
}): CarrierDensity {
  within("rate", rateGalPerAc, sprayLimits.volume);
  const published = "solution" in weight ? rowOf(weight.solution) : undefined;
  const lbPerGal = "lbPerGal" in weight ? weight.lbPerGal : (published?.lbPerGal ?? Number.NaN);
  within("poundsPerGallon", lbPerGal, sprayLimits.weight);

  const specificGravity = lbPerGal / chartWater.lbPerGal;
  const factor = Math.sqrt(specificGravity);
  const result = { waterGalPerAc: rateGalPerAc * factor, lbPerGal, specificGravity, factor };
  return published ? { ...result, published } : result;
}

function rowOf(solution: SolutionKey): SolutionRow | undefined {
  return solutionDensity.rows.find((row) => row.solution === solution);
}
