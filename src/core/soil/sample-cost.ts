import { within } from "../limit";
import { wholeUp } from "../units/whole-up";
import { soilLimits } from "./soil-limits";

export interface SampleCostInput {
  readonly acres: number;
  readonly acresPerSample: number;
  readonly costUsdPerSample: number;
  readonly collectingUsdPerAc: number;
  /** Years until the field is sampled again. */
  readonly years: number;
}

export interface SampleCost {
  readonly costUsdPerAcYear: number;
  readonly samples: number;
  readonly samplesUsd: number;
  readonly collectingUsd: number;
  /** Paid each time the field is sampled. */
  readonly roundUsd: number;
  readonly roundUsdPerAc: number;
}

/**
 * Yearly cost of soil sampling on an acre.
 *
 *   (samples × $ a sample + acres × $ an acre) / acres / years
 *
 * where samples = acres / acres a sample stands for, rounded up: the rest of a field takes a whole sample.
 *
 * @source sampling-cost
 */
export function sampleCost(input: SampleCostInput): SampleCost {
  within("acres", input.acres, soilLimits.acresSampled);
  within("acresPerSample", input.acresPerSample, soilLimits.acresPerSample);
  within("costPerSample", input.costUsdPerSample, soilLimits.costPerSample);
  within("collecting", input.collectingUsdPerAc, soilLimits.collecting);
  within("years", input.years, soilLimits.yearsServed);

  const samples = Math.max(1, wholeUp(input.acres / input.acresPerSample));
  const samplesUsd = samples * input.costUsdPerSample;
  const collectingUsd = input.acres * input.collectingUsdPerAc;
  const roundUsd = samplesUsd + collectingUsd;
  const roundUsdPerAc = roundUsd / input.acres;
  return {
    costUsdPerAcYear: roundUsdPerAc / input.years,
    samples,
    samplesUsd,
    collectingUsd,
    roundUsd,
    roundUsdPerAc,
  };
}
