import { refuseArgument } from "../fault";
import { within } from "../limit";
import { fluidOuncePerGallon, literPerGallon, pctToFraction, pintPerGallon, quartPerGallon } from "../units/units";
import { sum } from "../statistics/sums";
import { sprayLimits } from "./spray-limits";
import { tankLoads, type TankLoads, type TankLoadsInput } from "./tank-loads";

/** How a label states an amount; each with the unit it is measured out in. */
export const mixUnits = {
  flOzPerAc: { label: "fl oz/ac", also: ["fl oz", "fluid ounces per acre"], out: "fl oz", perGal: fluidOuncePerGallon },
  ptPerAc: { label: "pt/ac", also: ["pt", "pint", "pints per acre"], out: "pt", perGal: pintPerGallon },
  qtPerAc: { label: "qt/ac", also: ["qt", "quart", "quarts per acre"], out: "qt", perGal: quartPerGallon },
  galPerAc: { label: "gal/ac", also: ["gal", "gallons per acre"], out: "gal", perGal: 1 },
  mlPerAc: { label: "mL/ac", also: ["mL"], out: "mL", perGal: literPerGallon * 1000 },
  lPerAc: { label: "L/ac", also: ["L", "liters per acre"], out: "L", perGal: literPerGallon },
  dryOzPerAc: { label: "dry oz/ac", also: ["dry oz", "oz by weight", "oz wt/ac"], out: "oz", perGal: null },
  lbPerAc: { label: "lb/ac", also: ["lb", "pounds per acre"], out: "lb", perGal: null },
  gPerAc: { label: "g/ac", also: ["g", "grams per acre"], out: "g", perGal: null },
  pctByVolume: { label: "% v/v", also: ["percent by volume", "v/v", "percent"], out: "gal", perGal: 1 },
  lbPer100Gal: { label: "lb/100 gal", also: ["pounds per 100 gallons"], out: "lb", perGal: null },
} as const;

export type MixUnitKey = keyof typeof mixUnits;

export interface MixPart {
  /** As the person calls it. */
  readonly name: string;
  readonly amount: number;
  readonly unit: MixUnitKey;
}

export interface MixAmount {
  readonly name: string;
  readonly unit: string;
  readonly inFullLoad: number;
  readonly inLastLoad: number;
  readonly inField: number;
}

export interface TankPlan {
  readonly loads: TankLoads;
  readonly parts: readonly MixAmount[];
  /** Water that fills up what the liquids leave; dry products are taken to add no volume. */
  readonly water: MixAmount;
}

/**
 * What goes into each full load and into the last one.
 *
 *   per-acre rates × acres sprayed; percent by volume and lb/100 gal × gallons of spray; water = spray - liquids
 *
 * @source tank-arithmetic
 */
export function tankPlan(input: TankLoadsInput & { readonly mix: readonly MixPart[] }): TankPlan {
  const loads = tankLoads(input);
  for (const { amount, unit } of input.mix) {
    within("mix", amount, unit === "pctByVolume" ? sprayLimits.adjuvant : sprayLimits.rate);
  }
  const parts = input.mix.map((part) => amountsOf(part, input, loads));
  const liquidShare = sum(input.mix.map((part) => liquidGalPerAc(part, input.volumeGalPerAc))) / input.volumeGalPerAc;
  if (liquidShare > 1) {
    refuseArgument(
      "mix",
      `the liquids alone come to ${(liquidShare * input.volumeGalPerAc).toFixed(1)} gal/ac, more than the ${input.volumeGalPerAc} gal/ac sprayed.`,
    );
  }
  const share = 1 - liquidShare;
  const water = {
    name: "water",
    unit: "gal",
    inFullLoad: loads.fullLoads > 0 ? share * input.tankGal : 0,
    inLastLoad: share * loads.lastGal,
    inField: share * loads.totalGal,
  };
  return { loads, parts, water };
}

function amountsOf(part: MixPart, { acres, volumeGalPerAc }: TankLoadsInput, loads: TankLoads): MixAmount {
  const perAc = amountPerAc(part, volumeGalPerAc);
  return {
    name: part.name,
    unit: mixUnits[part.unit].out,
    inFullLoad: loads.fullLoads > 0 ? perAc * loads.acresPerLoad : 0,
    inLastLoad: perAc * loads.lastAcres,
    inField: perAc * acres,
  };
}

/** In the unit it is measured out in. */
function amountPerAc({ amount, unit }: MixPart, volumeGalPerAc: number): number {
  if (unit === "pctByVolume") return pctToFraction(amount) * volumeGalPerAc;
  if (unit === "lbPer100Gal") return (amount / 100) * volumeGalPerAc;
  return amount;
}

function liquidGalPerAc(part: MixPart, volumeGalPerAc: number): number {
  const { perGal } = mixUnits[part.unit];
  return perGal === null ? 0 : amountPerAc(part, volumeGalPerAc) / perGal;
}
