import { isCellError } from "../../../src/functions/frame";
import { runFunction } from "../../../src/functions/frame/run";
import { trialAddUp } from "../../../src/functions/trials/trial-add-up";
import { trialBlocks } from "../../../src/functions/trials/trial-blocks";
import { trialLayout } from "../../../src/functions/trials/trial-layout";
import { trialPairs } from "../../../src/functions/trials/trial-pairs";
import { trialPool } from "../../../src/functions/trials/trial-pool";
import { trialSize } from "../../../src/functions/trials/trial-size";
import { trialStripYield } from "../../../src/functions/trials/trial-strip-yield";
import { trialTrend } from "../../../src/functions/trials/trial-trend";
import { varietyMeans } from "../../../src/functions/trials/variety-means";

const column = (values: readonly (string | number | null)[]) => values.map((value) => [value]);

function sentence(fn: Parameters<typeof runFunction>[0], call: Parameters<typeof runFunction>[1]): string {
  const cell = runFunction(fn, call)[0]?.[0] ?? null;
  return isCellError(cell) ? `${cell.code} ${cell.message ?? ""}` : `answered ${String(cell)}`;
}

const treatments = column(["none", "early", "none", "early", "none", "early"]);
const blocks = column([1, 1, 2, 2, 3, 3]);
const yields = column([180, 186, 176, 180, 171, 180]);

describe("what stops a trial, in a sentence", () => {
  it.each([
    ["one pair", trialPairs, [column([180]), column([186])], "two pairs are the least"],
    [
      "unequal lengths",
      trialPairs,
      [column([180, 176]), column([186])],
      "check (2 strips) and treated (1 strip) differ",
    ],
    [
      "text in a yield",
      trialPairs,
      [column([180, "hail"]), column([186, 190])],
      'check must be a number (bu/ac); got "hail"',
    ],
    ["nothing yet", trialPairs, [column([null, null]), column([186, 190])], "#N/A waiting for check"],
    ["a cost without a price", trialPairs, [column([180, 176]), column([186, 179]), 90, null, 18], "waiting for price"],
    ["pairs all alike", trialPairs, [column([180, 176]), column([186, 182])], "Every pair differs by the same amount"],
    ["one block", trialBlocks, [column(["a", "b"]), column([1, 1]), column([180, 186])], 'blocks: only "1" has yields'],
    ["one treatment", trialBlocks, [column(["a", "a"]), column([1, 2]), column([180, 186])], "a comparison needs two"],
    ["a strip too few", trialBlocks, [treatments, blocks, column([180, 186, 176])], "yields (3 cells) differ in size"],
    ["text in a yield column", trialBlocks, [treatments, blocks, column([180, 186, "wet", 1, 1, 1])], 'got "wet"'],
    [
      "a strip named twice",
      trialBlocks,
      [treatments, column([1, 1, 1, 2, 2, 2]), yields],
      '"none" stands twice in "1"',
    ],
    ["a block without a name", trialBlocks, [treatments, column([1, 1, null, 2, 3, 3]), yields], "waiting for blocks"],
    [
      "an unknown check",
      trialBlocks,
      [treatments, blocks, yields, 90, "control"],
      'check "control" is not known here. Use: none, early.',
    ],
    [
      "costs for the wrong number",
      trialBlocks,
      [treatments, blocks, yields, 90, "none", 4, column([1, 2, 3])],
      "costs (3 cells) and treatments (2 names)",
    ],
    ["pooled lists of unlike length", trialPool, [column([1, 2, 3]), column([1, 2])], "gains (3 cells)"],
    ["text among pooled gains", trialPool, [column([1, "none"]), column([1, 2])], "gains must be a number"],
    [
      "adding up with a strip too few",
      trialAddUp,
      [column([1, 2]), column([1, 2]), column([1, 2]), column([1])],
      "check (2 cells) and both (1 cell)",
    ],
    [
      "adding up with text in a yield",
      trialAddUp,
      [column([1, 2]), column([1, "hail"]), column([1, 2]), column([1, 2])],
      'a must be a number (bu/ac); got "hail"',
    ],
    [
      "adding up in one block",
      trialAddUp,
      [column([50]), column([56]), column([53]), column([62])],
      "without a second one nothing tells ground from treatment",
    ],
    [
      "a trend of unlike lengths",
      trialTrend,
      [column([1, 2, 3]), column(["check", "a"]), column([1, 2, 3]), "check"],
      "positions (3 cells) and treatments (2 cells)",
    ],
    [
      "a trend with text in a yield",
      trialTrend,
      [column([1, 2, 3]), column(["check", "a", "check"]), column([1, "wet", 3]), "check"],
      'yields must be a number (bu/ac); got "wet"',
    ],
    [
      "varieties at one location",
      varietyMeans,
      [column(["a", "b"]), column(["n", "n"]), column([180, 190])],
      'locations: only "n" has yields',
    ],
    [
      "varieties of unlike lengths",
      varietyMeans,
      [column(["a", "b"]), column(["n", "n", "s"]), column([180, 190])],
      "varieties (2 cells) and locations (3 cells)",
    ],
    [
      "traits for some varieties only",
      varietyMeans,
      [column(["a", "b", "a", "b"]), column(["n", "n", "s", "s"]), column([1, 2, 3, 5]), column(["no"])],
      "varieties (4 cells) and mustHave (1 cell)",
    ],
    [
      "varieties with text in a yield",
      varietyMeans,
      [column(["a", "b", "a", "b"]), column(["n", "n", "s", "s"]), column([1, "hail", 3, 5])],
      'got "hail"',
    ],
    ["one block in a layout", trialLayout, [column(["a", "b"]), 1, 1], "blocks must be between 2 and 100"],
    ["words for a weight", trialStripYield, ["wet", 500, 20, 14, "corn"], 'weight must be a number (lb); got "wet"'],
    [
      "a strip lost where none can be",
      trialBlocks,
      [column(["a", "b", "a"]), column([1, 1, 2]), column([1, 2, 3])],
      "too few strips are left",
    ],
    [
      "treatments that never meet",
      trialBlocks,
      [column(["a", "b", "c", "d", "a", "b"]), column([1, 1, 2, 2, 3, 3]), yields],
      "cannot be told from the treatment",
    ],
    [
      "three in pairs",
      trialLayout,
      [column(["a", "b", "c"]), 4, 1, "pairs"],
      "pairs and a split planter take two; got 3",
    ],
    ["a name twice", trialLayout, [column(["a", "b", "a"]), 4, 1], '"a" is named twice'],
    ["half a block", trialLayout, [column(["a", "b"]), 4.5, 1], "blocks: must be a whole number; got 4.5"],
    ["a share for a percentage", trialSize, [5, 6, 0.9], "confidence is in percent: enter 90, not 0.9"],
    ["a hopeless gain", trialSize, [0.1, 20], "More than 1000 blocks would be needed"],
    ["a spread in other units", trialSize, [100, 0.05], "is tiny beside a gain of 100 bu/ac"],
    ["one field", trialPool, [column([5]), column([2])], "at least two fields or years; got one"],
    ["a gain without its error", trialPool, [column([5, 3]), column([2, null])], "waiting for standardErrors"],
    [
      "one check strip",
      trialTrend,
      [column([1, 2]), column(["check", "a"]), column([180, 190]), "check"],
      "at least two strips",
    ],
    ["no check at all", trialAddUp, [column([null]), column([1]), column([1]), column([1])], "waiting for check"],
    [
      "no variety left",
      varietyMeans,
      [treatments, blocks, yields, column(["no", "no", "no", "no", "no", "no"])],
      "no variety has what you need",
    ],
    [
      "a crop with no market moisture",
      trialStripYield,
      [900, 500, 20, 14, "peanut"],
      "Enter marketMoisture, the buyer's own.",
    ],
  ] as const)("%s", (_what, fn, call, expected) => {
    expect(sentence(fn, call)).toContain(expected);
  });
});

function rowOf(cells: ReturnType<typeof runFunction>, label: string) {
  return cells.find(([first]) => first === label);
}

describe("TRIALBLOCKS", () => {
  it("judges a lost strip and names it", () => {
    const cells = runFunction(trialBlocks, [treatments, blocks, column([180, 186, 176, null, 171, 180])]);
    expect(rowOf(cells, "Without a yield")?.[1]).toBe(
      "early in block 2; means are as if every treatment stood in every block",
    );
    // Two complete pairs are left: gains of 6 and 9.
    expect(rowOf(cells, "early")?.[4]).toBeCloseTo(7.5, 8);
    expect(rowOf(cells, "LSD, for planned differences")?.[1]).toBe("differs by pair");
  });
  it("says so where a treatment is not listed in a block at all", () => {
    const cells = runFunction(trialBlocks, [
      column(["a", "b", "c", "a", "b", "c", "a", "b"]),
      column([1, 1, 1, 2, 2, 2, 3, 3]),
      column([30, 35, 43, 26, 27, 35, 32, 33]),
    ]);
    expect(rowOf(cells, "Without a yield")?.[1]).toMatch(/^c in block 3; /);
  });
  it("takes one cost for all but the check, or one for each, and holds costs against that of the check", () => {
    const one = runFunction(trialBlocks, [treatments, blocks, yields, 90, "none", 4, 10]);
    // Gains 6, 4 and 9: mean 6.333, so 4 × 6.333 - 10.
    expect(rowOf(one, "early")?.[8]).toBeCloseTo(15.3333, 4);
    const each = runFunction(trialBlocks, [treatments, blocks, yields, 90, "none", 4, column([2, 12, null])]);
    expect(rowOf(each, "early")).toEqual(rowOf(one, "early"));
    expect(String(rowOf(each, "In words")?.[1])).toMatch(
      /^The gain of early over none is 6\.3 bu\/ac, likely between .* at \$4\/bu and a cost of \$10\/ac/,
    );
  });
  it("reads a rate of 0 as a treatment's name", () => {
    const cells = runFunction(trialBlocks, [column([0, 40, 0, 40, 0, 40]), blocks, yields]);
    expect(rowOf(cells, "0")?.[4]).toBe("check");
    expect(rowOf(cells, "40")?.[4]).toBeCloseTo(6.3333, 4);
  });
});

test("TRIALADDUP names a treatment that is missing from a block", () => {
  const cells = runFunction(trialAddUp, [
    column([50, 54, 51]),
    column([56, 58, null]),
    column([53, 59, 55]),
    column([62, 64, 61]),
  ]);
  expect(rowOf(cells, "Without a yield")?.[1]).toMatch(/^a in block 3; /);
});

test("TRIALPAIRS leaves out a pair with a lost strip", () => {
  const cells = runFunction(trialPairs, [column([180, 176, 171]), column([186, null, 180])]);
  expect(rowOf(cells, "Pairs")?.[1]).toBe(2);
  expect(rowOf(cells, "Gain")?.[1]).toBeCloseTo(7.5, 10);
});

test("VARIETYMEANS ranks only what has the traits, and the chances still add to 1", () => {
  const varieties = column(["A", "A", "A", "B", "B", "B", "C", "C", "C"]);
  const places = column(["n", "m", "s", "n", "m", "s", "n", "m", "s"]);
  const measured = column([200, 190, 180, 208, 189, 185, 190, 194, 171]);
  const answers = column(["yes", null, null, "no", null, null, null, null, null]);
  const cells = runFunction(varietyMeans, [varieties, places, measured, answers]);
  expect(cells.map(([first]) => first)).toEqual(["Variety", "A", "C"]);
  expect(Number(cells[1]?.[6]) + Number(cells[2]?.[6])).toBeCloseTo(1, 10);
  // B is left out of the ranking but still informs the spread: A keeps its shrunken mean.
  expect(cells[1]?.[3]).toBeCloseTo(189.7878, 4);
});

test("TRIALSTRIPYIELD takes a contract's moisture in place of the market's", () => {
  const [[market], [contract]] = [
    runFunction(trialStripYield, [3400, 600, 20, 19.2, "corn"]),
    runFunction(trialStripYield, [3400, 600, 20, 19.2, "corn", 15]),
  ];
  // Dry matter is shared out at 85 in place of 84.5 %.
  expect(Number(contract?.[0]) / Number(market?.[0])).toBeCloseTo(84.5 / 85, 10);
});
