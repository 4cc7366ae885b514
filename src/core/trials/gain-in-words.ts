import { chanceInWords } from "../statistics/chance-in-words";
import { studentTCdf } from "../statistics/student-t";
import { trueMinus } from "../true-minus";

/** A gain as a trial measured it. */
export interface MeasuredGain {
  readonly gain: number;
  readonly standardError: number;
  readonly df: number;
  readonly low: number;
  readonly high: number;
}

export interface GainMoney {
  /** Above 0. */
  readonly priceUsdPerBu: number;
  readonly costUsdPerAc: number;
}

export interface GainPays {
  /** The gain that just pays the cost. */
  readonly paysFromBuPerAc: number;
  readonly netUsdPerAc: number;
  readonly netLowUsdPerAc: number;
  readonly netHighUsdPerAc: number;
  /** That it pays, 0 to 1. */
  readonly chance: number;
}

/**
 * What a measured gain is worth and the chance that it pays, given this trial alone: the t curve around the measured
 * gain, beyond the gain that pays the cost.
 */
export function gainPays(measured: MeasuredGain, { priceUsdPerBu, costUsdPerAc }: GainMoney): GainPays {
  const net = (gain: number) => priceUsdPerBu * gain - costUsdPerAc;
  const paysFromBuPerAc = costUsdPerAc / priceUsdPerBu;
  return {
    paysFromBuPerAc,
    netUsdPerAc: net(measured.gain),
    netLowUsdPerAc: net(measured.low),
    netHighUsdPerAc: net(measured.high),
    chance: studentTCdf((measured.gain - paysFromBuPerAc) / measured.standardError, measured.df),
  };
}

/** "The gain is 3.1 bu/ac, likely between 0.8 and 5.4; at $10.60/bu and a cost of $21/ac the chance that it pays is 83 %." */
export function gainInWords(what: string, measured: MeasuredGain, money: GainMoney | null): string {
  const range = `likely between ${tenth(measured.low)} and ${tenth(measured.high)}`;
  const gain = `${what} is ${tenth(measured.gain)} bu/ac, ${range}`;
  if (!money) return `${gain}${measured.low <= 0 && measured.high >= 0 ? "; it may be nothing" : ""}.`;
  const { chance } = gainPays(measured, money);
  const terms = `$${dollars(money.priceUsdPerBu)}/bu and a cost of $${dollars(money.costUsdPerAc)}/ac`;
  return `${gain}; at ${terms} the chance that it pays is ${chanceInWords(chance)}.`;
}

/** A gain to the tenth of a bushel. */
export function tenth(value: number): string {
  const shown = value.toFixed(1);
  return shown === "-0.0" ? "0.0" : trueMinus(shown);
}

function dollars(value: number): string {
  return Number.isInteger(value) ? String(value) : value.toFixed(2);
}
