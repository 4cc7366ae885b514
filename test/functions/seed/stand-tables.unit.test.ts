import { citedBy } from "../../../src/functions/cited-by";
import { explain } from "../../../src/functions/frame/explain";
import { runFunction } from "../../../src/functions/frame/run";
import { stageLeaves } from "../../../src/functions/seed/corn-stage";
import { heatUnits } from "../../../src/functions/seed/heat-units";
import { replantChance, replantGain } from "../../../src/functions/seed/replant";
import { standYield } from "../../../src/functions/seed/stand-yield";

const messageOf = (cells: readonly (readonly unknown[])[]) => (cells[0]?.[0] as { message?: string }).message;
/** April 28, 2026. */
const april28 = 46_140;

describe("dates on a sheet", () => {
  it.each([april28, "46140", "2026-04-28", "4/28/2026", " 2026-4-28 "])("%s is April 28", (date) => {
    expect(runFunction(standYield, ["corn", date, 24_000, "Iowa"])).toEqual([[94]]);
  });
  it.each([118, "2026-04-31", "13/1/2026", "someday", true])("%s is none", (date) => {
    expect(messageOf(runFunction(standYield, ["corn", date, 24_000, "Iowa"]))).toBe(
      `plantingDate: needs a date, such as 2026-04-28; got "${String(date)}".`,
    );
  });
});

describe("STANDYIELD on a sheet", () => {
  it("fills a table of stands and dates", () => {
    const cells = runFunction(standYield, ["corn", [[april28, "2026-05-28"]], [[24_000], [30_000]], "Iowa 2001"]);
    expect(cells).toEqual([
      [94, 85],
      [100, 90],
    ]);
  });
  it("takes the state of a guide's table by crop", () => {
    expect(runFunction(standYield, ["corn", "2026-04-25", 20_000, "IL"])).toEqual([[92]]);
    expect(runFunction(standYield, ["soybeans", "2026-05-01", 100_000, "IL"])[0]?.[0]).toBeCloseTo(99, 3);
    expect(runFunction(standYield, ["wheat", null, 1_000_000, "Penn State"])).toEqual([[100]]);
  });
  it("says what a number from memory wants", () => {
    const memory = JSON.stringify(explain(standYield, ["corn", april28, 20_000, "Iowa field guide"]));
    expect(memory).toContain("Check against the current bulletin.");
    expect(JSON.stringify(explain(standYield, ["corn", april28, 20_000, "Iowa 2001"]))).not.toContain("Check against");
  });
  it("cites every row of a guide that is asked for, of all when none is", () => {
    expect(citedBy(standYield, "Iowa 2001")).toHaveLength(5);
    expect(citedBy(standYield, "WI")).toHaveLength(6);
    // 5 + 8 + 14 + 6 corn rows, 2 + 5 + 5 steps, 4 dates twice, 1 curve, 3 kinds of unevenness; the dates are one set.
    expect(citedBy(standYield, null).length).toBeGreaterThanOrEqual(49);
    expect(citedBy(standYield, "TX")).toEqual([]);
  });
});

describe("REPLANTGAIN and REPLANTCHANCE on a sheet", () => {
  const call = ["corn", "2026-04-28", 24_000, "2026-05-28", 30_000, 180, 4, 50, "Iowa 2001"] as const;
  it("a stand worth keeping never breaks even", () => {
    expect(runFunction(replantChance, [...call, 0, 90])).toEqual([["never"]]);
  });
  it("a payment above the cost and the loss pays in any case", () => {
    const paid = [...call.slice(0, 7), 0, "Iowa 2001", 0, 100, 0, 0, 0, 2000];
    expect(runFunction(replantChance, paid)).toEqual([[0]]);
  });
  it("names its own arguments when a table ends", () => {
    const late = ["corn", "2026-04-28", 24_000, "2026-07-04", 30_000, 180, 4, 50, "Iowa 2001"];
    expect(messageOf(runFunction(replantGain, late))).toBe(
      "not available: Iowa 2001 publishes no yield for replantDate Jul 4. Its last day is Jun 28.",
    );
  });
  it("speaks of the insurer and the herbicide label", () => {
    for (const fn of [replantGain, replantChance]) {
      expect(fn.cautions?.join(" ")).toMatch(/insurer/);
      expect(fn.cautions?.join(" ")).toMatch(/label/);
    }
  });
});

describe("HEATUNITS and STAGELEAVES on a sheet", () => {
  it("take one day in two cells", () => {
    expect(runFunction(heatUnits, [80, 60])).toEqual([[20]]);
  });
  it("fill a column of stages in words", () => {
    expect(runFunction(stageLeaves, [[[50], [115], [197], [935]]])).toEqual([["not emerged"], ["VE"], ["V1"], ["V10"]]);
  });
});
