import { cropBudget } from "../../../src/core/money/crop-budget";
import { flexRent, type FlexRentInput } from "../../../src/core/money/flex-rent";
import { marginalReturn } from "../../../src/core/money/marginal-return";
import { operatingInterest } from "../../../src/core/money/operating-interest";
import { shareRent } from "../../../src/core/money/share-rent";

const noExtras = { landUsdPerAc: 0, otherIncomeUsdPerAc: 0, costUsdPerBu: 0 };

describe("Extension corn budget, northern Alabama: 150 bu at $6.00, printed line by line", () => {
  const operating = [70, 68.4, 29.4, 29.4, 8, 10.98, 20, 7, 37.5, 37.5, 20, 13.5, 27];
  const half = () => operatingInterest({ costUsdPerAc: 378.68, rate: 0.07, months: "halfSeason" });

  it("lines without interest add up to 378.68", () => {
    expect(operating.reduce((sum, cost) => sum + cost, 0)).toBeCloseTo(378.68, 10);
  });
  it("interest on half of it, 189.34 at 7 %, is printed as 13.25", () => {
    expect(half().interestUsdPerAc).toBeCloseTo(13.25, 2);
  });
  it("variable 391.93, all 458.28, margin 508.07, net 441.72, $3.0552 and 76.38 bu", () => {
    const budget = cropBudget({
      yieldBuPerAc: 150,
      priceUsdPerBu: 6,
      variableCostsUsdPerAc: [...operating, 13.25],
      fixedCostsUsdPerAc: [35, 31.35],
      ...noExtras,
    });
    expect(budget.variableUsdPerAc).toBeCloseTo(391.93, 8);
    expect(budget.totalUsdPerAc).toBeCloseTo(458.28, 8);
    expect(budget.marginUsdPerAc).toBeCloseTo(508.07, 8);
    expect(budget.netUsdPerAc).toBeCloseTo(441.72, 8);
    expect(budget.longRun.priceUsdPerBu).toBeCloseTo(3.0552, 8);
    expect(budget.longRun.yieldBuPerAc).toBeCloseTo(76.38, 8);
  });
});

describe("Extension soybean budget, northern Alabama", () => {
  it("interest on half of 297.85, 148.93 at 7 %, is printed as 10.42", () => {
    const costUsdPerAc = 62.5 + 29.4 + 29.4 + 11.55 + 124.5 + 13.5 + 27;
    expect(costUsdPerAc).toBeCloseTo(297.85, 10);
    const { interestUsdPerAc } = operatingInterest({ costUsdPerAc, rate: 0.07, months: "halfSeason" });
    expect(interestUsdPerAc).toBeCloseTo(10.42, 2);
  });
});

describe("Extension wheat budget, central Texas 2016: 45 bu at $5.10", () => {
  const budget = () =>
    cropBudget({
      yieldBuPerAc: 45,
      priceUsdPerBu: 5.1,
      variableCostsUsdPerAc: [25, 13.5, 76.8, 32.5, 2.4, 15, 4.5, 7, 2, 31.5, 1.5, 8.6, 14.97, 9.11, 11.91, 7.04],
      fixedCostsUsdPerAc: [9.41, 14.18, 4.4, 3.78],
      ...noExtras,
      landUsdPerAc: 30,
    });
  it("variable 263.33, all 325.10, above variable -33.83, net -95.60, break-evens $5.85 and $7.22, all printed", () => {
    expect(budget().variableUsdPerAc).toBeCloseTo(263.33, 8);
    expect(budget().totalUsdPerAc).toBeCloseTo(325.1, 8);
    expect(budget().marginUsdPerAc).toBeCloseTo(-33.83, 8);
    expect(budget().netUsdPerAc).toBeCloseTo(-95.6, 8);
    expect(budget().shortRun.priceUsdPerBu).toBeCloseTo(5.85, 2);
    expect(budget().longRun.priceUsdPerBu).toBeCloseTo(7.22, 2);
  });
  it("before rent 229.50 - 263.33 - 31.77 = -65.60 is left for the land", () => {
    expect(budget().returnToLandUsdPerAc).toBeCloseTo(-65.6, 8);
  });
});

describe("operating interest by months in use", () => {
  it("380 at 8 % for 7 months: 380 × 0.08 × 7 / 12 = 17.7333", () => {
    const { interestUsdPerAc } = operatingInterest({ costUsdPerAc: 380, rate: 0.08, months: 7 });
    expect(interestUsdPerAc).toBeCloseTo(17.7333, 4);
  });
});

describe("rents at 190 bu and $4.50, a gross of 855", () => {
  const lease: Omit<FlexRentInput, "method"> = {
    yieldBuPerAc: 190,
    priceUsdPerBu: 4.5,
    share: null,
    baseRentUsdPerAc: null,
    baseYieldBuPerAc: null,
    basePriceUsdPerBu: null,
    baseGrossUsdPerAc: null,
    leastRentUsdPerAc: null,
    mostRentUsdPerAc: null,
  };
  it("33 % of gross: 282.15", () => {
    expect(flexRent({ ...lease, method: "shareOfGross", share: 0.33 }).rentUsdPerAc).toBeCloseTo(282.15, 10);
  });
  it("220 and half of what is above 750: 220 + 52.50 = 272.50", () => {
    const terms = { ...lease, method: "basePlusBonus", share: 0.5, baseRentUsdPerAc: 220 } as const;
    expect(flexRent({ ...terms, baseGrossUsdPerAc: 750 }).rentUsdPerAc).toBeCloseTo(272.5, 10);
    const typed = flexRent({ ...terms, baseYieldBuPerAc: 187.5, basePriceUsdPerBu: 4 });
    expect(typed.rentUsdPerAc).toBeCloseTo(272.5, 10);
  });
  it("half of the crop less half of 240: 427.50 - 120 = 307.50", () => {
    const rent = shareRent({
      yieldBuPerAc: 190,
      priceUsdPerBu: 4.5,
      share: 0.5,
      sharedCostsUsdPerAc: [240],
      costShare: 0.5,
      otherIncomeUsdPerAc: 0,
    });
    expect(rent.rentUsdPerAc).toBeCloseTo(307.5, 10);
    expect(rent.tenantUsdPerAc).toBeCloseTo(307.5, 10);
  });
});

describe("marginal returns by the method of CIMMYT: costs 0, 15, 22, 40 and net benefits 420, 452, 449, 470", () => {
  it("third is dominated; 32 / 15 = 2.1333 and 18 / 25 = 0.72", () => {
    const { options } = marginalReturn({
      costsUsdPerAc: [0, 15, 22, 40],
      benefitsUsdPerAc: [420, 452, 449, 470],
      leastReturn: null,
    });
    expect(options.map(({ isDominated }) => isDominated)).toEqual([false, false, true, false]);
    expect(options[1]?.marginalReturn).toBeCloseTo(2.1333, 4);
    expect(options[3]?.marginalReturn).toBeCloseTo(0.72, 10);
  });
});
