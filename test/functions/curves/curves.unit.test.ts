import {
  responseBest,
  responseCompare,
  responseFit,
  responseRange,
  responseYield,
} from "../../../src/functions/curves/response-curves";
import { explain } from "../../../src/functions/frame/explain";
import { runFunction } from "../../../src/functions/frame/run";

const rates = [[0], [50], [100], [150], [200], [250]];
/** 100 + x - 0.0025 x², level from 200 on: 100, 143.75, 175, 193.75, 200, 200, and a little beside it. */
const yields = [[100.2], [143.5], [175.1], [193.9], [199.8], [200.1]];
const messageOf = (cells: readonly (readonly unknown[])[]) => (cells[0]?.[0] as { message?: string }).message;

describe("the table of a fit", () => {
  const table = () => runFunction(responseFit, [rates, yields, "quadratic plateau", 0.1]);
  it("goes into the next functions as it stands", () => {
    const best = runFunction(responseBest, ["quadratic-plateau", table(), 0.1])[0]?.[0];
    const row = table().find(([label]) => label === "Best rate");
    expect(best).toBeCloseTo(Number(row?.[1]), 9);
    const [[expected]] = runFunction(responseYield, ["quadratic-plateau", table(), 230]) as [[number]];
    expect(expected).toBeCloseTo(200, 0);
  });
  it("holds the best rate within the rates it was made from", () => {
    const line = runFunction(responseFit, [rates, yields, "linear"]);
    expect(runFunction(responseBest, ["linear", line, 0.1])).toEqual([[250]]);
    expect(runFunction(responseRange, ["linear", line, 0.5, 5])[2]?.[4]).toContain("held at the highest rate tested");
  });
  it("is refused for another model", () => {
    expect(messageOf(runFunction(responseBest, ["mitscherlich", table(), 0.1]))).toBe(
      "parameters: the table has no row Ceiling: it was fitted with another model than mitscherlich.",
    );
  });
});

describe("curves on a sheet", () => {
  it("fits a quadratic-plateau when no model is named", () => {
    expect(runFunction(responseFit, [rates, yields])).toEqual(
      runFunction(responseFit, [rates, yields, "quadratic-plateau"]),
    );
  });
  it.each([
    ["linear plateau", "linear-plateau"],
    ["broken stick", "linear-plateau"],
    ["straight line", "linear"],
    ["exponential", "mitscherlich"],
    ["diminishing", "mitscherlich"],
    ["asymptotic", "mitscherlich"],
    ["exponential from zero", "mitscherlich from zero"],
    ["mitscherlich zero", "mitscherlich from zero"],
    ["quad plateau", "quadratic-plateau"],
    ["QP", "quadratic-plateau"],
    ["parabola", "quadratic"],
    ["root", "square root"],
  ])("takes the words %s for %s", (word, label) => {
    const parameters = [[120], [0.02]];
    const three = [...parameters, [-0.0001]];
    const drawn = (name: string) =>
      runFunction(responseYield, [name, ["linear", "mitscherlich from zero"].includes(label) ? parameters : three, 10]);
    expect(drawn(word)).toEqual(drawn(label));
    expect(typeof drawn(label)[0]?.[0]).toBe("number");
  });
  it.each([
    ["linear-plateau", ["Intercept", "Slope", "Plateau starts at", "Plateau yield"]],
    ["quadratic-plateau", ["Intercept", "Linear", "Quadratic", "Plateau starts at", "Plateau yield"]],
    ["quadratic", ["Intercept", "Linear", "Quadratic", "Rate of the highest yield", "Highest yield"]],
    ["mitscherlich", ["Ceiling", "Response", "Curvature", "Yield with none"]],
    ["mitscherlich from zero", ["Ceiling", "Curvature"]],
    ["square root", ["Intercept", "Root", "Linear", "Rate of the highest yield"]],
  ])("names the numbers of a %s in its table", (name, labels) => {
    // 200 - 100 e^(-x/50), its last two at 200, suits them all.
    const bent = [100.2, 163.1, 186.6, 195.3, 200.1, 199.8].map((one) => [one]);
    const rows = runFunction(responseFit, [rates, bent, name]).map(([label]) => label);
    expect(rows.slice(1, 1 + labels.length + 1)).toEqual([...labels, "R²"]);
  });
  it("draws a curve down a column of rates", () => {
    const drawn = runFunction(responseYield, ["linear-plateau", [[100], [0.5], [100]], [[0], [50], [100], [150]]]);
    expect(drawn).toEqual([[100], [125], [150], [150]]);
  });
  it("names the word that is not a number and the model it does not know", () => {
    expect(
      messageOf(
        runFunction(responseFit, [
          [["none"], [50]],
          [[1], [2]],
        ]),
      ),
    ).toContain('x must be a number (per ac); got "none"');
    expect(messageOf(runFunction(responseFit, [rates, yields, "cubic"]))).toContain('model "cubic" is not known here.');
  });
  it("waits while the yields are blank", () => {
    const blank = rates.map(() => [null]);
    expect(runFunction(responseFit, [rates, blank])[0]?.[0]).toEqual({ code: "#N/A", message: "waiting for y" });
  });
  it("says what stands against a model in the comparison", () => {
    const table = runFunction(responseCompare, [rates, [[100], [110], [121], [133], [146], [160]], 0.1]);
    expect(table[1]?.[0]).toBe("quadratic-plateau");
    expect(table[1]?.[6]).toContain("not fitted: no plateau within the rates tested");
  });
  it("shows the rates that come near the best in its working", () => {
    const shown = explain(responseRange, ["quadratic", [[98], [0.62], [-0.00155]], 0.5, 4.5]);
    expect(shown).toMatchObject({
      working: expect.arrayContaining([expect.objectContaining({ label: "Highest rate near the best" })]),
    });
  });
});
