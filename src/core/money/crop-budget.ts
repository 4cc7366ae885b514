import { within } from "../limit";
import { sum } from "../statistics/sums";
import { breakEvenPrice } from "./break-even-price";
import { breakEvenYield } from "./break-even-yield";
import { moneyLimits } from "./money-limits";

/** One crop on one acre. */
export interface CropBudgetInput {
  readonly yieldBuPerAc: number;
  readonly priceUsdPerBu: number;
  /** Operating costs that do not depend on the yield: a list of entries. */
  readonly variableCostsUsdPerAc: readonly number[];
  /** Ownership, overhead, own labor: a list of entries, land left out. */
  readonly fixedCostsUsdPerAc: readonly number[];
  readonly landUsdPerAc: number;
  readonly otherIncomeUsdPerAc: number;
  readonly costUsdPerBu: number;
}

export interface BreakEven {
  /** null without a yield. */
  readonly priceUsdPerBu: number | null;
  /** null when a bushel brings no more than it costs to haul and dry. */
  readonly yieldBuPerAc: number | null;
}

export interface CropBudget {
  readonly grossUsdPerAc: number;
  readonly variableUsdPerAc: number;
  readonly fixedUsdPerAc: number;
  readonly totalUsdPerAc: number;
  /** Left after variable costs: to be earned to be worth growing this year. */
  readonly marginUsdPerAc: number;
  /** Left to pay the land. */
  readonly returnToLandUsdPerAc: number;
  readonly netUsdPerAc: number;
  /** null without a yield. */
  readonly costUsdPerBu: number | null;
  readonly shortRun: BreakEven;
  readonly longRun: BreakEven;
}

/**
 * Roll-up of an enterprise budget.
 *
 *   margin = gross - variable;  return to land = margin - fixed;  net = return to land - land
 *
 * Break-evens against variable costs say whether to grow it this year, against all costs whether it lasts.
 *
 * @source enterprise-budget
 */
export function cropBudget(input: CropBudgetInput): CropBudget {
  check(input);
  const { yieldBuPerAc, landUsdPerAc } = input;
  const standingUsdPerAc = sum(input.variableCostsUsdPerAc);
  const fixedUsdPerAc = sum(input.fixedCostsUsdPerAc);
  const grossUsdPerAc = yieldBuPerAc * input.priceUsdPerBu + input.otherIncomeUsdPerAc;
  const variableUsdPerAc = standingUsdPerAc + input.costUsdPerBu * yieldBuPerAc;
  const totalUsdPerAc = variableUsdPerAc + fixedUsdPerAc + landUsdPerAc;
  return {
    grossUsdPerAc,
    variableUsdPerAc,
    fixedUsdPerAc,
    totalUsdPerAc,
    marginUsdPerAc: grossUsdPerAc - variableUsdPerAc,
    returnToLandUsdPerAc: grossUsdPerAc - variableUsdPerAc - fixedUsdPerAc,
    netUsdPerAc: grossUsdPerAc - totalUsdPerAc,
    costUsdPerBu: yieldBuPerAc > 0 ? totalUsdPerAc / yieldBuPerAc : null,
    shortRun: breakEvenOf(standingUsdPerAc, input),
    longRun: breakEvenOf(standingUsdPerAc + fixedUsdPerAc + landUsdPerAc, input),
  };
}

function breakEvenOf(costUsdPerAc: number, input: CropBudgetInput): BreakEven {
  const { yieldBuPerAc, priceUsdPerBu, otherIncomeUsdPerAc, costUsdPerBu } = input;
  const rest = { costUsdPerAc, otherIncomeUsdPerAc, costUsdPerBu };
  return {
    priceUsdPerBu: yieldBuPerAc > 0 ? breakEvenPrice({ yieldBuPerAc, ...rest }).priceUsdPerBu : null,
    yieldBuPerAc: priceUsdPerBu > costUsdPerBu ? breakEvenYield({ priceUsdPerBu, ...rest }).yieldBuPerAc : null,
  };
}

function check(input: CropBudgetInput): void {
  within("yield", input.yieldBuPerAc, moneyLimits.yield);
  within("price", input.priceUsdPerBu, moneyLimits.price);
  for (const cost of input.variableCostsUsdPerAc) within("variableCosts", cost, moneyLimits.costPerAc);
  for (const cost of input.fixedCostsUsdPerAc) within("fixedCosts", cost, moneyLimits.costPerAc);
  within("land", input.landUsdPerAc, moneyLimits.rent);
  within("otherIncome", input.otherIncomeUsdPerAc, moneyLimits.otherIncome);
  within("costPerBushel", input.costUsdPerBu, moneyLimits.costPerBushel);
}
