import { explain } from "../../../src/functions/frame/explain";
import { runFunction } from "../../../src/functions/frame/run";
import { rowLength, standCount } from "../../../src/functions/seed/row-counts";
import { seedCost, seedUnits } from "../../../src/functions/seed/buying";
import { seedRate, seedSpacing } from "../../../src/functions/seed/planting";

const messageOf = (cells: readonly (readonly unknown[])[]) => (cells[0]?.[0] as { message?: string }).message;

describe("SEEDRATE on a sheet", () => {
  it("fills a column: 100,000 / 0.9 / 0.8 and 120,000 / 0.9 / 0.8", () => {
    const cells = runFunction(seedRate, [[[100_000], [120_000]], 90, 80]);
    expect(cells[0]?.[0]).toBeCloseTo(138_888.889, 2);
    expect(cells[1]?.[0]).toBeCloseTo(166_666.667, 2);
  });
  it("takes germination for the whole survival when field survival is left out: 100,000 / 0.8", () => {
    expect(runFunction(seedRate, [100_000, 80])).toEqual([[125_000]]);
    expect(runFunction(seedRate, [100_000, 80, ""])).toEqual([[125_000]]);
  });
  it("reads text numbers: 95 % and 32,000", () => {
    expect(runFunction(seedRate, ["32,000", "80%"])).toEqual([[40_000]]);
  });
  it("asks about a share typed for a percentage and a stand in thousands", () => {
    expect(runFunction(seedRate, [32_000, 0.95])).toEqual([
      [{ code: "#VALUE!", message: "germination is in percent: enter 95, not 0.95." }],
    ]);
    expect(runFunction(seedRate, [32, 95])).toEqual([
      [
        {
          code: "#VALUE!",
          message: "targetStand must be between 1,000 and 3,000,000 plants/ac; got 32. Did you mean 32000?",
        },
      ],
    ]);
  });
  it("waits for what is blank and passes an error on", () => {
    expect(runFunction(seedRate, [32_000, null])).toEqual([[{ code: "#N/A", message: "waiting for germination" }]]);
    expect(runFunction(seedRate, [{ code: "#DIV/0!" }, 90])).toEqual([[{ code: "#DIV/0!" }]]);
  });
  it("says in the working when fewer than half of the seeds stand", () => {
    const poor = explain(seedRate, [100_000, 60, 70]);
    const good = explain(seedRate, [100_000, 90, 80]);
    expect(JSON.stringify(poor)).toContain("fewer than half");
    expect(JSON.stringify(good)).not.toContain("fewer than half");
  });
});

describe("SEEDSPACING on a sheet", () => {
  it("makes a table of a column of rates and a row of widths", () => {
    const cells = runFunction(seedSpacing, [[[32_000], [36_000]], [[20, 30]]]);
    expect(cells.map((row) => row.length)).toEqual([2, 2]);
    expect(cells[0]?.[0]).toBeCloseTo(9.801, 10); // 6,272,640 / (32,000 × 20)
    expect(cells[1]?.[1]).toBeCloseTo(5.808, 10); // 6,272,640 / (36,000 × 30)
  });
  it("refuses ranges that do not match", () => {
    const widths = [[30], [30], [30]];
    expect(runFunction(seedSpacing, [[[32_000], [34_000]], widths])).toEqual([
      [{ code: "#VALUE!", message: expect.stringContaining("differ in size") }],
    ]);
  });
});

describe("SEEDUNITS and SEEDCOST on a sheet", () => {
  it("take the crop's trade unit by its name, or a number", () => {
    expect(runFunction(seedUnits, [140_000, 96, "soybeans"])).toEqual([[96]]);
    expect(runFunction(seedUnits, [140_000, 96, 130_000])).toEqual([[104]]); // 103.38
    expect(runFunction(seedUnits, [140_000, 96, "130,000"])).toEqual([[104]]);
    expect(runFunction(seedCost, [34_000, "$240", "corn"])).toEqual([[102]]);
  });
  it("ask for the unit instead of assuming a crop", () => {
    for (const fn of [seedUnits, seedCost]) {
      expect(runFunction(fn, [140_000, 96])).toEqual([
        [
          {
            code: "#N/A",
            message:
              "waiting for seedsPerUnit (seeds in one unit, or the crop: corn 80,000, soybean 140,000, sunflower 200,000)",
          },
        ],
      ]);
    }
  });
  it("say what to enter for a crop that is sold by weight", () => {
    expect(messageOf(runFunction(seedUnits, [1_200_000, 39, "wheat"]))).toContain("Enter the seeds in one unit");
    expect(messageOf(runFunction(seedUnits, [1_200_000, 39, "a bag"]))).toBe(
      'seedsPerUnit must be a number (seeds/unit); got "a bag".',
    );
  });
  it("cite the published unit, and only when one was used", () => {
    expect(explain(seedUnits, [32_000, 154, "corn"])).toMatchObject({ cites: [{ seedsPerUnit: 80_000 }] });
    expect(explain(seedUnits, [32_000, 154, 80_000])).toMatchObject({ cites: [] });
  });
  it("warn about treated seed", () => {
    for (const fn of [seedUnits, seedCost]) expect(fn.cautions?.join()).toMatch(/label/);
  });
});

describe("ROWLENGTH and STANDCOUNT on a sheet", () => {
  it("answer a column of row widths: 522.72 / 15, / 20 and / 30", () => {
    expect(runFunction(rowLength, [[[15], [20], [30]]])).toEqual([[34.848], [26.136], [17.424]]);
  });
  it("take another fraction of an acre and ask about one typed upside down", () => {
    expect(runFunction(rowLength, [30, 0.01])[0]?.[0]).toBeCloseTo(174.24, 10);
    expect(messageOf(runFunction(rowLength, [30, 1000]))).toContain("Did you mean 0.001?");
  });
  it("pass over blank counts and keep a counted zero: (30 + 0 + 33) / 3 = 21", () => {
    expect(runFunction(standCount, [[[30], [null], [0], [""], [33]], 30])).toEqual([[21_000]]);
  });
  it("use a measured length: 50 plants on 20 ft of two 15-in rows, 40 ft in all, are 43,560", () => {
    expect(runFunction(standCount, [[[50]], 15, 40])[0]?.[0]).toBeCloseTo(43_560, 8); // 50 × 34,848 / 40
  });
  it("wait until a count is in", () => {
    expect(runFunction(standCount, [[[null], [null]], 30])).toEqual([
      [{ code: "#N/A", message: "waiting for counts" }],
    ]);
  });
});
