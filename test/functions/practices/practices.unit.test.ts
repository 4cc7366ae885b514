import { explain } from "../../../src/functions/frame/explain";
import { runFunction } from "../../../src/functions/frame/run";
import { practiceDecision } from "../../../src/functions/practices/practice-decision";
import { practiceOdds } from "../../../src/functions/practices/practice-odds";
import { practicePick } from "../../../src/functions/practices/practice-pick";
import { practiceStrips } from "../../../src/functions/practices/practice-strips";
import { practiceUpdate } from "../../../src/functions/practices/practice-update";

const messageOf = (cells: readonly (readonly unknown[])[]) => (cells[0]?.[0] as { message?: string }).message;
const costs = [[14], [24], [18], [9], [12]];
const gains = [[4.2], [7.5], [4.6], [3.6], [1.5]];
const names = [["stabilizer"], ["fungicide"], ["starter"], ["sulfur"], ["micronutrients"]];
const blank = [[null], [null], [null], [null], [null]];
const picks = (cells: readonly (readonly unknown[])[]) => cells.filter((row) => row[1] === "yes").map((row) => row[0]);

describe("PRACTICEODDS and PRACTICEDECISION down a column", () => {
  it("one formula answers every practice of a table", () => {
    expect(runFunction(practiceOdds, [[[0], [4]], [[6], [6]], [[12], [8]], 18, 4.5])).toEqual([
      [expect.closeTo(7 / 9, 9)],
      [1],
    ]);
    expect(runFunction(practiceDecision, [4, 6, 8, [[18], [27], [33]], 4.5, 100])).toEqual([
      ["adopt"],
      ["test"],
      ["skip"],
    ]);
  });
  it("says why, on how many acres, and on how many pairs", () => {
    const ask = (show: string) =>
      runFunction(practiceDecision, [4, 6, 8, 27, 4.5, 100, null, null, null, null, show])[0]?.[0];
    expect(ask("reason")).toBe(
      "It pays with 50 % chance and nets $0.00/ac on average: too close to call. Test on 6 ac; hold off elsewhere meanwhile.",
    );
    expect([ask("test acres"), ask("pairs")]).toEqual([6, 6]);
  });
  it("weighs a trial against its cost in the reason", () => {
    const shown = runFunction(practiceDecision, [4, 6, 8, 26, 4.5, 2000, 60, 2, null, null, "reason"])[0]?.[0];
    const reason =
      /^It pays with \d+ % chance and nets \$1\.00\/ac on average\. (\d+) pairs of strips on (\d+) ac cost \$(\d+)/;
    const [, pairs, acres, cost] = reason.exec(String(shown)) ?? [];
    // An acre and $60 a pair.
    expect([acres, cost]).toEqual([pairs, String(60 * Number(pairs))]);
  });
  it("refuses gains out of order in that row only", () => {
    const cells = runFunction(practiceOdds, [[[9], [4]], 6, 12, 18, 4.5]);
    expect(cells[0]?.[0]).toMatchObject({ message: "lowGain: must not be above likelyGain (6 bu/ac); got 9." });
    expect(cells[1]?.[0]).toBeCloseTo(1, 9);
  });
});

describe("PRACTICEUPDATE", () => {
  it("adds chance and net when cost and price are given, and waits for the other of the two", () => {
    const table = runFunction(practiceUpdate, [0, 6, 12, 9, 2, 27, 4.5]);
    expect(table[0]?.slice(5)).toEqual(["It pays, chance (0 to 1)", "Net, $/ac"]);
    // Before: the mean 6 is just what pays.
    expect(table[1]?.slice(5)).toEqual([expect.closeTo(0.5, 9), expect.closeTo(0, 9)]);
    expect(messageOf(runFunction(practiceUpdate, [0, 6, 12, 9, 2, 27]))).toBe("waiting for price");
  });
});

describe("gains out of order", () => {
  it.each([
    ["PRACTICEUPDATE", practiceUpdate, [7, 6, 12, 9, 2]],
    ["PRACTICEDECISION", practiceDecision, [7, 6, 12, 18, 4.5, 100]],
  ] as const)("are a sentence in %s", (_name, fn, call) => {
    expect(messageOf(runFunction(fn, call))).toBe("lowGain: must not be above likelyGain (6 bu/ac); got 7.");
  });
});

describe("a season among others", () => {
  const season = [null, null, null, null, Math.SQRT2];
  it("is an argument of PRACTICEUPDATE: 6 against 4 + 2, so that 6 and 9 count alike", () => {
    const table = runFunction(practiceUpdate, [0, 6, 12, 9, 2, ...season]);
    expect(table[3]?.[1]).toBeCloseTo(7.5, 9);
  });
  it("is said in the working when it is left out, and shown when it is given", () => {
    const lineOf = (call: Parameters<typeof explain>[1]) =>
      JSON.stringify(explain(practiceUpdate, call)).match(/"label":"Season to season[^}]*/)?.[0];
    expect(lineOf([0, 6, 12, 9, 2])).toContain("not counted: the trial's season is taken to speak for the others");
    expect(lineOf([0, 6, 12, 9, 2, ...season])).toContain("1.41");
  });
});

describe("PRACTICESTRIPS", () => {
  it("marks the trial that leaves most, or says that none is worth its cost", () => {
    const rows = runFunction(practiceStrips, [6, 20, 0, 1, 500, 45, 100]);
    expect(rows.filter((row) => row[5] === "most is left")).toHaveLength(1);
    const dear = runFunction(practiceStrips, [6, 20, 0, 1, 5, 45, 100]);
    expect(dear.some((row) => row[5] === "the least loss: no trial is worth its cost")).toBe(true);
  });
});

describe("PRACTICEPICK", () => {
  it("reads exclusions by name, by row number and several in a cell", () => {
    const byName = [["Sulfur"], [null], [null], [null], [null]];
    const byNumber = [["4"], [null], [null], [null], [null]];
    const both = [[null], [null], [null], ["fungicide, stabilizer"], [null]];
    const run = (excludes: (string | null)[][]) =>
      picks(runFunction(practicePick, [costs, gains, 4.5, 60, excludes, null, names]));
    expect(run(byName)).toEqual(["fungicide", "starter", "sulfur"]);
    expect(run(byNumber)).toEqual(run(byName));
    expect(run(both)).toEqual(["stabilizer", "fungicide", "starter"]);
  });
  it("reads what a practice requires, the number at most and the overlap of pairs", () => {
    const requires = [[null], ["micronutrients"], [null], [null], [null]];
    // Fungicide with micronutrients nets 4.50 for $36: at $55 that leaves 19 for less than starter and the others bring.
    expect(picks(runFunction(practicePick, [costs, gains, 4.5, 55, null, null, names, requires]))).toEqual([
      "stabilizer",
      "starter",
      "sulfur",
    ]);
    expect(picks(runFunction(practicePick, [costs, gains, 4.5, 60, null, null, names, null, 1]))).toEqual([
      "fungicide",
    ]);
    const overlap = names.map((_, row) => names.map((__, column) => (row === 0 && column === 3 ? -1.5 : null)));
    const call = [costs, gains, 4.5, 60, null, null, names, null, null, null, null, null, null, overlap];
    expect(picks(runFunction(practicePick, call))).toEqual(["fungicide", "starter", "sulfur"]);
  });
  it("stacks practices on the same factor under the law of the minimum", () => {
    // Fertility allows 180 and takes 4.2 + 7.5; drainage allows 185 and takes 4.6; 184.6 is the lower: a gain of 9.6.
    const call = [
      [[14], [24], [18]],
      gains.slice(0, 3),
      10,
      60,
      null,
      "limiting factor",
      null,
      null,
      null,
      null,
      null,
      [[180], [null], [180 + 5]],
      [["fertility"], ["fertility"], ["drainage"]],
    ];
    const cells = runFunction(practicePick, call);
    // 4.2 + 7.5 lift fertility to 191.7, drainage caps at 185 or 189.6: 50 - 38 = 12 against 96 - 56 = 40.
    expect(cells.at(-1)?.slice(1, 5)).toEqual([3, 56, expect.closeTo(9.6, 9), expect.closeTo(40, 9)]);
  });
  it("leaves out a row without a gain and says so", () => {
    const cells = runFunction(practicePick, [costs, [[4.2], [null], [4.6], [3.6], [1.5]], 4.5, 60]);
    expect(cells[2]).toEqual(["Practice 2", "", "", "", "", "left out: it needs a cost and a gain"]);
  });
  it.each<[string, readonly unknown[], string]>([
    [
      "text among the gains",
      [costs, [["lots"], [1], [2], [3], [4]], 4.5, 60],
      'gains must be a number (bu/ac); got "lots".',
    ],
    [
      "columns of other lengths",
      [costs, [[4.2]], 4.5, 60],
      "gains: it has 1 cell for 5 in costs: give one for each practice, blank where there is none.",
    ],
    [
      "an unknown name",
      [costs, gains, 4.5, 60, [["lime"], [null], [null], [null], [null]]],
      'excludes: "lime" is no practice of this list: use its name in names, or its row number from 1 to 5.',
    ],
    [
      "a practice against itself",
      [costs, gains, 4.5, 60, [["1"], [null], [null], [null], [null]]],
      "excludes: row 1 names itself: name the other practice.",
    ],
    ["blank gains", [costs, blank, 4.5, 60], "waiting for gains"],
    [
      "a pair grid of another size",
      [costs, gains, 4.5, 60, null, null, null, null, null, null, null, null, null, [[1, 2]]],
      "pairGains: it is 1 × 2 for 5 rows of practices: give a square of that size.",
    ],
  ])("answers %s with a sentence", (_name, call, message) => {
    expect(messageOf(runFunction(practicePick, call as Parameters<typeof runFunction>[1]))).toBe(message);
  });
  it("shows the set in its working", () => {
    const shown = explain(practicePick, [costs, gains, 4.5, 60, null, null, names]);
    expect(shown).toMatchObject({
      working: expect.arrayContaining([{ label: "Picked", value: "stabilizer, fungicide, sulfur", unit: "" }]),
    });
  });
});
