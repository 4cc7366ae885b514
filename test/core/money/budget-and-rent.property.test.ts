import fc from "fast-check";
import { cropBudget } from "../../../src/core/money/crop-budget";
import { marginalReturn } from "../../../src/core/money/marginal-return";
import { operatingInterest } from "../../../src/core/money/operating-interest";
import { shareRent } from "../../../src/core/money/share-rent";

const usd = fc.integer({ min: 0, max: 100_000 }).map((cents) => cents / 100);
const share = fc.integer({ min: 0, max: 100 }).map((points) => points / 100);
const yieldBuPerAc = fc.integer({ min: 1, max: 3000 }).map((tenths) => tenths / 10);
const priceUsdPerBu = fc.integer({ min: 200, max: 2000 }).map((cents) => cents / 100);

describe("budgets and rents, as laws", () => {
  it("the half-season rule is six months", () => {
    fc.assert(
      fc.property(usd, share, (costUsdPerAc, rate) => {
        const half = operatingInterest({ costUsdPerAc, rate, months: "halfSeason" }).interestUsdPerAc;
        expect(half).toBe(operatingInterest({ costUsdPerAc, rate, months: 6 }).interestUsdPerAc);
        expect(half).toBeCloseTo((costUsdPerAc / 2) * rate, 9);
      }),
    );
  });
  it("owner, tenant and shared costs make up the whole gross", () => {
    fc.assert(
      fc.property(yieldBuPerAc, priceUsdPerBu, share, share, usd, (bushels, price, crop, cost, shared) => {
        const rent = shareRent({
          yieldBuPerAc: bushels,
          priceUsdPerBu: price,
          share: crop,
          sharedCostsUsdPerAc: [shared],
          costShare: cost,
          otherIncomeUsdPerAc: 0,
        });
        expect(rent.rentUsdPerAc + rent.tenantUsdPerAc + shared).toBeCloseTo(bushels * price, 7);
      }),
    );
  });
  it("a budget nets nothing at its long-run break-even price, and its margin is nothing at the short-run one", () => {
    fc.assert(
      fc.property(yieldBuPerAc, priceUsdPerBu, usd, usd, usd, (bushels, price, variable, fixed, land) => {
        const crop = {
          yieldBuPerAc: bushels,
          variableCostsUsdPerAc: [variable],
          fixedCostsUsdPerAc: [fixed],
          landUsdPerAc: land,
          otherIncomeUsdPerAc: 0,
          costUsdPerBu: 0.25,
        };
        const { shortRun, longRun } = cropBudget({ ...crop, priceUsdPerBu: price });
        const at = (found: number | null) => cropBudget({ ...crop, priceUsdPerBu: found ?? 0 });
        fc.pre((longRun.priceUsdPerBu ?? 0) <= 10_000);
        expect(at(longRun.priceUsdPerBu).netUsdPerAc).toBeCloseTo(0, 6);
        expect(at(shortRun.priceUsdPerBu).marginUsdPerAc).toBeCloseTo(0, 6);
      }),
    );
  });
  it("the choice leaves most after added money has had its least return, and is never dominated", () => {
    const options = fc.array(fc.tuple(usd, usd), { minLength: 1, maxLength: 8 });
    fc.assert(
      fc.property(options, share, (rows, leastReturn) => {
        const costsUsdPerAc = rows.map(([cost]) => cost);
        const benefitsUsdPerAc = rows.map(([, benefit]) => benefit);
        const { chosen } = marginalReturn({ costsUsdPerAc, benefitsUsdPerAc, leastReturn });
        const left = (cost: number, benefit: number) => benefit - leastReturn * cost;
        const most = Math.max(...rows.map(([cost, benefit]) => left(cost, benefit)));
        expect(chosen?.isDominated).toBe(false);
        expect(left(chosen?.costUsdPerAc ?? 0, chosen?.benefitUsdPerAc ?? 0)).toBeCloseTo(most, 7);
      }),
    );
  });
});
