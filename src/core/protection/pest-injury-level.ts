import { refuse } from "../fault";
import { within } from "../limit";
import { pctToFraction } from "../units/units";
import { pestLimits } from "./pest-limits";

export interface PestInjuryInput {
  readonly costUsdPerAc: number;
  readonly priceUsdPerBu: number;
  /** Bushels an acre lost to one pest per plant, per foot of row, or however it is counted. */
  readonly lossBuPerAcEach: number;
  /** Share of that loss which the treatment prevents. */
  readonly controlPct: number;
}

export interface PestInjuryLevel {
  /** Pests, counted the way the loss is. */
  readonly injuryLevel: number;
  readonly lossUsdPerAcEach: number;
  readonly savedUsdPerAcEach: number;
}

/**
 * Number of pests whose preventable loss equals the cost of control.
 *
 *   cost / (price × loss for one pest × control)      control as a share
 *
 * The textbook C / (V × I × D × K): I × D is the loss for one pest in bushels.
 *
 * @source pedigo-injury-level
 */
export function pestInjuryLevel(input: PestInjuryInput): PestInjuryLevel {
  within("cost", input.costUsdPerAc, pestLimits.cost);
  within("price", input.priceUsdPerBu, pestLimits.price);
  within("lossPerPest", input.lossBuPerAcEach, pestLimits.lossPerPest);
  within("control", input.controlPct, pestLimits.control);

  const lossUsdPerAcEach = input.priceUsdPerBu * input.lossBuPerAcEach;
  const savedUsdPerAcEach = lossUsdPerAcEach * pctToFraction(input.controlPct);
  const injuryLevel = input.costUsdPerAc / savedUsdPerAcEach;
  if (!Number.isFinite(injuryLevel)) {
    refuse({ kind: "noSolution", because: "A pest that costs nothing never pays for control: price or loss is 0." });
  }
  return { injuryLevel, lossUsdPerAcEach, savedUsdPerAcEach };
}
