import { flexRent as flexRentOf, type FlexRent } from "../../core/money/flex-rent";
import { landCharge as landChargeOf } from "../../core/money/land-charge";
import { moneyLimits } from "../../core/money/money-limits";
import { shareRent as shareRentOf } from "../../core/money/share-rent";
import { leaseForms, type LeaseFormKey } from "../../reference/money/lease-forms";
import {
  choice,
  line,
  list,
  optional,
  quantity,
  rate as rateOf,
  vocabulary,
  worksheetFunction,
  type WorkingLine,
} from "../frame";

const leaseFormWords = vocabulary<LeaseFormKey>("flexible lease", leaseForms);
const cropYield = quantity(moneyLimits.yield, { says: "yield harvested" });
const price = quantity(moneyLimits.price, { says: "price of the crop, as the lease names it" });
const notAdvice = "A planning aid, not legal advice: the written lease and the law of your state decide.";

export const shareRent = worksheetFunction({
  name: "SHARERENT",
  family: "money",
  summary: "What the owner of the land has from a crop-share lease, shared costs paid.",
  asks: ["crop share rent", "what does a 50-50 lease pay", "landlord's share"],
  args: {
    yield: cropYield,
    price,
    share: rateOf(moneyLimits.share, { says: "owner's share of the crop, 50% or 0.5" }),
    sharedCosts: optional(
      list(quantity(moneyLimits.costPerAc, { says: "costs" }), {
        says: "costs that owner and tenant split: a cell or a list",
        atLeast: 0,
      }),
      [],
      "none",
    ),
    costShare: optional(
      rateOf(moneyLimits.share, { says: "owner's share of those costs, 50% or 0.5" }),
      null,
      "the same as the share of the crop",
    ),
    otherIncome: optional(
      quantity(moneyLimits.otherIncome, { says: "income shared besides the grain: payments, indemnity, straw" }),
      0,
      "0",
    ),
  },
  returns: { shape: "one", unit: "$/ac", says: "owner's share of the crop less the owner's share of the costs" },
  sources: ["lease-definitions"],
  example: {
    call: [190, 4.5, 0.5, 240],
    gives: 307.5,
    because: "by hand: half of 190 × 4.50 = 855 is 427.50; less half of 240, 120",
  },
  cautions: [notAdvice],
  compute: (values) =>
    shareRentOf({
      yieldBuPerAc: values.yield,
      priceUsdPerBu: values.price,
      share: values.share,
      sharedCostsUsdPerAc: values.sharedCosts,
      costShare: values.costShare ?? values.share,
      otherIncomeUsdPerAc: values.otherIncome,
    }),
  value: (result) => result.rentUsdPerAc,
  working: (result) => [
    line("Gross", result.grossUsdPerAc, "$/ac"),
    line("Owner's share of it", result.ownerCropUsdPerAc, "$/ac"),
    line("Shared costs", result.sharedCostsUsdPerAc, "$/ac"),
    line("Owner's share of them", result.ownerCostsUsdPerAc, "$/ac"),
    line("Owner has", result.rentUsdPerAc, "$/ac"),
    line("Tenant has, before the tenant's own costs", result.tenantUsdPerAc, "$/ac"),
    line("Fair when", "each one's share of the crop is the share of all they put in, land and labor too"),
  ],
});

function optionalAmount(limit: Parameters<typeof quantity>[0], says: string, whenBlank: string) {
  return optional(quantity(limit, { says }), null, whenBlank);
}

export const flexRent = worksheetFunction({
  name: "FLEXRENT",
  family: "money",
  summary: "Cash rent that follows the crop: a share of gross, a base plus bonus, or indexed to price and yield.",
  asks: ["flexible cash rent", "base rent plus bonus", "rent as a share of gross", "rent that follows the price"],
  args: {
    method: choice(leaseFormWords, { says: "how the lease settles the rent" }),
    yield: cropYield,
    price,
    share: optional(
      rateOf(moneyLimits.share, { says: "share of the gross, or of the gross above the base; 33% or 0.33" }),
      null,
      "asked for by share of gross and by base plus bonus",
    ),
    baseRent: optionalAmount(moneyLimits.rent, "rent of a base year", "asked for by every other method"),
    baseYield: optionalAmount(moneyLimits.yield, "yield the base rent was set for", "asked for where it counts"),
    basePrice: optionalAmount(moneyLimits.price, "price the base rent was set for", "asked for where it counts"),
    baseGross: optionalAmount(moneyLimits.gross, "gross above which a bonus starts", "baseYield × basePrice"),
    leastRent: optionalAmount(moneyLimits.rent, "least rent of the lease", "no least"),
    mostRent: optionalAmount(moneyLimits.rent, "most rent of the lease", "no most"),
  },
  returns: { shape: "one", unit: "$/ac", says: "rent for the year" },
  sources: ["iowa-c2-21-2023"],
  example: {
    call: ["base plus bonus", 190, 4.5, 0.5, 220, null, null, 750],
    gives: 272.5,
    because: "by hand: gross 190 × 4.50 = 855; 220 + half of (855 − 750)",
  },
  cautions: [notAdvice],
  compute: (values) =>
    flexRentOf({
      method: values.method,
      yieldBuPerAc: values.yield,
      priceUsdPerBu: values.price,
      share: values.share,
      baseRentUsdPerAc: values.baseRent,
      baseYieldBuPerAc: values.baseYield,
      basePriceUsdPerBu: values.basePrice,
      baseGrossUsdPerAc: values.baseGross,
      leastRentUsdPerAc: values.leastRent,
      mostRentUsdPerAc: values.mostRent,
    }),
  value: (result) => result.rentUsdPerAc,
  working: (result) => [
    line("Gross", result.grossUsdPerAc, "$/ac"),
    ...(result.baseGrossUsdPerAc === null ? [] : [line("Bonus starts above", result.baseGrossUsdPerAc, "$/ac")]),
    line("Rent by the rule", result.byRuleUsdPerAc, "$/ac"),
    ...(result.heldBy === null ? [] : [line("Held by", `the ${result.heldBy} rent of the lease`)]),
    line("Rent", result.rentUsdPerAc, "$/ac"),
    ...(result.shareOfGross === null ? [] : [line("Rent, as a share of gross", result.shareOfGross * 100, "%")]),
    ...usualLine(result),
  ],
  cites: (result) => [result.form],
});

function usualLine({ form: { usual } }: FlexRent): readonly WorkingLine[] {
  if (usual === undefined) return [];
  return [line(`Usual: ${usual.where}`, `${Math.round(usual.from * 100)} to ${Math.round(usual.to * 100)}`, "%")];
}

export const landCharge = worksheetFunction({
  name: "LANDCHARGE",
  family: "money",
  summary: "Yearly charge for land you own, in place of a rent.",
  asks: ["cost of owned land", "opportunity cost of land", "charge for my own land"],
  args: {
    landValue: quantity(moneyLimits.landValue, { says: "what the land would sell for" }),
    cashReturn: rateOf(moneyLimits.rate, { says: "what land returns in cash a year, 3% or 0.03" }),
    propertyTax: optional(quantity(moneyLimits.rent, { says: "property tax a year" }), 0, "0"),
  },
  returns: { shape: "one", unit: "$/ac", says: "charge a year; or take the local cash rent, never both" },
  sources: ["enterprise-budget"],
  example: { call: [8000, 0.03, 35], gives: 275, because: "by hand: 8,000 × 0.03 = 240; and 35" },
  compute: (values) =>
    landChargeOf({
      landValueUsdPerAc: values.landValue,
      cashReturn: values.cashReturn,
      propertyTaxUsdPerAc: values.propertyTax,
    }),
  value: (result) => result.chargeUsdPerAc,
  working: (result, values) => [
    line("Return on the value", result.returnUsdPerAc, "$/ac"),
    line("Property tax", values.propertyTax, "$/ac"),
    line("Charge", result.chargeUsdPerAc, "$/ac"),
    line("Mind", "the local cash rent is the other way to charge owned land: never both"),
  ],
});
