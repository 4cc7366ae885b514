import { cropBudget, operatingInterest } from "../../../src/functions/money/budget";
import { explain } from "../../../src/functions/frame/explain";
import { runFunction } from "../../../src/functions/frame/run";
import { marginalReturn } from "../../../src/functions/money/marginal-return";
import { flexRent, shareRent } from "../../../src/functions/money/rent";

const messageOf = (cells: readonly (readonly unknown[])[]) => (cells[0]?.[0] as { message?: string }).message;
const only = (cells: readonly (readonly unknown[])[]) => Number(cells[0]?.[0]);

describe("OPERATINGINTEREST on a sheet", () => {
  it("takes months or the half-season rule, row by row: 600 × 0.08 × 3 / 12 = 12, 600 / 2 × 0.08 = 24", () => {
    expect(runFunction(operatingInterest, [600, "8%", [[3], ["half season"]]])).toEqual([[12], [24]]);
  });
  it("asks about a rate typed in percent points", () => {
    expect(messageOf(runFunction(operatingInterest, [600, 8, 6]))).toBe("rate is a rate: enter 8 % as 8% or 0.08.");
  });
});

describe("rents on a sheet", () => {
  it("split costs as the crop unless said otherwise: half of 800 less half of 100", () => {
    expect(only(runFunction(shareRent, [200, 4, 0.5, [[60], [40]]]))).toBe(350);
    expect(only(runFunction(shareRent, [200, 4, 0.5, [[60], [40]], 0]))).toBe(400);
  });
  it("name the lease forms when a word is not known", () => {
    expect(messageOf(runFunction(flexRent, ["profit", 190, 4.5]))).toBe(
      'method "profit" is not known here. Use: share of gross, base plus bonus, price and yield, price only, yield only.',
    );
  });
  it("wait for the share", () => {
    expect(messageOf(runFunction(flexRent, ["share of gross", 190, 4.5]))).toBe("waiting for share");
  });
  it("say what is usual and carry the mark of what is from memory", () => {
    const shown = explain(flexRent, ["share of gross", 190, 4.5, 0.33]);
    expect(JSON.stringify(shown)).toContain("25 to 40");
    const indexed = explain(flexRent, ["price only", 190, 4.5, null, 220, null, 4]);
    expect(indexed).toMatchObject({ cites: [{ mark: "M" }] });
  });
});

describe("CROPBUDGET on a sheet", () => {
  it("says in words where there is no break-even", () => {
    const rows = runFunction(cropBudget, [0, 0, [[300]]]);
    expect(rows.find(([label]) => label === "Break-even price, all costs")?.[1]).toBe("none: no yield");
    expect(rows.find(([label]) => label === "Break-even yield, all costs")?.[1]).toBe("none: a bushel brings nothing");
  });
  it("says whether it is worth growing this year and whether it pays for everything", () => {
    const shown = JSON.stringify(explain(cropBudget, [100, 5, 300, 400]));
    expect(shown).toContain("yes: it covers its variable costs");
    expect(shown).toContain('{"label":"Pays for everything","value":"no"');
  });
});

describe("MARGINALRETURN on a sheet", () => {
  it("calls the options by their names and passes a blank row over", () => {
    const rows = runFunction(marginalReturn, [
      [[40], [null], [0]],
      [[470], [null], [420]],
      "60%",
      [["both"], [null], ["none"]],
    ]);
    expect(rows.slice(1).map(([name, , , , verdict]) => [name, verdict])).toEqual([
      ["none", ""],
      ["both", "choose"],
    ]);
  });
  it("waits for a benefit that is still missing", () => {
    expect(
      messageOf(
        runFunction(marginalReturn, [
          [[0], [15]],
          [[420], [null]],
        ]),
      ),
    ).toBe("waiting for benefits");
  });
});
