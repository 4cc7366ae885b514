import { within } from "../limit";
import { capitalLimits } from "./capital-limits";
import { presentValueFactor } from "./capital-recovery";
import type { Investment } from "./investment-flows";
import { investmentValue } from "./net-present-value";

export interface NeededGainInput extends Omit<Investment, "yearlyGainUsd"> {
  /** Fraction a year; after tax when a tax rate is given. */
  readonly rate: number;
  /** Repairs and other costs that come every year with it. */
  readonly upkeepUsdPerYr: number;
}

export interface NeededGain {
  readonly gainUsdPerYr: number;
  /** What the price alone asks for. */
  readonly forPriceUsdPerYr: number;
  /** Salvage and tax spared, as worth today. */
  readonly spareTodayUsd: number;
  /** Salvage and tax spared pay for it: no gain is needed. */
  readonly isCovered: boolean;
}

/**
 * Gain a year that pays an investment back with interest.
 *
 *   (price - worth today of salvage and of tax spared) / ((1 - tax rate) × present value factor) + upkeep
 *
 * @source time-value-of-money
 */
export function neededGain({ rate, upkeepUsdPerYr, ...investment }: NeededGainInput): NeededGain {
  within("upkeep", upkeepUsdPerYr, capitalLimits.upkeep);
  const { valueUsd } = investmentValue({ ...investment, yearlyGainUsd: 0 }, rate);
  const factor = (1 - investment.taxRate) * presentValueFactor(rate, investment.years);

  const forPriceUsdPerYr = -valueUsd / factor;
  const gainUsdPerYr = Math.max(0, forPriceUsdPerYr + upkeepUsdPerYr);
  return {
    gainUsdPerYr,
    forPriceUsdPerYr,
    spareTodayUsd: valueUsd + investment.investmentUsd,
    isCovered: forPriceUsdPerYr + upkeepUsdPerYr <= 0,
  };
}
