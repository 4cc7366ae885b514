import { explain } from "../../../src/functions/frame/explain";
import { runFunction } from "../../../src/functions/frame/run";
import { plantBackDays } from "../../../src/functions/protection/plant-back";
import { weedFreePeriod, weedTable } from "../../../src/functions/protection/weed-tables";
import { weedBenefit, weedLoss, weedThreshold } from "../../../src/functions/protection/weeds";

const messageOf = (cells: readonly (readonly unknown[])[]) => (cells[0]?.[0] as { message?: string }).message;

describe("WEEDLOSS on a sheet", () => {
  it("takes a published curve by its name, with its ceiling", () => {
    expect(runFunction(weedLoss, [4, "volunteer soybean"])[0]?.[0]).toBeCloseTo(12.8 / (1 + 12.8 / 56), 12);
    expect(explain(weedLoss, [4, "volunteer soybean"])).toMatchObject({ cites: [{ source: "alms-2016" }] });
  });
  it("lets a typed ceiling go before the published one, and takes 100 for a typed slope without one", () => {
    expect(runFunction(weedLoss, [4, "volunteer soybean", 64])[0]?.[0]).toBeCloseTo(12.8 / 1.2, 12);
    expect(runFunction(weedLoss, [4, 25])).toEqual([[50]]); // 100 / (1 + 100 / 100)
  });
  it("asks for the slope and, with a delay, for how fast it weakens the weeds", () => {
    expect(messageOf(runFunction(weedLoss, [4]))).toBe("waiting for slope");
    expect(messageOf(runFunction(weedLoss, [4, 3, 60, 10]))).toContain("waiting for fade");
    expect(runFunction(weedLoss, [4, 3, 60, 10, 0.1])[0]?.[0]).toBeCloseTo(4.112, 3); // 12 × 0.36788 = 4.41455; / (1 + 4.41455 / 60)
  });
});

describe("WEEDBENEFIT and WEEDTHRESHOLD on a sheet", () => {
  it("agree on where it begins to pay", () => {
    const density = Number(runFunction(weedThreshold, [3.2, 200, 90, 4.5, 25, 56])[0]?.[0]);
    expect(runFunction(weedBenefit, [density, 3.2, 200, 90, 4.5, 25, 56])[0]?.[0]).toBeCloseTo(0, 9);
  });
  it("say when no density pays", () => {
    expect(runFunction(weedThreshold, [3.2, 20, 90, 4, 100, 56])).toMatchObject([[{ code: "#NUM!" }]]);
    expect(JSON.stringify(explain(weedBenefit, [2, 3.2, 20, 90, 4, 100, 56]))).toContain("no density of weeds");
  });
});

describe("the weed tables", () => {
  it("list reports of a crop, 56.2 % for waterhemp among them, and mark what is from memory", () => {
    const cells = runFunction(weedTable, ["soybean"]);
    expect(cells).toHaveLength(14);
    expect(cells.find(([, weed]) => weed === "waterhemp")?.slice(2, 7)).toEqual([8, 8, "per meter of row", 56.2, 56.2]);
    expect(cells.filter((row) => String(row.at(-1)).includes("Check against"))).toHaveLength(5);
  });
  it("list weed-free stages of a crop and say what is held for others", () => {
    expect(runFunction(weedFreePeriod, ["corn"])).toHaveLength(10);
    expect(runFunction(weedFreePeriod, [])).toHaveLength(14);
    expect(messageOf(runFunction(weedFreePeriod, ["wheat"]))).toContain("It holds: soybean, corn.");
  });
});

describe("PLANTBACKDAYS on a sheet", () => {
  it("takes dates as numbers and as text, and intervals in days or months", () => {
    expect(runFunction(plantBackDays, [46_500, 120, 46_600])).toEqual([[20]]);
    expect(runFunction(plantBackDays, ["5/15/2027", "18 months", "10/1/2028"])).toEqual([[45]]);
    expect(runFunction(plantBackDays, ["2027-05-15", "4 mo", "2027-09-15"])).toEqual([[0]]);
    expect(runFunction(plantBackDays, [46_500, "120 days", 46_600])).toEqual([[20]]);
  });
  it("fills a column of products", () => {
    expect(runFunction(plantBackDays, [46_500, [[30], ["4 months"], [null]], 46_600]).map(([cell]) => cell)).toEqual([
      -70,
      expect.any(Number),
      { code: "#N/A", message: "waiting for intervalDays" },
    ]);
  });
  it("says what it takes for what is no date or interval", () => {
    expect(messageOf(runFunction(plantBackDays, [2027, 30, 46_600]))).toBe(
      'applied: needs a date, such as 2026-04-28; got "2027".',
    );
    expect(messageOf(runFunction(plantBackDays, ["2/30/2027", 30, 46_600]))).toContain("needs a date");
    expect(messageOf(runFunction(plantBackDays, [46_500, "next year", 46_600]))).toContain("must be a number");
    expect(messageOf(runFunction(plantBackDays, [46_500, "4.5 months", 46_600]))).toContain("give the days");
  });
});
