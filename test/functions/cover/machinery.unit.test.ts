import { fieldCapacity, latenessCost } from "../../../src/functions/cover/field-work";
import { fuelUse, systemFuel } from "../../../src/functions/cover/fuel";
import { customRate, machineValue, repairCost } from "../../../src/functions/cover/machine-money";
import { passCost } from "../../../src/functions/cover/pass-cost";
import { powerNeed } from "../../../src/functions/cover/power-need";
import { tillageCompare } from "../../../src/functions/cover/tillage-compare";
import { explain } from "../../../src/functions/frame/explain";
import { runFunction } from "../../../src/functions/frame/run";

const messageOf = (cells: readonly (readonly unknown[])[]) => (cells[0]?.[0] as { message?: string }).message;

describe("FIELDCAPACITY, FUELUSE and POWERNEED on a sheet", () => {
  it("take a machine's name for its efficiency: 40 ft × 6 mph × 0.80 / 8.25 with a disk", () => {
    expect(runFunction(fieldCapacity, [40, 6, "disk"])[0]?.[0]).toBeCloseTo(23.2727, 4);
    expect(messageOf(runFunction(fieldCapacity, [40, 6, "wheelbarrow"]))).toContain("efficiency must be a number");
  });
  it("ask about a load or an efficiency typed as a share", () => {
    expect(messageOf(runFunction(fieldCapacity, [40, 6, 0.8]))).toBe("efficiency is in percent: enter 80, not 0.8.");
    expect(messageOf(runFunction(fuelUse, [180, 0.5]))).toBe("load is in percent: enter 50, not 0.5.");
  });
  it("tell what width is counted in and wait for the depth", () => {
    expect(JSON.stringify(explain(powerNeed, ["field cultivator, secondary", 60, 7, "loam", 3]))).toContain("tools");
    expect(messageOf(runFunction(powerNeed, ["tandem disk, primary", 20, 5, "clay"]))).toBe("waiting for depth");
    expect(runFunction(powerNeed, ["planter", 12, 5, "sand"])).toEqual([[32]]); // 12 × 200 × 5 / 375
  });
  it("lists the parts of a published system", () => {
    expect(JSON.stringify(explain(systemFuel, ["no till"]))).toContain("spray, 2 passes");
    expect(runFunction(systemFuel, ["no till"])[0]?.[0]).toBeCloseTo(0.6 + 0.52 + 0.23, 10);
  });
});

describe("MACHINEVALUE, REPAIRCOST and CUSTOMRATE on a sheet", () => {
  it("wait for hours where they count and take a blank where they do not", () => {
    expect(messageOf(runFunction(machineValue, ["combine", 5, null, 500_000]))).toBe("waiting for hoursPerYear");
    expect(runFunction(machineValue, ["planter", 4, "", 100_000])[0]?.[0]).toBeCloseTo(52_649.5, 1);
  });
  it("fill a column of ages", () => {
    const cells = runFunction(machineValue, ["baler", [[1], [4], [9]], null, 1000]);
    // (0.852 - 0.101 √n)²: 0.751², 0.650², 0.549²
    expect(cells.map(([cell]) => Number(cell).toFixed(3))).toEqual(["564.001", "422.500", "301.401"]);
  });
  it("say when the repair curve is stretched", () => {
    expect(JSON.stringify(explain(repairCost, ["planter", 200_000, 0, 1600]))).toContain("past its wear-out life");
  });
  it("take a survey typed as a number", () => {
    expect(runFunction(customRate, ["no-till plant", 2019])).toEqual([[22.9]]);
    expect(messageOf(runFunction(customRate, ["strip-till", "2019"]))).toContain("Leave survey blank for 2023.");
  });
});

describe("LATENESSCOST on a sheet", () => {
  it("takes small percentages as they stand: half a percent a day", () => {
    const call = [600, 190, 4.35, 0.5, 12, 10, 50, "middle"];
    expect(runFunction(latenessCost, call)[0]?.[0]).toBeCloseTo(6198.75, 6);
  });
});

describe("PASSCOST on a sheet", () => {
  const needed = ["planter", 30, 5, 150_000, 900, 150, 3.5, 22, "6%"];

  it("spills a header, seven parts and the total, which is their sum", () => {
    const cells = runFunction(passCost, needed);
    expect(cells.map(([part]) => part)).toEqual([
      "Part",
      "Implement ownership",
      "Implement repair",
      "Tractor ownership, not counted",
      "Tractor repair, not counted",
      "Fuel",
      "Oil",
      "Labor",
      "Total",
    ]);
    const sum = cells.slice(1, 8).reduce((total, [, usd]) => total + Number(usd), 0);
    expect(cells[8]?.[1]).toBeCloseTo(sum, 10);
  });
  it("counts the tractor when its price and hours are given, and waits for the hours", () => {
    const withTractor = [...needed, null, null, null, 180_000];
    expect(messageOf(runFunction(passCost, withTractor))).toBe("waiting for tractorHours");
    const cells = runFunction(passCost, [...withTractor, 400]);
    expect(cells[3]?.[0]).toBe("Tractor ownership");
    expect(Number(cells[3]?.[1])).toBeGreaterThan(0);
  });
  it("asks about interest typed in percent points", () => {
    expect(messageOf(runFunction(passCost, [...needed.slice(0, 8), 6]))).toContain("enter 6 % as 6% or 0.06");
  });
  it("refuses a tractor in front of a combine", () => {
    const combine = ["combine", 30, 3, 400_000, 1500, 350, 3.5, 25, 0.07, null, null, null, 180_000, 400];
    expect(messageOf(runFunction(passCost, combine))).toBe(
      "tractorPrice: a combine drives itself: leave tractorPrice blank.",
    );
  });
});

describe("TILLAGECOMPARE on a sheet", () => {
  const systems = [["chisel"], [""], ["no-till"]];
  const passes = [["moldboard plow"], ["planter, double disk openers"], ["no-till planter, smooth coulters"]];

  it("reads a blank system as the one above and marks thin cover: 90 × 0.05 × 0.90 = 4.05", () => {
    const cells = runFunction(tillageCompare, [systems, passes, 90, "corn"]);
    expect(cells).toHaveLength(3);
    expect(cells[1]?.slice(0, 2)).toEqual(["chisel", 2]);
    expect(cells[1]?.[5]).toBeCloseTo(4.05, 10);
    expect(cells[1]?.[9]).toBe("under 30 % cover");
    expect(cells[2]?.[9]).toBe("");
  });
  it("leaves the columns blank that were not given", () => {
    const cells = runFunction(tillageCompare, [systems, passes, 90, "corn"]);
    expect([2, 3, 4, 8].map((at) => cells[1]?.[at])).toEqual(["", "", "", ""]);
  });
  it("prices fuel and labor: 2.77 gal × $4 + 0.3 h × 1.1 × $20", () => {
    const call = [systems, passes, 90, "corn", [[2.25], [0.52], [0.52]], [[0.2], [0.1], [0.12]], null, 4, 20];
    expect(runFunction(tillageCompare, call)[1]?.[8]).toBeCloseTo(17.68, 10);
  });
  it("says in the note what is missing", () => {
    const call = [systems, passes, 90, "corn", [[2.25], [null], [null]], null, [[20], [15], [null]]];
    const cells = runFunction(tillageCompare, call);
    expect(cells[1]?.[9]).toBe("fuel of 1 pass is missing; under 30 % cover");
    expect(cells[2]?.[9]).toBe("fuel of 1 pass is missing; cost of 1 pass is missing");
  });
  it("waits for what a price needs, for the first system and for passes", () => {
    expect(messageOf(runFunction(tillageCompare, [systems, passes, 90, "corn", null, null, null, 4]))).toBe(
      "waiting for fuel",
    );
    expect(messageOf(runFunction(tillageCompare, [[[null]], [[50]], 90, "corn"]))).toBe("waiting for systems");
    expect(messageOf(runFunction(tillageCompare, [[["a"]], [[null]], 90, "corn"]))).toBe("waiting for passes");
  });
  it("refuses columns of another length", () => {
    expect(messageOf(runFunction(tillageCompare, [systems, passes, 90, "corn", [[1], [2]]]))).toBe(
      "fuel (2 rows) and passes (3 rows) differ in size: give ranges of the same size, or one cell.",
    );
  });
});
