import { within } from "../limit";
import { soilDepth } from "../../reference/cover/erosion";
import { coverLimits } from "./cover-limits";

export interface SoilLossInput {
  /** R, rain and runoff. */
  readonly rain: number;
  /** K of the soil. */
  readonly erodibility: number;
  /** LS. */
  readonly slopeFactor: number;
  /** C: loss against bare tilled ground. */
  readonly coverFactor: number;
  /** P: loss against rows up and down the slope. */
  readonly practiceFactor: number;
}

export interface SoilLoss {
  readonly lossTonPerAc: number;
  readonly bareTonPerAc: number;
  readonly depthIn: number;
  /** Years until an inch is gone; null when nothing is lost. */
  readonly yearsPerInch: number | null;
}

/**
 * Average soil loss by sheet and rill erosion.
 *
 *   R × K × LS × C × P
 *
 * @source usda-ah537-1978, missouri-g1650
 */
export function soilLoss({ rain, erodibility, slopeFactor, coverFactor, practiceFactor }: SoilLossInput): SoilLoss {
  within("rain", rain, coverLimits.rain);
  within("erodibility", erodibility, coverLimits.erodibility);
  within("slopeFactor", slopeFactor, coverLimits.slopeFactor);
  within("cover", coverFactor, coverLimits.coverFactor);
  within("practice", practiceFactor, coverLimits.practiceFactor);
  const bareTonPerAc = rain * erodibility * slopeFactor;
  const lossTonPerAc = bareTonPerAc * coverFactor * practiceFactor;
  const depthIn = (lossTonPerAc * soilDepth.depthIn) / soilDepth.tonPerAc;
  return { lossTonPerAc, bareTonPerAc, depthIn, yearsPerInch: depthIn > 1e-9 ? 1 / depthIn : null };
}

export interface SoilLossRatio {
  readonly ratio: number;
  /** What has to be cut to come down to the tolerance, % of the loss. */
  readonly cutPct: number;
}

/**
 * Soil loss against what the soil is held to stand.
 *
 * @source nrcs-soil-handbook
 */
export function soilLossRatio(lossTonPerAc: number, toleranceTonPerAc: number): SoilLossRatio {
  within("loss", lossTonPerAc, coverLimits.soilLoss);
  within("tolerance", toleranceTonPerAc, coverLimits.tolerance);
  const ratio = lossTonPerAc / toleranceTonPerAc;
  return { ratio, cutPct: ratio > 1 ? 100 * (1 - 1 / ratio) : 0 };
}
