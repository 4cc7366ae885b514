import { coverFunctions } from "../../../src/functions/cover";
import { coverCount } from "../../../src/functions/cover/cover-count";
import { coverLeft } from "../../../src/functions/cover/cover-left";
import { coverFactor, contourFactor, slopeFactor, soilLoss } from "../../../src/functions/cover/erosion";
import { residueCover, residuePounds } from "../../../src/functions/cover/residue";
import { explain } from "../../../src/functions/frame/explain";
import { runFunction } from "../../../src/functions/frame/run";

const messageOf = (cells: readonly (readonly unknown[])[]) => (cells[0]?.[0] as { message?: string }).message;
const working = (...call: Parameters<typeof explain>) => JSON.stringify(explain(...call));

describe("COVERLEFT on a sheet", () => {
  const passes = [["Chisel Plow, straight points"], ["Winter"], [90]];

  it("reads passes by name or as a percent kept: 80 × 0.70 × 0.875 × 0.90", () => {
    expect(runFunction(coverLeft, [80, passes, "corn"])[0]?.[0]).toBeCloseTo(44.1, 10);
  });
  it("gives either end: 80 × 0.60 × 0.80 × 0.90 and 80 × 0.80 × 0.95 × 0.90", () => {
    expect(runFunction(coverLeft, [80, passes, "corn", "low"])[0]?.[0]).toBeCloseTo(34.56, 10);
    expect(runFunction(coverLeft, [80, passes, "corn", "high"])[0]?.[0]).toBeCloseTo(54.72, 10);
  });
  it("shows both ends and every pass in its working, and what to check", () => {
    const shown = working(coverLeft, [80, passes, "corn"]);
    for (const part of ["Low,", "High,", "After chisel plow", "which keeps 60 to 80 %", "Check against the current"]) {
      expect(shown).toContain(part);
    }
  });
  it("fills a column of starting covers", () => {
    expect(runFunction(coverLeft, [[[80], [40]], [[50]], "fragile"])).toEqual([[40], [20]]);
  });
  it("passes over blank passes", () => {
    expect(runFunction(coverLeft, [80, [[50], [null], [""]], "fragile"])).toEqual([[40]]);
  });
  it("offers the printed kinds of a pass that was named too loosely", () => {
    const message = messageOf(runFunction(coverLeft, [80, [["chisel plow"]], "corn"]));
    expect(message).toMatch(/passes "chisel plow" is not known here\. Nearest: .*chisel plow, straight points/);
  });
  it("asks about a share typed for a percent, and waits for the kind of residue", () => {
    expect(messageOf(runFunction(coverLeft, [80, [[0.7]], "corn"]))).toBe("passes is in percent: enter 70, not 0.7.");
    expect(runFunction(coverLeft, [80, passes])).toEqual([[{ code: "#N/A", message: "waiting for residueKind" }]]);
  });
  it("starts from a crop's usual cover and says so for a crop without one", () => {
    expect(runFunction(coverLeft, ["soybeans", [[50]]])).toEqual([[35]]);
    expect(messageOf(runFunction(coverLeft, ["sunflower", [[50]]]))).toContain("Enter the cover you counted");
  });
});

describe("COVERCOUNT on a sheet", () => {
  it("takes several lines and one count of marks: (20 + 30 + 40) / 150", () => {
    const cells = runFunction(coverCount, [[[20], [30], [40]], [[50]]]);
    expect(cells[0]).toEqual(["Low, %", "Cover, %", "High, %"]);
    expect(cells[1]?.[1]).toBeCloseTo(60, 10);
  });
  it("takes a list as long as a sheet is tall", () => {
    const hits = Array.from({ length: 500_000 }, () => [20]);
    expect(runFunction(coverCount, [hits, [[50]]])[1]?.[1]).toBeCloseTo(40, 8);
  });
  it("says what is wrong with a line", () => {
    expect(messageOf(runFunction(coverCount, [[[60]], [[50]]]))).toBe(
      "hits: 60 marks hit are more than the 50 marks on the line.",
    );
    expect(
      messageOf(
        runFunction(coverCount, [
          [[6], [7]],
          [[50], [50], [50]],
        ]),
      ),
    ).toContain("differ in size");
  });
});

describe("residue and erosion on a sheet", () => {
  it("tells cover from baling", () => {
    expect(runFunction(residuePounds, ["corn", 200])).toEqual([[11_200]]);
    expect(runFunction(residuePounds, ["corn", 200, "baling"])).toEqual([[10_000]]);
    expect(messageOf(runFunction(residuePounds, ["oat", 80, "baling"]))).toContain("It has corn, soybean, wheat.");
  });
  it("chains: 200 bu of corn lie 98.6 % over the ground, 100 (1 - e^(-0.00038 × 11,200))", () => {
    expect(runFunction(residueCover, ["corn", 11_200])[0]?.[0]).toBeCloseTo(98.58, 2); // e^-4.256 = 0.01418
  });
  it("gives the slope factor by either form", () => {
    const [usle, rusle] = ["USLE", "RUSLE 1997"].map((method) => runFunction(slopeFactor, [100, 5, method])[0]?.[0]);
    expect(usle).toBe(runFunction(slopeFactor, [100, 5])[0]?.[0]);
    expect(usle).not.toBe(rusle);
    expect(working(slopeFactor, [100, 5])).toContain("LS by RUSLE 1997");
  });
  it("does not take a percent of cover for the cover factor", () => {
    const message = messageOf(runFunction(soilLoss, [175, 0.32, 1, 30]));
    expect(message).toBe("cover must be between 0 and 1 C; got 30.");
  });
  it("asks about cover typed as a share, and takes words for the wash", () => {
    expect(messageOf(runFunction(coverFactor, [0.3]))).toBe("cover is in percent: enter 30, not 0.3.");
    expect(runFunction(coverFactor, [30, "rill"])[0]?.[0]).toBeCloseTo(0.2231, 4);
  });
  it("says how far contouring holds", () => {
    expect(messageOf(runFunction(contourFactor, [4, 400]))).toContain("400 ft is past the 300 ft");
    expect(messageOf(runFunction(contourFactor, [30]))).toContain("Rows up and down the slope count as 1.");
  });
});

describe("the family", () => {
  it.each(["FIELDCAPACITY", "CAPACITYNEED", "POWERNEED", "REPAIRCOST", "WEARCOST", "PASSCOST", "TILLAGECOMPARE"])(
    "%s warns where a person works with machines",
    (name) => {
      const fn = coverFunctions.find((one) => one.name === name);
      expect(fn?.cautions?.join(" ")).toMatch(/shields|block it up/);
    },
  );
});
