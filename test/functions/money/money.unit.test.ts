import { explain } from "../../../src/functions/frame/explain";
import { runFunction } from "../../../src/functions/frame/run";
import { breakEvenGain, partialBudget, returnPerDollar } from "../../../src/functions/money/partial-budget";
import { breakEvenPrice, breakEvenYield } from "../../../src/functions/money/break-even";
import { profitGrid } from "../../../src/functions/money/profit-grid";

const messageOf = (cells: readonly (readonly unknown[])[]) => (cells[0]?.[0] as { message?: string }).message;

describe("PARTIALBUDGET on a sheet", () => {
  it("sums lists and single cells, text amounts with a dollar sign too: 85.50 - 34 = 51.50", () => {
    expect(runFunction(partialBudget, [[["$79.50"], [null]], 6, [[26], ["8"]], null])).toEqual([[51.5]]);
  });
  it("takes what is blank for nothing, but waits while everything is blank", () => {
    expect(runFunction(partialBudget, [100])).toEqual([[100]]);
    expect(runFunction(partialBudget, [null, [[null]], undefined, 40])).toEqual([[-40]]);
    expect(runFunction(partialBudget, [[[null], [""]], null, null, null])).toEqual([
      [{ code: "#N/A", message: "waiting for addedReturns" }],
    ]);
  });
  it("asks about a minus sign", () => {
    expect(messageOf(runFunction(partialBudget, [100, null, -24]))).toBe(
      "addedCosts must be $0 or more; got −24. Did you mean 24?",
    );
  });
  it("passes an error in a list on", () => {
    expect(runFunction(partialBudget, [[[100], [{ code: "#REF!" }]]])).toEqual([[{ code: "#REF!" }]]);
  });
  it("shows the sums and the return per dollar: (100 + 20 - 10) / 50 = 2.2", () => {
    const shown = explain(partialBudget, [[[60], [40]], 20, 50, 10]);
    expect(shown).toMatchObject({
      working: expect.arrayContaining([
        { label: "For the change", value: 120, unit: "$" },
        { label: "Against the change", value: 60, unit: "$" },
        { label: "Net change", value: 60, unit: "$" },
        { label: "Returned per dollar of added cost", value: 2.2, unit: "$" },
      ]),
    });
    expect(JSON.stringify(explain(partialBudget, [100]))).toContain("nothing is spent");
  });
});

describe("break-evens on a sheet", () => {
  it("fill a column of practices: 24 / 4, 10 / 4, 14 / 4", () => {
    expect(runFunction(breakEvenGain, [[[24], [10], [14]], 4])).toEqual([[6], [2.5], [3.5]]);
  });
  it("keep half-filled rows quiet beside good ones", () => {
    const cells = runFunction(breakEvenGain, [[[24], [null]], 4]);
    expect(cells).toEqual([[6], [{ code: "#N/A", message: "waiting for cost" }]]);
  });
  it("say why there is none when hauling eats the price", () => {
    expect(messageOf(runFunction(breakEvenGain, [24, 0.5, 0.6]))).toBe(
      "price: must be above costPerBushel (0.6 $/bu), or a bushel brings nothing; got 0.5.",
    );
    expect(messageOf(runFunction(breakEvenYield, [700, 0]))).toBe("price: is 0: no yield pays for the cost.");
    expect(messageOf(runFunction(breakEvenPrice, [700, 0]))).toBe("yield: is 0: no price pays for the cost.");
  });
  it("take other income and hauling: (700 + 0.2 × 200 - 40) / 200 = 3.50; (700 - 40) / (4.2 - 0.2) = 165", () => {
    expect(runFunction(breakEvenPrice, [700, 200, 40, 0.2])[0]?.[0]).toBeCloseTo(3.5, 12);
    expect(runFunction(breakEvenYield, [700, 4.2, 40, 0.2])[0]?.[0]).toBeCloseTo(165, 10);
  });
  it("read a price with a dollar sign", () => {
    expect(runFunction(breakEvenYield, ["$870", "$4.35"])[0]?.[0]).toBeCloseTo(200, 10);
  });
});

describe("RETURNPERDOLLAR on a sheet", () => {
  it("works row by row: 36 / 24 and 30 / 40", () => {
    expect(
      runFunction(returnPerDollar, [
        [[36], [30]],
        [[24], [40]],
      ]),
    ).toEqual([[1.5], [0.75]]);
    expect(JSON.stringify(explain(returnPerDollar, [30, 40]))).toContain("does not pay");
  });
  it("has no answer where nothing is spent", () => {
    expect(messageOf(runFunction(returnPerDollar, [36, 0]))).toMatch(/^addedCosts: is 0/);
  });
});

describe("PROFITGRID on a sheet", () => {
  const down = [[150], [180]];
  const across = [[4, 4.5, 5]];
  const yieldsDown = [
    [-100, -25, 50],
    [20, 110, 200],
  ];
  const yieldsAcross = [
    [-100, 20],
    [-25, 110],
    [50, 200],
  ];
  it("fills the body beside yields down and prices across", () => {
    expect(runFunction(profitGrid, [down, across, 700])).toEqual(yieldsDown);
  });
  it("turns when the yields run across and the prices down", () => {
    expect(runFunction(profitGrid, [[[150, 180]], [[4], [4.5], [5]], 700])).toEqual(yieldsAcross);
  });
  it("puts yields down when the headings do not tell", () => {
    expect(runFunction(profitGrid, [[[150, 180]], across, 700])).toEqual(yieldsDown);
    expect(runFunction(profitGrid, [down, [[4], [4.5], [5]], 700])).toEqual(yieldsDown);
    expect(runFunction(profitGrid, [150, 5, 700])).toEqual([[50]]);
  });
  it("follows the one heading that tells: one yield with prices down is a column", () => {
    expect(runFunction(profitGrid, [150, [[4], [5]], 700])).toEqual([[-100], [50]]);
    expect(runFunction(profitGrid, [[[150, 180]], 5, 700])).toEqual([[50, 200]]);
    expect(runFunction(profitGrid, [150, across, 700])).toEqual([[-100, -25, 50]]);
  });
  it("keeps its place beside a blank heading", () => {
    expect(runFunction(profitGrid, [[[150], [null], [180]], [[4, 5]], 700])).toEqual([
      [-100, 50],
      ["", ""],
      [20, 200],
    ]);
  });
  it("waits while a heading or the cost is blank", () => {
    expect(messageOf(runFunction(profitGrid, [[[null], [null]], across, 700]))).toBe("waiting for yields");
    expect(messageOf(runFunction(profitGrid, [down, null, 700]))).toBe("waiting for prices");
    expect(messageOf(runFunction(profitGrid, [down, across, null]))).toBe("waiting for cost");
  });
  it("takes one cost, not a column of them", () => {
    expect(messageOf(runFunction(profitGrid, [down, across, [[700], [710]]]))).toBe(
      "cost takes one cell; got a range of 2 × 1.",
    );
  });
});
