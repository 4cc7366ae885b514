import { within } from "../limit";
import { moneyLimits } from "./money-limits";

export interface LandChargeInput {
  readonly landValueUsdPerAc: number;
  /** What land returns in cash, a fraction of its value a year. */
  readonly cashReturn: number;
  readonly propertyTaxUsdPerAc: number;
}

export interface LandCharge {
  readonly chargeUsdPerAc: number;
  readonly returnUsdPerAc: number;
}

/**
 * Yearly charge for land that is owned, in place of a rent.
 *
 *   land value × cash return + property tax
 *
 * @source enterprise-budget
 */
export function landCharge({ landValueUsdPerAc, cashReturn, propertyTaxUsdPerAc }: LandChargeInput): LandCharge {
  within("landValue", landValueUsdPerAc, moneyLimits.landValue);
  within("cashReturn", cashReturn, moneyLimits.rate);
  within("propertyTax", propertyTaxUsdPerAc, moneyLimits.rent);
  const returnUsdPerAc = landValueUsdPerAc * cashReturn;
  return { chargeUsdPerAc: returnUsdPerAc + propertyTaxUsdPerAc, returnUsdPerAc };
}
