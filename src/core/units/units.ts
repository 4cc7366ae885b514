/**
 * Conversion factors: exact definitions first, then what follows from them, written as arithmetic. The foot is the
 * international one (the US survey foot was retired at the end of 2022; it differs by 2 parts in a million).
 *
 * Endings used in names: Ac, Bu, Ft, Gal, In, Kg, Lb, L, M, Mi, Oz, Pct (0 to 100), Fraction (0 to 1), Usd, and
 * compounds such as BuPerAc or UsdPerBu.
 *
 * @source nist-sp-811-2008
 */

// Exact by definition.
export const meterPerFoot = 0.3048;
export const kilogramPerPound = 0.453_592_37;
const cubicInchPerGallon = 231;
/** The Winchester bushel: a volume. The trade bushel is a weight and differs by crop. */
export const cubicInchPerVolumeBushel = 2150.42;
export const standardGravity = 9.806_65;
export const joulePerBtu = 1055.055_852_62;

// Whole-number relations of the trade.
export const inchPerFoot = 12;
export const footPerMile = 5280;
export const squareFootPerAcre = 43_560;
export const ouncePerPound = 16;
export const poundPerHundredweight = 100;
export const poundPerTon = 2000;
export const poundPerLongTon = 2240;
export const fluidOuncePerGallon = 128;
export const pintPerGallon = 8;
export const quartPerGallon = 4;
export const secondPerMinute = 60;
const minutePerHour = 60;
export const hourPerDay = 24;

// Derived.
export const meterPerInch = meterPerFoot / inchPerFoot;
export const secondPerHour = secondPerMinute * minutePerHour;
export const gramPerPound = kilogramPerPound * 1000;
export const squareMeterPerAcre = squareFootPerAcre * meterPerFoot ** 2;
export const squareMeterPerHectare = 10_000;
export const acrePerHectare = squareMeterPerHectare / squareMeterPerAcre;
export const cubicMeterPerGallon = cubicInchPerGallon * meterPerInch ** 3;
export const literPerGallon = cubicMeterPerGallon * 1000;
export const cubicFootPerVolumeBushel = cubicInchPerVolumeBushel / inchPerFoot ** 3;
/** Feet of row that make an acre, times the row width in inches: 43,560 × 12. */
export const rowFootInchPerAcre = squareFootPerAcre * inchPerFoot;
/** Feet per minute at one mile per hour: 88. */
export const footPerMinuteAtOneMph = footPerMile / minutePerHour;

export function pctToFraction(pct: number): number {
  return pct / 100;
}
