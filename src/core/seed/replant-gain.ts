import { refuseArgument } from "../fault";
import { within } from "../limit";
import { pctToFraction } from "../units/units";
import { seedLimits } from "./seed-limits";
import { standYield, type StandYield, type StandYieldInput } from "./stand-yield";

export interface ReplantInput extends Pick<StandYieldInput, "crop" | "guide" | "rowWidthIn"> {
  readonly keep: Pick<StandYieldInput, "plantedOn" | "standPerAc" | "uneven" | "hybrid">;
  readonly replant: Pick<StandYieldInput, "plantedOn" | "standPerAc" | "hybrid">;
  /** A full stand planted in good time. */
  readonly fullYieldBu: number;
  readonly priceUsdPerBu: number;
  /** Terminating, planting, seed net of help, added sprays. */
  readonly costUsdPerAc: number;
  /** Of a good second stand, 0 to 1. */
  readonly chance: number;
  readonly failYieldBu: number;
  /** What the second stand yields of what the table gives. */
  readonly secondStandPct: number;
  readonly costUsdPerBu: number;
  readonly addedDryingUsdPerBu: number;
  readonly paymentUsdPerAc: number;
}

export interface ReplantGain {
  readonly gainUsdPerAc: number;
  readonly keep: StandYield;
  readonly replant: StandYield;
  readonly keepYieldBu: number;
  readonly goodYieldBu: number;
  readonly expectedYieldBu: number;
  readonly netPriceUsdPerBu: number;
  /** Chance of a good second stand that breaks even, not held within 0 and 1; null: no chance does. */
  readonly breakEvenChance: number | null;
}

/**
 * What replanting gains over keeping the stand.
 *
 *   gain = (expected − kept yield) × net price − added drying × expected yield − cost + payment
 *   expected = chance × good second stand + (1 − chance) × failed one
 *
 * @source replant-economics
 */
export function replantGain(input: ReplantInput): ReplantGain {
  check(input);
  const { fullYieldBu, failYieldBu, chance, addedDryingUsdPerBu, costUsdPerAc, paymentUsdPerAc } = input;
  const { keep, replant } = bothStands(input);
  const keepYieldBu = (fullYieldBu * keep.yieldPct) / 100;
  const goodYieldBu = ((fullYieldBu * replant.yieldPct) / 100) * pctToFraction(input.secondStandPct);
  const expectedYieldBu = chance * goodYieldBu + (1 - chance) * failYieldBu;
  const netPriceUsdPerBu = input.priceUsdPerBu - input.costUsdPerBu;
  return {
    gainUsdPerAc:
      (expectedYieldBu - keepYieldBu) * netPriceUsdPerBu -
      addedDryingUsdPerBu * expectedYieldBu -
      costUsdPerAc +
      paymentUsdPerAc,
    keep,
    replant,
    keepYieldBu,
    goodYieldBu,
    expectedYieldBu,
    netPriceUsdPerBu,
    breakEvenChance: breakEvenChance(input, keepYieldBu, goodYieldBu, netPriceUsdPerBu),
  };
}

function bothStands({ crop, guide, rowWidthIn, keep, replant }: ReplantInput) {
  const shared = { crop, guide, rowWidthIn };
  return {
    keep: standYield({ ...shared, ...keep }, { date: "keepDate", stand: "keepStand" }),
    replant: standYield(
      { ...shared, ...replant, uneven: { lossPct: 0 } },
      { date: "replantDate", stand: "replantStand" },
    ),
  };
}

/** The expected yield that breaks even, read back as a chance between the failed and the good stand. */
function breakEvenChance(
  input: ReplantInput,
  keepYieldBu: number,
  goodYieldBu: number,
  netPrice: number,
): number | null {
  const worth = netPrice - input.addedDryingUsdPerBu;
  const spread = goodYieldBu - input.failYieldBu;
  if (worth <= 0 || spread <= 0) return null;
  const neededBu = (keepYieldBu * netPrice + input.costUsdPerAc - input.paymentUsdPerAc) / worth;
  return (neededBu - input.failYieldBu) / spread;
}

function check(input: ReplantInput): void {
  within("yield", input.fullYieldBu, seedLimits.fullYield);
  within("price", input.priceUsdPerBu, seedLimits.grainPrice);
  within("cost", input.costUsdPerAc, seedLimits.costPerAc);
  within("chance", input.chance, seedLimits.chance);
  within("failYield", input.failYieldBu, seedLimits.yield);
  within("secondStand", input.secondStandPct, seedLimits.survival);
  within("costPerBushel", input.costUsdPerBu, seedLimits.perBushel);
  within("addedDrying", input.addedDryingUsdPerBu, seedLimits.perBushel);
  within("payment", input.paymentUsdPerAc, seedLimits.costPerAc);
  const { plantedOn: kept } = input.keep;
  const { plantedOn: second } = input.replant;
  if (kept !== null && second !== null && second < kept) {
    refuseArgument("replantDate", "must not be before keepDate.");
  }
}
