import type { WorksheetFunction } from "../frame";
import { breakEvenPrice, breakEvenYield } from "./break-even";
import { cropBudget, farmNet, operatingInterest } from "./budget";
import { investmentReturn, investmentValue, neededGain, paybackYears, realRate, yearlyCost } from "./capital";
import { certainProfit } from "./certain-profit";
import { marginalReturn } from "./marginal-return";
import { breakEvenGain, partialBudget, returnPerDollar } from "./partial-budget";
import { planDominance } from "./plan-dominance";
import { profitGrid } from "./profit-grid";
import { flexRent, landCharge, shareRent } from "./rent";
import { revenueSpread } from "./revenue-spread";
import { profitOdds, profitRange } from "./risk";

/** Everything this family puts on the sheet, in the order of the documentation. */
export const moneyFunctions: readonly WorksheetFunction[] = [
  partialBudget,
  breakEvenGain,
  breakEvenPrice,
  breakEvenYield,
  returnPerDollar,
  profitGrid,
  operatingInterest,
  cropBudget,
  farmNet,
  marginalReturn,
  shareRent,
  flexRent,
  landCharge,
  yearlyCost,
  paybackYears,
  investmentValue,
  investmentReturn,
  neededGain,
  realRate,
  profitOdds,
  profitRange,
  revenueSpread,
  certainProfit,
  planDominance,
];
