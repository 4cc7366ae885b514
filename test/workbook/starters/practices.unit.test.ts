import { below, headOf, retypedBelow, retypedBeside } from "./practice-cells";
import { emptied, planOf, show, type ShownBook } from "./shown-sheet";

/** The plan with no other part: it is worked out anew for every change. */
const plan = planOf("farm-plan", { parts: ["practices"] });
let book: ShownBook;
beforeAll(async () => {
  book = await show(plan);
});

/** Soybean at $10.60 less $0.12 of hauling. */
const price = 10.48;

const practices = (heading: string, practice: string) => below(book, "Practices", heading, practice);

/** Potash strips in Mill Road: 6.1, 4.1, 6.8, 4.9, 6.7. Squares around 5.72 add up to 5.568. */
const potash = { gain: 28.6 / 5, error: Math.sqrt(5.568 / 4 / 5) };

describe("the practices of the invented farm", () => {
  it("need a gain that pays: 29 / 10.48", () => {
    expect(practices("Gain that pays bu/ac", "fungicide pass at pod set")).toBeCloseTo(29 / price, 6);
  });

  it("pay with the share of the triangle above that gain", () => {
    // potash: 42 / 10.48 = 4.008 lies below the likely 4.5 of 1.5 to 8
    const under = (42 / price - 1.5) ** 2 / (6.5 * 3);
    expect(practices("Odds that it pays", "potash before soybean")).toBeCloseTo(1 - under, 6);
  });

  it("are weighed over the acres they are for", () => {
    expect(practices("Acres", "potash before soybean")).toBe(227);
    expect(practices("Acres", "narrower rows, lower rate")).toBe(154 + 96 + 140 + 203 + 227);
  });

  it("are believed after a trial as far as it is sure, its season counted as one of many", () => {
    const before = (1.5 + 4.5 + 8) / 3;
    const variance = (1.5 ** 2 + 4.5 ** 2 + 8 ** 2 - 1.5 * 4.5 - 1.5 * 8 - 4.5 * 8) / 18;
    const trialVariance = potash.error ** 2 + 1;
    const weight = variance / (variance + trialVariance);
    const after = before + weight * (potash.gain - before);
    expect(practices("Expected gain bu/ac", "potash before soybean")).toBeCloseTo(after, 6); // 5.277
    expect(practices("Give or take bu/ac", "potash before soybean")).toBeCloseTo(Math.sqrt(weight * trialVariance), 6);
    // an even triangle of the same mean and spread
    const reach = Math.sqrt(6 * weight * trialVariance);
    expect(practices("High now bu/ac", "potash before soybean")).toBeCloseTo(after + reach, 6);
  });

  it("are adopted, tested or skipped, with the reason in words", () => {
    expect(practices("Decision", "narrower rows, lower rate")).toBe("adopt"); // pays even at its lowest gain
    expect(practices("Decision", "foliar micronutrient")).toBe("skip");
    expect(practices("Decision", "fungicide pass at pod set")).toBe("test");
    const pairs = Number(practices("Pairs to lay", "fungicide pass at pod set"));
    expect(pairs).toBeGreaterThan(2);
    expect(practices("Acres to test on", "fungicide pass at pod set")).toBeCloseTo(pairs * 1.7, 9);
    // 2.1667 × 10.48 - 1 = 21.71
    expect(practices("Decision", "potash before soybean")).toBe("adopt");
    const sheet = book.plan.sheets.find(({ name }) => name === "Practices");
    const reasons = (sheet?.cells ?? []).map(({ row, column }) => book.at("Practices", row, column));
    expect(reasons.some((words) => typeof words === "string" && /nets \$21\.71\/ac on average/.test(words))).toBe(true);
  });

  it("are worth a trial of one season only as far as seasons are alike", () => {
    // From the strips on, in another program (Python): error √(2.5² / 6 + 1²) bu, 2,460 acre-seasons; $2,638.54 without the 1.
    expect(practices("A test is worth $", "fungicide pass at pod set")).toBeCloseTo(1717.8147, 3);
  });
});

describe("the strip trials", () => {
  it("weigh a strip at market moisture: 3,000 lb at 12.6 % on 1,200 × 30 ft", () => {
    const acres = (1200 * 30) / 43_560;
    expect(below(book, "Trial 1", "Check bu/ac", 1)).toBeCloseTo((3000 * 87.4) / 87 / 60 / acres, 6); // 60.78
  });

  it("take bushels without a moisture as they are", () => {
    expect(below(book, "Trial 2", "Check bu/ac", 1)).toBe(51.8);
    expect(below(book, "Trial 2", "Treated less check bu/ac", 1)).toBeCloseTo(6.1, 9);
  });

  it("say what the strips gained, how sure that is and whether it pays", () => {
    const potashTrial = (label: string) => book.beside("Trial 2", label);
    expect(potashTrial("Gain")).toBeCloseTo(potash.gain, 9);
    expect(potashTrial("Standard error")).toBeCloseTo(potash.error, 9);
    // ± 2.13185 standard errors, 4 degrees of freedom; luck and chance from another program (SciPy)
    expect(potashTrial("Likely from")).toBeCloseTo(potash.gain - 2.13185 * potash.error, 4);
    expect(potashTrial("By luck (p)")).toBeCloseTo(0.00041083, 8);
    expect(potashTrial("Pays with chance")).toBeCloseTo(0.98424306, 7);
    expect(potashTrial("Net of the practice")).toBeCloseTo(potash.gain * price - 42, 6);
    expect(potashTrial("In words")).toBe(
      "The gain is 5.7 bu/ac, likely between 4.6 and 6.8; at $10.48/bu and a cost of $42/ac the chance that it pays is 98 %.",
    );
  });

  it("size a next trial: two pairs see 4.0 bu/ac 55 times in a hundred, three 97 times (SciPy)", () => {
    expect(book.beside("Trial 2", "A next trial shall see")).toBeCloseTo(42 / price, 6);
    expect(book.beside("Trial 2", "Pairs it needs for that")).toBe(3);
  });

  it("draw each treatment once in every pair", () => {
    for (const block of [1, 2, 3, 4, 5, 6]) {
      const sides = [below(book, "Trial 1", "Left strip", block), below(book, "Trial 1", "Right strip", block)];
      expect(sides.sort()).toEqual(["check", "fungicide"]);
    }
  });
});

/** A column of the table that the chart of a trial sheet is drawn from, by block. */
function drawnIn(shown: ShownBook, trial: string, heading: string): unknown[] {
  const { row, column } = headOf(shown.plan, trial, heading);
  return [1, 2, 3, 4, 5, 6, 7, 8].map((block) => shown.at(trial, row + block, column));
}

/** The differences stand under the second heading of their name. */
function differences(shown: ShownBook, trial: string): unknown[] {
  const { row, column } = headOf(shown.plan, trial, "Mean gain bu/ac");
  return [1, 2, 3, 4, 5, 6, 7, 8].map((block) => shown.at(trial, row + block, column - 1));
}

const notDrawn = { code: "#N/A" };

describe("the chart of a trial", () => {
  it("draws each pair, and level across them the mean, its range and the gain that pays", () => {
    const level = (value: unknown) => [value, value, value, value, value, notDrawn, notDrawn, notDrawn];
    const near = (value: number, digits: number) => expect.closeTo(value, digits) as unknown;
    // 2.13185 is t of 90 % with 4 degrees of freedom.
    const reach = 2.13185 * potash.error;
    expect(drawnIn(book, "Trial 2", "Mean gain bu/ac")).toEqual(level(near(potash.gain, 9)));
    expect(drawnIn(book, "Trial 2", "Likely from bu/ac")).toEqual(level(near(potash.gain - reach, 4)));
    expect(drawnIn(book, "Trial 2", "Likely to bu/ac")).toEqual(level(near(potash.gain + reach, 4)));
    expect(drawnIn(book, "Trial 2", "Pays from bu/ac")).toEqual(level(near(42 / price, 6)));
  });
});

describe("with figures missing", () => {
  let waiting: ShownBook;
  beforeAll(async () => {
    const noCost = emptied(plan, [["Practices", "foliar micronutrient", "Cost $/ac"]]);
    const lostStrip = retypedBelow(noCost, "Trial 2", "Treated as weighed", 2, null);
    const noYields = [1, 2, 3, 4, 5, 6].reduce(
      (before, pair) => retypedBelow(before, "Trial 1", "Check as weighed", pair, null),
      lostStrip,
    );
    waiting = await show(noYields);
  });

  it("no cell goes wrong", () => {
    expect(waiting.errors()).toEqual([]);
  });

  it("a practice without its cost waits and says so", () => {
    expect(below(waiting, "Practices", "Decision", "foliar micronutrient")).toBe("waits");
    expect(below(waiting, "Stack", "Why", "foliar micronutrient")).toBe("waits for its figures");
  });

  it("a pair with a lost strip is passed over", () => {
    expect(waiting.beside("Trial 2", "Pairs with both yields")).toBe(4);
    expect(waiting.beside("Trial 2", "Gain")).toBeCloseTo((6.1 + 6.8 + 4.9 + 6.7) / 4, 9);
  });

  it("a lost strip draws no point, and a trial without yields draws nothing", () => {
    const [, second, third] = differences(waiting, "Trial 2");
    expect(second).toEqual(notDrawn);
    expect(third).toBeCloseTo(6.8, 9);
    for (const found of [differences(waiting, "Trial 1"), drawnIn(waiting, "Trial 1", "Mean gain bu/ac")])
      expect(found).toEqual(Array.from({ length: 8 }, () => notDrawn));
  });

  it("a trial without yields changes nothing that was believed before", () => {
    expect(waiting.beside("Trial 1", "In words")).toBe("waits for yields of at least two pairs");
    // fungicide: 29 / 10.48 = 2.767 lies above the likely 2.3 of 0 to 5
    const above = (5 - 29 / price) ** 2 / (5 * 2.7);
    expect(below(waiting, "Practices", "Odds now", "fungicide pass at pod set")).toBeCloseTo(above, 6);
  });
});

describe("two trials of one practice", () => {
  it("are pooled by how sure each is", async () => {
    const pooled = await show(retypedBeside(plan, "Trial 1", "Practice", "potash before soybean"));
    const first = Number(pooled.beside("Trial 1", "Gain"));
    const firstError = Number(pooled.beside("Trial 1", "Standard error"));
    const weights = [1 / (firstError ** 2 + 1), 1 / (potash.error ** 2 + 1)] as const;
    const mean = (weights[0] * first + weights[1] * potash.gain) / (weights[0] + weights[1]);
    expect(below(pooled, "Practices", "Trials gained bu/ac", "potash before soybean")).toBeCloseTo(mean, 6);
    expect(below(pooled, "Practices", "Trials gained bu/ac", "fungicide pass at pod set")).toBe("");
  });
});
