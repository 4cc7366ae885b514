import { within } from "../limit";
import {
  rusleSlope,
  slopeMethods,
  unitPlot,
  usleLengthExponents,
  usualSlopeLength,
  type SlopeMethodKey,
} from "../../reference/cover/erosion";
import type { Cited } from "../../reference/table";
import { coverLimits } from "./cover-limits";

export interface Slope {
  readonly lengthFt: number;
  readonly steepnessPct: number;
}

export interface SlopeParts {
  readonly factor: number;
  readonly lengthFactor: number;
  readonly steepnessFactor: number;
  readonly exponent: number;
}

export interface SlopeFactor extends SlopeParts {
  readonly method: SlopeMethodKey;
  /** The same slope by the other published equation. */
  readonly other: { readonly method: SlopeMethodKey; readonly factor: number };
  /** Longer than the lengths the equations are commonly used on. */
  readonly isLong: boolean;
  readonly cited: readonly Cited[];
}

/**
 * Soil loss on a slope against that on 9 % and 72.6 ft, everything else alike.
 *
 * @source usda-ah537-1978, usda-ah703-1997
 */
export function slopeFactor(slope: Slope, method: SlopeMethodKey): SlopeFactor {
  within("length", slope.lengthFt, coverLimits.slopeLength);
  within("steepness", slope.steepnessPct, coverLimits.steepness);
  const by = { usle: usleSlope(slope), rusle: rusleSlopeOf(slope) };
  const otherMethod = method === "usle" ? "rusle" : "usle";
  return {
    ...by[method],
    method,
    other: { method: otherMethod, factor: by[otherMethod].factor },
    isLong: slope.lengthFt > usualSlopeLength.ft,
    cited: [slopeMethods[method], unitPlot],
  };
}

/** (length / 72.6)^m × (65.41 sin² + 4.56 sin + 0.065), m by steepness (AH-537). */
function usleSlope({ lengthFt, steepnessPct }: Slope): SlopeParts {
  const exponent = usleLengthExponents.rows.find(({ belowPct }) => steepnessPct < belowPct)?.exponent ?? Number.NaN;
  const sine = sineOf(steepnessPct);
  const { square, linear, constant } = usleLengthExponents.steepness;
  return partsOf(lengthFt, exponent, square * sine ** 2 + linear * sine + constant);
}

/** m = β / (1 + β), β = (sin / 0.0896) / (3 sin^0.8 + 0.56); steepness in two straight lines, short slopes apart (AH-703). */
function rusleSlopeOf({ lengthFt, steepnessPct }: Slope): SlopeParts {
  const sine = sineOf(steepnessPct);
  const ratio = rusleSlope.rillRatio;
  const short = ratio.factor * sine ** ratio.power + ratio.constant;
  const rill = sine / ratio.sine / short;
  const { belowPct } = rusleSlope.gentle;
  const line = steepnessPct < belowPct ? rusleSlope.gentle : rusleSlope.steep;
  const steepness = lengthFt < rusleSlope.shortFt ? short : line.factor * sine + line.constant;
  return partsOf(lengthFt, rill / (1 + rill), steepness);
}

function partsOf(lengthFt: number, exponent: number, steepnessFactor: number): SlopeParts {
  const lengthFactor = (lengthFt / unitPlot.lengthFt) ** exponent;
  return { factor: lengthFactor * steepnessFactor, lengthFactor, steepnessFactor, exponent };
}

/** Sine of the angle of a slope given as rise over run, %. */
function sineOf(steepnessPct: number): number {
  const rise = steepnessPct / 100;
  return rise / Math.hypot(1, rise);
}
