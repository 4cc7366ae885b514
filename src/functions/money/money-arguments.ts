import { moneyLimits } from "../../core/money/money-limits";
import { optional, quantity } from "../frame";

/** Arguments that several money functions share. */
export const price = quantity(moneyLimits.price, { says: "price of the crop" });
export const cost = quantity(moneyLimits.costPerAc, { says: "costs that do not change with the yield" });
export const costPerBushel = optional(
  quantity(moneyLimits.costPerBushel, { says: "hauling, drying and storing of each bushel" }),
  0,
  "0",
);
export const otherIncome = optional(
  quantity(moneyLimits.otherIncome, { says: "income besides the grain: payments, indemnity, straw" }),
  0,
  "0",
);
