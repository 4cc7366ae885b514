import {
  investmentReturn,
  investmentValue,
  neededGain,
  paybackYears,
  realRate,
  yearlyCost,
} from "../../../src/functions/money/capital";
import { explain } from "../../../src/functions/frame/explain";
import { runFunction } from "../../../src/functions/frame/run";

const messageOf = (cells: readonly (readonly unknown[])[]) => (cells[0]?.[0] as { message?: string }).message;
const only = (cells: readonly (readonly unknown[])[]) => Number(cells[0]?.[0]);

describe("YEARLYCOST on a sheet", () => {
  it("takes 8% as text and 0.08 as a number, and fills a column of years: 1,000 × 1.08 for one", () => {
    const cells = runFunction(yearlyCost, [1000, [[1], [50]], "8%"]);
    expect(only(cells)).toBeCloseTo(1080, 9);
    expect(cells).toEqual(runFunction(yearlyCost, [1000, [[1], [50]], 0.08]));
  });
  it("asks about a rate typed in percent points", () => {
    expect(messageOf(runFunction(yearlyCost, [1000, 50, 8]))).toBe("rate is a rate: enter 8 % as 8% or 0.08.");
  });
  it("says the accepted years", () => {
    expect(messageOf(runFunction(yearlyCost, [1000, 0, 0.08]))).toBe("years must be between 1 and 100 years; got 0.");
  });
  it("asks to look again at interest that is out of the usual", () => {
    expect(JSON.stringify(explain(yearlyCost, [1000, 5, 0.5]))).toContain("Look again");
    expect(JSON.stringify(explain(yearlyCost, [1000, 5, 0.08]))).not.toContain("Look again");
  });
});

describe("PAYBACKYEARS on a sheet", () => {
  it("leaves interest out until a rate is given", () => {
    expect(only(runFunction(paybackYears, [1000, 250]))).toBe(4);
    expect(only(runFunction(paybackYears, [1000, 250, "8%"]))).toBeGreaterThan(4);
    expect(JSON.stringify(explain(paybackYears, [1000, 250]))).toContain("give a rate to count it");
  });
  it("says why it never comes", () => {
    expect(messageOf(runFunction(paybackYears, [1000, 54, 0.06]))).toBe(
      "yearlyGain: interest alone is 60 $/yr, so this never pays it back; got 54.",
    );
  });
});

describe("investments on a sheet", () => {
  it("write the price off over the years it lasts when nothing else is said: 900 / 2 a year", () => {
    const said = runFunction(investmentValue, [900, 500, 2, 0.05, 0, 0.2, 2]);
    expect(runFunction(investmentValue, [900, 500, 2, 0.05, 0, 0.2])).toEqual(said);
  });
  it("say the tax spared and what is left unwritten", () => {
    const shown = JSON.stringify(explain(investmentReturn, [900, 500, 2, 0, 0.2, 3]));
    expect(shown).toContain("Tax spared, the first 2 years");
    expect(shown).toContain("Not yet written off at the end");
    expect(JSON.stringify(explain(investmentReturn, [900, 500, 2]))).not.toContain("Tax spared");
  });
  it("say the verdict: 54 a year on 1,000 at 6 % does not earn the rate, 110 does", () => {
    expect(JSON.stringify(explain(investmentValue, [1000, 54, 30, 0.06]))).toContain("earns no more than the rate");
    expect(JSON.stringify(explain(investmentValue, [1000, 110, 30, 0.06]))).toContain("earns more than the rate");
  });
  it("take whole years only", () => {
    expect(messageOf(runFunction(neededGain, [1000, 7.5, 0.06]))).toBe(
      "years: must be whole years, for money that comes once a year; got 7.5.",
    );
  });
  it("say when no gain is needed", () => {
    expect(JSON.stringify(explain(neededGain, [1000, 5, 0, 2000]))).toContain("no gain is needed");
  });
  it("take inflation off a rate: 1.0815 / 1.03 - 1", () => {
    expect(only(runFunction(realRate, ["8.15%", "3%"]))).toBeCloseTo(0.05, 12);
  });
});
