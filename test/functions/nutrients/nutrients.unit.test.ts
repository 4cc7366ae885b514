import { removal, removalTable } from "../../../src/functions/nutrients/removal";
import { rotationBalance } from "../../../src/functions/nutrients/rotation-balance";
import { testDrift } from "../../../src/functions/nutrients/test-drift";
import type { RawArgument } from "../../../src/functions/frame";
import { explain } from "../../../src/functions/frame/explain";
import { runFunction } from "../../../src/functions/frame/run";

const one = (fn: Parameters<typeof runFunction>[0], ...call: RawArgument[]) => runFunction(fn, call)[0]?.[0];
const column = (...cells: (number | string | null)[]) => cells.map((cell) => [cell]);

describe("REMOVAL", () => {
  it("understands the words people write", () => {
    for (const crop of ["corn", "CORN", " Maize ", "field corn"]) {
      for (const nutrient of ["K2O", "potash", "K", "potassium"]) expect(one(removal, crop, 200, nutrient)).toBe(40);
    }
    expect(one(removal, "beans", 60, "P")).toBeCloseTo(48, 9);
    expect(one(removal, "winter wheat", 100, "phosphate", "grain + straw")).toBeCloseTo(50 + 2.595 * 3.7, 9);
  });

  it("fills a column from a column, with an error only where a row is wrong", () => {
    const cells = runFunction(removal, ["corn", column(200, null, "two hundred", 9999, 100), "K2O"]);
    expect(cells.map(([cell]) => cell)).toEqual([
      40,
      { code: "#N/A", message: "waiting for yield" },
      { code: "#VALUE!", message: 'yield must be a number (per ac); got "two hundred".' },
      { code: "#VALUE!", message: "yield must be between 0 and 1,000 per ac; got 9,999." },
      20,
    ]);
  });

  it("works a column of yields against a row of nutrients", () => {
    const cells = runFunction(removal, ["corn", column(100, 200), [["N", "P2O5", "K2O"]]]);
    expect(cells).toEqual([
      [90, 35, 20],
      [180, 70, 40],
    ]);
  });

  it("says which crop ceiling a yield is over", () => {
    expect(one(removal, "alfalfa", 62, "K2O")).toMatchObject({
      code: "#VALUE!",
      message: "yield must be between 0 and 25 ton/ac; got 62.",
    });
  });

  it("names the nearest words when one is not known", () => {
    expect(one(removal, "corm", 200, "K2O")).toMatchObject({ message: expect.stringMatching(/crop "corm".*corn/) });
    expect(one(removal, "corn", 200, "potasium")).toMatchObject({ message: expect.stringContaining("K2O") });
  });

  it("is not available, in a sentence, for what a set does not print", () => {
    expect(one(removal, "corn", 200, "N", "grain", "IA")).toEqual({
      code: "#N/A",
      message: expect.stringMatching(/^not available: the IA removal set publishes no N for corn grain\. Sets that/),
    });
  });

  it("takes a moisture in percent and asks about a share", () => {
    expect(one(removal, "alfalfa", 5, "K2O", null, null, 12)).toBeCloseTo(215.6, 9);
    expect(one(removal, "alfalfa", 5, "K2O", null, null, "12%")).toBeCloseTo(215.6, 9);
    expect(one(removal, "alfalfa", 5, "K2O", null, null, 0.12)).toEqual({
      code: "#VALUE!",
      message: "moisture is in percent: enter 12, not 0.12.",
    });
  });

  it("passes an error that arrives on unchanged", () => {
    expect(one(removal, "corn", { code: "#DIV/0!" }, "K2O")).toEqual({ code: "#DIV/0!" });
  });

  it("shows the set, the spread and the reminder that goes with numbers from memory", () => {
    const shown = explain(removal, ["soybean", 60, "K2O"]);
    if (!("working" in shown)) throw new Error(shown.because);
    const labels = shown.working.map(({ label }) => label);
    expect(labels).toContain("K2O in grain, IN-MI-OH 2020");
    expect(labels).toContain("Check");
    expect(labels.some((label) => label.startsWith("Highest of"))).toBe(true);
    expect(shown.cites).toEqual([expect.objectContaining({ mark: "M", source: "osu-974-2020" })]);
  });

  it("says in the working that all of the straw is taken off", () => {
    const shown = explain(removal, ["wheat", 80, "K2O", "grain+straw"]);
    if (!("working" in shown)) throw new Error(shown.because);
    expect(shown.working).toContainEqual({
      label: "Dry straw left by that grain, all of it taken off",
      value: expect.closeTo(2.076, 9),
      unit: "ton/ac",
    });
  });
});

describe("REMOVALTABLE", () => {
  it("spills a header and a row per published nutrient", () => {
    const cells = runFunction(removalTable, ["corn", 200]);
    expect(cells[0]).toEqual(["Nutrient", "lb/ac", "Lowest published", "Highest published", "Set"]);
    expect(cells.map(([nutrient]) => nutrient)).toEqual([
      "Nutrient",
      ...["N", "P2O5", "K2O", "Ca", "Mg", "S", "Zn", "Mn", "Cu"],
    ]);
    expect(cells[1]?.[1]).toBeCloseTo(180, 9);
    expect(cells[1]?.[4]).toBe("IN-MI-OH 2020");
    expect(cells[7]?.[4]).toBe("NC");
  });

  it("takes one crop and says so when it gets a range", () => {
    expect(runFunction(removalTable, [column("corn", "soybean"), 200])[0]?.[0]).toMatchObject({
      message: "crop takes one cell; got a range of 2 × 1.",
    });
  });
});

describe("ROTATIONBALANCE", () => {
  it("sums what was applied from a range and works a row of nutrients", () => {
    const cells = runFunction(rotationBalance, [
      column("corn", "soybean"),
      column(180, 60),
      [["P2O5", "K2O"]],
      column(60, null, 51),
    ]);
    // P2O5 111 − 111; K2O 111 − 105.
    expect(cells[0]?.[0]).toBeCloseTo(0, 9);
    expect(cells[0]?.[1]).toBeCloseTo(6, 9);
  });

  it("passes over blank rows and waits for half a row", () => {
    expect(one(rotationBalance, column("corn", null), column(180, null), "K2O", 60)).toBeCloseTo(24, 9);
    expect(one(rotationBalance, column("corn", "soybean"), column(180, null), "K2O", 60)).toMatchObject({
      code: "#N/A",
      message: "waiting for yields",
    });
    expect(one(rotationBalance, column("corn"), column(180), "K2O", null)).toMatchObject({
      message: "waiting for applied",
    });
  });

  it("refuses lists of different length", () => {
    expect(one(rotationBalance, column("corn", "soybean"), column(180), "K2O", 60)).toMatchObject({
      message: expect.stringContaining("crops (2 cells) and yields (1 cell)"),
    });
  });
});

describe("TESTDRIFT", () => {
  it("takes the published number, a CEC's, or a typed one", () => {
    expect(one(testDrift, 100, -60, "K")).toBeCloseTo(92.5, 9);
    expect(one(testDrift, 100, -60, "K", null, 10)).toBeCloseTo(90, 9);
    expect(one(testDrift, 100, -60, "K", 12)).toBeCloseTo(95, 9);
  });

  it("says that nitrogen does not carry over", () => {
    expect(one(testDrift, 20, 50, "nitrogen")).toMatchObject({
      code: "#VALUE!",
      message: "nutrient: only P2O5 and K2O carry over into a soil test; N does not.",
    });
  });
});
