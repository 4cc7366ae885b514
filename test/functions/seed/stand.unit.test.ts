import { explain } from "../../../src/functions/frame/explain";
import { runFunction } from "../../../src/functions/frame/run";
import { seedPounds } from "../../../src/functions/seed/planting";
import { standEvenness, standHoop, standRange } from "../../../src/functions/seed/stand";
import { treatmentCost, treatmentLiquid } from "../../../src/functions/seed/treatment";

const messageOf = (cells: readonly (readonly unknown[])[]) => (cells[0]?.[0] as { message?: string }).message;

describe("SEEDPOUNDS on a sheet", () => {
  it("takes the weight of 1,000 kernels in place of seeds per pound: 453,592.37 / 30 seeds in a pound", () => {
    expect(runFunction(seedPounds, [1_200_000, null, 30])[0]?.[0]).toBeCloseTo((1_200_000 * 30) / 453_592.37, 8);
  });
  it("waits for one of the two and refuses both", () => {
    expect(messageOf(runFunction(seedPounds, [1_200_000]))).toBe("waiting for seedsPerPound or thousandKernelGrams");
    expect(messageOf(runFunction(seedPounds, [1_200_000, 14_000, 30]))).toContain("not both");
  });
});

describe("STANDRANGE, STANDHOOP and STANDEVENNESS on a sheet", () => {
  it("leave blank what a bare field cannot tell", () => {
    expect(runFunction(standRange, [[[0], [0]], 30])[1]).toEqual([0, 0, 0, 2, "", ""]);
  });
  it("ask about a hoop typed in feet", () => {
    expect(messageOf(runFunction(standHoop, [[[13]], 3]))).toContain("Did you mean 36?");
  });
  it("take a published loss by its word: (SD 7.071 - 2) × 4", () => {
    expect(runFunction(standEvenness, [[[2], [12]], "SSMG 37"])[1]?.[3]).toBeCloseTo(20.284, 3);
    expect(runFunction(standEvenness, [[[2], [12]]])[1]?.[3]).toBeCloseTo(12.678, 3); // × 2.5
  });
  it("say what is from memory only where it is used", () => {
    expect(JSON.stringify(explain(standEvenness, [[[2], [12]]]))).toContain("Check against the current bulletin.");
    expect(JSON.stringify(explain(standEvenness, [[[2], [12]], 4, 2]))).not.toContain("Check against");
  });
});

describe("TREATMENTCOST and TREATMENTLIQUID on a sheet", () => {
  it("say what gain pays for it: $3.00 / $10", () => {
    expect(JSON.stringify(explain(treatmentCost, [150, 50, 1, 10]))).toContain('"value":0.3,"unit":"bu/ac"');
    expect(JSON.stringify(explain(treatmentLiquid, [5, 256, 90]))).not.toContain("pays for it");
  });
  it("send the person to the label", () => {
    for (const fn of [treatmentCost, treatmentLiquid]) expect(fn.cautions?.join(" ")).toMatch(/label/i);
  });
});
