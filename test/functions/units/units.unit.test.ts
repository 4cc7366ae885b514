import { explain } from "../../../src/functions/frame/explain";
import { runFunction } from "../../../src/functions/frame/run";
import { bushelWeight, unitConvert } from "../../../src/functions/units/convert";

const messageOf = (cells: readonly (readonly unknown[])[]) => (cells[0]?.[0] as { message?: string }).message;

describe("UNITCONVERT on a sheet", () => {
  it("fills a column with crops beside it: 200 × 56 / 2000 and 60 × 60 / 2000 tons", () => {
    const cells = runFunction(unitConvert, [[[200], [60]], "bu/ac", "ton/ac", [["corn"], ["beans"]]]);
    expect(cells[0]?.[0]).toBeCloseTo(5.6, 12);
    expect(cells[1]?.[0]).toBeCloseTo(1.8, 12);
  });
  it("reads text numbers and forgiving words", () => {
    expect(runFunction(unitConvert, ["$7.50", "dollars per cwt", "$ / bushel", "Corn"])[0]?.[0]).toBeCloseTo(
      4.2, // 7.50 × 56 / 100
      12,
    );
    expect(runFunction(unitConvert, ["1,000", "Acres", "sq ft"])).toEqual([[43_560_000]]);
  });
  it("waits for the crop only where a bushel needs it", () => {
    expect(messageOf(runFunction(unitConvert, [200, "bu/ac", "t/ha"]))).toBe(
      "waiting for crop: a bushel is a weight that differs by crop",
    );
    expect(runFunction(unitConvert, [2, "ton", "lb", null])).toEqual([[4000]]);
  });
  it("names both sides of units that do not go together", () => {
    expect(messageOf(runFunction(unitConvert, [1, "lb/ac", "gal/ac"]))).toBe(
      "to: gal/ac is volume per area but lb/ac is weight per area, and one does not become the other.",
    );
  });
  it("offers the nearest units for one it does not know", () => {
    expect(messageOf(runFunction(unitConvert, [1, "bushells", "lb", "corn"]))).toMatch(
      /^from "bushells" is not known here\. Nearest: .*bu/,
    );
    expect(messageOf(runFunction(unitConvert, [1, "T", "lb"]))).toMatch(/Nearest: .*ton/);
  });
  it("waits for a blank value and a blank unit, which an old sheet hands over as 0", () => {
    expect(messageOf(runFunction(unitConvert, [null, "lb", "kg"]))).toBe("waiting for value");
    expect(messageOf(runFunction(unitConvert, [1, 0, "kg"]))).toBe("waiting for from");
  });
  it("keeps a shortage negative: -31 lb/ac is -34.75 kg/ha", () => {
    expect(runFunction(unitConvert, [-31, "lb/ac", "kg/ha"])[0]?.[0]).toBeCloseTo(-34.746, 3); // × 1.120851
  });
  it("shows the factor and the bushel behind the answer, with its source", () => {
    expect(explain(unitConvert, [100, "bu", "kg", "oats"])).toMatchObject({
      working: [
        { label: "Given", value: 100, unit: "bu" },
        { label: "Bushel of oat", value: 32, unit: "lb/bu" },
        { label: "1 bu is", value: 14.514_955_84, unit: "kg" }, // 32 × 0.45359237
        { label: "Converted", value: 1451.495_584, unit: "kg" },
      ],
      cites: [{ source: "mn-statutes-239.32" }],
    });
  });
});

describe("BUSHELWEIGHT on a sheet", () => {
  it("answers a column, one bad row at a time", () => {
    const cells = runFunction(bushelWeight, [[["Corn"], ["ear corn"], ["milo"], ["sunflowers"], [null]]]);
    expect(cells.slice(0, 3)).toEqual([[56], [70], [56]]);
    expect(cells[3]?.[0]).toMatchObject({ code: "#N/A", message: expect.stringContaining("hundredweight") });
    expect(cells[4]?.[0]).toEqual({ code: "#N/A", message: "waiting for crop" });
  });
  it("tells that other lists print another weight", () => {
    expect(JSON.stringify(explain(bushelWeight, ["buckwheat"]))).toContain("print 50");
  });
});
