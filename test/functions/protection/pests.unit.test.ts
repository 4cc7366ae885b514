import { explain } from "../../../src/functions/frame/explain";
import { runFunction } from "../../../src/functions/frame/run";
import { pestThreshold } from "../../../src/functions/protection/pest-threshold";
import { pestActionLevel, pestDays, pestInjuryLevel } from "../../../src/functions/protection/pests";

const messageOf = (cells: readonly (readonly unknown[])[]) => (cells[0]?.[0] as { message?: string }).message;
const readings = (cells: readonly (readonly unknown[])[]) => cells.slice(1).map((row) => row.at(-1));

describe("injury and action levels on a sheet", () => {
  it("fill a column of prices: 10 / (5 × 0.05) and 10 / (10 × 0.05)", () => {
    expect(runFunction(pestInjuryLevel, [10, [[5], [10]], 0.05, 100])).toEqual([[40], [20]]);
    expect(runFunction(pestInjuryLevel, [10, 5, 0.05, 80])).toEqual([[50]]);
  });
  it("ask about a share and have no answer for a pest that does no harm", () => {
    expect(messageOf(runFunction(pestInjuryLevel, [10, 5, 0.05, 0.8]))).toBe(
      "control is in percent: enter 80, not 0.8.",
    );
    expect(runFunction(pestInjuryLevel, [10, 5, 0, 100])).toMatchObject([[{ code: "#NUM!" }]]);
  });
  it("take a pest's published doubling time: 674 / 2^(6.8 / 6.8) = 337", () => {
    expect(runFunction(pestActionLevel, [674, "soybean aphid", 6.8])[0]?.[0]).toBeCloseTo(337, 9);
    expect(JSON.stringify(explain(pestActionLevel, [674, "soybean aphid", 5]))).toContain("Check against the current");
    expect(messageOf(runFunction(pestActionLevel, [674, "armyworm", 5]))).toContain("Type the growth in percent a day");
  });
  it("give no days for a level that is reached, and no answer without growth", () => {
    expect(runFunction(pestDays, [700, 674, 10])).toEqual([[0]]);
    expect(runFunction(pestDays, [100, 674, 0])).toMatchObject([[{ code: "#NUM!" }]]);
    expect(runFunction(pestDays, [10, 40, 100])[0]?.[0]).toBeCloseTo(2, 12);
  });
});

describe("PESTTHRESHOLD on a sheet", () => {
  it("lists every printed row of a pest and says which wants a check", () => {
    const cells = runFunction(pestThreshold, ["soybean aphid", "soybean"]);
    expect(cells.slice(1).map(([, , what, from]) => [what, from])).toEqual([
      ["threshold", 250],
      ["injury level", 674],
      ["injury level", 452],
      ["threshold", 1000],
    ]);
    expect(cells[2]?.at(-1)).toContain("Check against the current bulletin.");
    expect(cells[1]?.at(-1)).not.toContain("Check against");
  });
  it("narrows by a stage code, and keeps rows whose stage is printed in words", () => {
    const regions = (stage: string) =>
      runFunction(pestThreshold, ["defoliation", "soybean", stage])
        .slice(1)
        .map(([, printed, , , , , region]) => `${String(region)}: ${String(printed)}`);
    expect(regions("R4")).toEqual([
      "Iowa: reproductive",
      "Ohio: R3-R5",
      "North Carolina: to 2 weeks before bloom",
      "North Carolina: 2 weeks before bloom to R7",
      "Illinois: bloom to pod fill",
      "Delaware: bloom to pod fill",
      "Illinois and Iowa: bloom to pod fill",
    ]);
    expect(regions("v3")).toContain("Iowa: vegetative");
    expect(regions("v3")).not.toContain("Iowa: reproductive");
  });
  it("reads a count in three zones where two numbers are printed: 35 leave, 40 sample more, 52 treat", () => {
    for (const [count, reading] of [
      [35, "leave"],
      [40, "sample more"],
      [52, "at or above"],
    ] as const) {
      expect(readings(runFunction(pestThreshold, ["stink bugs", "corn", "R2", count]))).toEqual([reading]);
    }
  });
  it("reads a count against a printed range", () => {
    expect(
      [2.9, 3, 5].map((count) => readings(runFunction(pestThreshold, ["black cutworm", "corn", "V1-V5", count]))),
    ).toEqual([["below"], ["in the printed range"], ["at or above"]]);
  });
  it("asks how a count was taken when the rows differ", () => {
    expect(messageOf(runFunction(pestThreshold, ["bean leaf beetle", "soybean", "pod to full seed", 5]))).toBe(
      "waiting for per: how it was counted: per foot of row, per sweep",
    );
    const cells = runFunction(pestThreshold, ["bean leaf beetle", "soybean", "pod to full seed", 5, "per sweep"]);
    expect(cells[1]?.slice(-3)).toEqual([5, 125, "at or above"]);
  });
  it("says what is held when nothing fits", () => {
    expect(messageOf(runFunction(pestThreshold, ["potato leafhopper", "corn"]))).toBe(
      'not available: "Published pest thresholds" publishes no threshold for potato leafhopper in corn. It holds: alfalfa.',
    );
    expect(runFunction(pestThreshold, ["grasshoppers", "alfalfa"])[1]?.[0]).toBe("any crop");
  });
});
