import { nozzleFlowAt, sprayFlow, sprayPressure, sprayVolume } from "../../../src/functions/protection/nozzles";
import { sprayBand, sprayDensity } from "../../../src/functions/protection/carrier";
import { productFromActive, sprayAdjuvant, tankFill, tankLoads } from "../../../src/functions/protection/tank";
import { tankPlan } from "../../../src/functions/protection/tank-plan";
import { protectionFunctions } from "../../../src/functions/protection";
import { explain } from "../../../src/functions/frame/explain";
import { runFunction } from "../../../src/functions/frame/run";

const messageOf = (cells: readonly (readonly unknown[])[]) => (cells[0]?.[0] as { message?: string }).message;
const workingOf = (...call: Parameters<typeof explain>) => JSON.stringify(explain(...call));

describe("every function of crop protection", () => {
  it.each(protectionFunctions.map((fn) => [fn.name, fn] as const))("%s says that the label is the law", (_name, fn) => {
    expect(fn.cautions?.join(" ")).toMatch(/label is the law/);
    expect(fn.asks?.length).toBeGreaterThanOrEqual(2);
  });
});

describe("nozzles on a sheet", () => {
  it("fill a column of speeds: 20 × 5 × 20 / 5,940 and 20 × 10 × 20 / 5,940", () => {
    const cells = runFunction(sprayFlow, [20, [[5], [10]], 20]);
    expect(cells[0]?.[0]).toBeCloseTo(2000 / 5940, 12);
    expect(cells[1]?.[0]).toBeCloseTo(4000 / 5940, 12);
  });
  it("say what fits and wait for what is blank", () => {
    expect(messageOf(runFunction(sprayVolume, [0, 5, 20]))).toBe("flow must be between 0.001 and 500 gal/min; got 0.");
    expect(runFunction(sprayVolume, [0.3, 5])).toEqual([[{ code: "#N/A", message: "waiting for spacing" }]]);
  });
  it("point to the nozzle's chart outside usual pressures, and say that the range wants a check", () => {
    expect(workingOf(sprayPressure, [6, 8, 40])).toContain("15 to 60 psi");
    expect(workingOf(sprayPressure, [6, 8, 40])).toContain("Check against the current bulletin.");
    expect(workingOf(sprayPressure, [6, 7, 40])).not.toContain("Look again"); // 40 × 49 / 36 = 54.4
    expect(workingOf(nozzleFlowAt, [0.4, 40, 10])).toContain("Look again");
  });
});

describe("SPRAYDENSITY and SPRAYBAND on a sheet", () => {
  it("take a solution by its name: 20 × √(11.4 / 8.34) = 23.383", () => {
    expect(runFunction(sprayDensity, [20, "10-34-0"])[0]?.[0]).toBeCloseTo(23.383, 3);
    expect(runFunction(sprayDensity, [20, "ATS"])[0]?.[0]).toBeCloseTo(20 * Math.sqrt(11.5 / 8.34), 12);
    expect(messageOf(runFunction(sprayDensity, [20, "syrup"]))).toContain("must be a number");
  });
  it("refuse a band wider than the row", () => {
    expect(messageOf(runFunction(sprayBand, [2, 40, 30]))).toBe(
      "bandWidth: a band of 40 in is wider than the rows, 30 in: that is a broadcast pass.",
    );
  });
});

describe("the tank on a sheet", () => {
  it("asks whether a product is liquid or dry, unless a percent sign says so", () => {
    expect(messageOf(runFunction(productFromActive, [2, 80]))).toMatch(/^waiting for form: liquid .* or dry/);
    expect(runFunction(productFromActive, [2, "80%"])).toEqual([[2.5]]);
    expect(runFunction(productFromActive, [1.5, 3, "liquid"])).toEqual([[0.5]]);
    expect(messageOf(runFunction(productFromActive, [2, 80, "liquid"]))).toContain("between 0.001 and 15 lb/gal");
  });
  it("mixes the last acres only: 20 ac × 32, and a full 40 ac when more are left", () => {
    expect(runFunction(tankFill, [32, 600, 15, 20])).toEqual([[640]]);
    expect(runFunction(tankFill, [32, 600, 15, 75])).toEqual([[1280]]);
  });
  it("counts loads that come out even as they are: 160 × 15 / 600 = 4", () => {
    expect(runFunction(tankLoads, [160, 600, 15])).toEqual([[4]]);
    expect(runFunction(tankLoads, [160.1, 600, 15])).toEqual([[5]]);
    expect(runFunction(tankLoads, [0, 600, 15])).toEqual([[0]]);
  });
  it("reads 0.25 as a quarter percent: 0.25 / 100 × 1,000", () => {
    expect(runFunction(sprayAdjuvant, [0.25, 1000])).toEqual([[2.5]]);
    expect(runFunction(sprayAdjuvant, ["0.25%", 1000])).toEqual([[2.5]]);
  });
});

describe("TANKPLAN on a sheet", () => {
  it("shows one part load when the field is smaller than a tank: 10 ac × 1 qt, 150 gal less 2.5", () => {
    const cells = runFunction(tankPlan, [10, 600, 15, [["product", 1, "qt"]]]);
    expect(cells[1]).toEqual(["product", "qt", 0, 10, 10]);
    expect(cells[2]).toEqual(["water", "gal", 0, 147.5, 147.5]);
    expect(cells[4]).toEqual(["acres sprayed", "ac", 0, 10, 10]);
  });
  it("passes over rows without an amount and asks for a missing unit", () => {
    const rows = [
      ["a", 1, "pt/ac"],
      ["b", null, null],
    ];
    expect(runFunction(tankPlan, [80, 600, 15, rows]).map(([what]) => what)).toEqual([
      "What goes in",
      "a",
      "water",
      "spray in all",
      "acres sprayed",
    ]);
    expect(messageOf(runFunction(tankPlan, [80, 600, 15, [["a", 1, null]]]))).toBe("waiting for the unit of a in mix");
    expect(messageOf(runFunction(tankPlan, [80, 600, 15, [["a", 1, "oz"]]]))).toContain("Nearest: ");
  });
  it("refuses more liquid than spray: 20 gal/ac into 15", () => {
    expect(messageOf(runFunction(tankPlan, [80, 600, 15, [["a", 20, "gal/ac"]]]))).toBe(
      "mix: the liquids alone come to 20.0 gal/ac, more than the 15 gal/ac sprayed.",
    );
  });
});
