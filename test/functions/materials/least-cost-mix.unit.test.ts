import type { CellIn, CellOut, RawArgument } from "../../../src/functions/frame";
import { explain } from "../../../src/functions/frame/explain";
import { runFunction } from "../../../src/functions/frame/run";
import { leastCostMix } from "../../../src/functions/materials/least-cost-mix";

const ask = (...call: RawArgument[]): CellOut[][] => runFunction(leastCostMix, call);
const saysOf = (...call: RawArgument[]) => {
  const [[cell] = []] = ask(...call);
  return typeof cell === "object" ? cell.message : cell;
};
const rowOf = (cells: CellOut[][], item: string) => cells.find(([name]) => name === item);

/** Urea 46-0 at $500 and ammonium sulfate 21 N, 24 S at $400: 12 lb S take 50 lb, whose 10.5 lb N leave 89.5 to urea. */
const analyses = [
  [46, 0],
  [21, 24],
];
const prices = [[500], [400]];
const urea = 89.5 / 0.46;

describe("LEASTCOSTMIX reads", () => {
  const bare = ask([[100, 12]], analyses, prices);

  it("bare numbers, with its own names for materials and nutrients in grade order", () => {
    expect(bare.map(([item]) => item)).toEqual([
      "Item",
      "Material 1",
      "Material 2",
      "All materials",
      "N supplied",
      "P2O5 supplied",
    ]);
    expect(bare[1]?.[1]).toBeCloseTo(urea, 6);
    expect(bare[2]?.[1]).toBeCloseTo(50, 6);
    expect(bare[3]?.[2]).toBeCloseTo(0.25 * urea + 10, 6);
  });

  it.each<[string, RawArgument, RawArgument]>([
    ["needs down a column", [[100], [12]], analyses],
    ["needs named above", [["N", "S"], [100, 12]], analyses], // prettier-ignore
    ["needs named beside, prices as they are", [["N", 100], ["sulfur", 12]], analyses], // prettier-ignore
    ["analyses with names beside", [[100, 12]], [["urea", 46, 0], ["AMS", 21, 24]]], // prettier-ignore
    ["analyses without zeros", [[100, 12]], [[46, null], [21, 24]]], // prettier-ignore
  ])("%s", (_what, needs, table) => {
    const cells = ask(needs, table, prices);
    expect(cells[1]?.[1]).toBeCloseTo(urea, 6);
    expect(cells[2]?.[1]).toBeCloseTo(50, 6);
  });

  it("headed analyses by their headings, in any order, and counts what comes along", () => {
    const cells = ask(
      [["N", "S"], [100, 12]], // prettier-ignore
      [
        ["Material", "S", "K", "N"],
        ["urea", 0, 0, 46],
        ["AMS", 24, 0, 21],
        ["potash", 0, 60, 0],
      ],
      [[500], [400], [420]],
      [
        [null, null],
        [null, null],
        [10, null],
      ],
    );
    expect(rowOf(cells, "urea")?.[1]).toBeCloseTo(urea, 6);
    expect(rowOf(cells, "potash")).toEqual(["potash", 10, 2.1, "at its least of 10 lb/ac; 1 lb less saves $0.21"]);
    expect(rowOf(cells, "K2O supplied")).toEqual(["K2O supplied", 6, "", "none needed"]);
  });

  it("names alone, at their published analyses, with the rows they stand in", () => {
    const names: CellIn[][] = [["urea"], ["ammonium sulfate"]];
    const named = [["N", "S"], [100, 12]]; // prettier-ignore
    const cells = ask(named, names, prices);
    expect(rowOf(cells, "urea")?.[1]).toBeCloseTo(urea, 6);
    expect(explain(leastCostMix, [named, names, prices])).toMatchObject({ cites: [{ mark: "V" }, { mark: "V" }] });
    expect(JSON.stringify(explain(leastCostMix, [[[9]], [["potassium thiosulfate"], ["urea"]], prices]))).toContain(
      "Check against the current bulletin.",
    );
  });

  it("passes over blank rows and leaves out, saying so, a material without a price or an analysis", () => {
    const cells = ask(
      [[100, 12]],
      [["urea", 46, 0], [null, null, null], ["by-product", 30, 0], ["sand", null, null], ["AMS", 21, 24]], // prettier-ignore
      [[500], [null], [null], [5], [400]],
    );
    expect(cells.slice(1, 5).map(([item, , , note]) => [item, note])).toEqual([
      ["urea", ""],
      ["by-product", "no price: left out"],
      ["sand", "no analysis: left out"],
      ["AMS", ""],
    ]);
    expect(cells[1]?.[1]).toBeCloseTo(urea, 6);
  });
});

describe("LEASTCOSTMIX says", () => {
  it("what one more pound costs: N 0.25 / 0.46, sulfur 0.20 / 0.24 less the nitrogen it brings", () => {
    const cells = ask([["N", "S"], [100, 12]], analyses, prices); // prettier-ignore
    expect(rowOf(cells, "N supplied")?.[3]).toBe("just the need of 100; one more lb of N costs $0.54");
    expect(rowOf(cells, "S supplied")?.[3]).toBe("just the need of 12; one more lb of S costs $0.36");
  });

  it("what room in a limit saves: urea at 100 lb against ammonium nitrate, 0.46 / 0.34 × 0.24 - 0.25", () => {
    const cells = ask([[100]], [["urea", 46], ["nitrate", 34]], [[500], [480]], [[100], [null]]); // prettier-ignore
    expect(cells[1]?.[3]).toBe("at its most of 100 lb/ac; 1 lb more room saves $0.0747");
    expect(ask([[46]], [["urea", 46]], [[500]], [[100]])[3]?.[3]).toBe(
      "just the need of 46; one more lb of N cannot be had",
    );
  });

  it("how far a need is passed, and that an overshoot holds", () => {
    const materials = [["DAP", 18, 46], ["TSP", 0, 46]]; // prettier-ignore
    const free = ask([[9, 46]], materials, [[600], [640]]);
    expect(rowOf(free, "N supplied")?.[3]).toBe("9 over the need of 9");
    const held = ask([[9, 46]], materials, [[600], [640]], null, [[3, null]]);
    expect(rowOf(held, "N supplied")?.[3]).toBe("3 over the need of 9, the most allowed; 1 lb more room saves $0.11");
    const exact = ask([[9, 46]], materials, [[600], [640]], null, 0);
    expect(rowOf(exact, "N supplied")?.[3]).toContain("just the need of 9; one more lb of N saves $0.11");
  });

  it("where the salt limit and the load hold", () => {
    const starter = [["10-34-0", 10, 34, 0], ["TSP", 0, 46, 0]]; // prettier-ignore
    const held = ask([[0, 40, 0]], starter, [[600], [1000]], null, null, 5);
    expect(held.at(-1)).toEqual([
      "N + K2O with the seed",
      5,
      "",
      "at the limit of 5 lb/ac; 1 lb more room saves $0.70",
    ]);
    const loose = ask([[0, 40, 0]], starter, [[600], [1000]], null, null, 50);
    expect(loose.at(-1)?.[3]).toBe("under the limit of 50 lb/ac");
    const load = ask([[46]], [["urea", 46], ["by-product", 21]], [[500], [50]], null, null, null, 150); // prettier-ignore
    expect(load[3]?.[3]).toBe("at the limit of 150 lb/ac; 1 lb more room saves $0.16");
  });
});

describe("LEASTCOSTMIX refuses", () => {
  it.each<[string, RawArgument[], string]>([
    ["prices that are too few", [[[100, 12]], analyses, [[500]]], "prices: it has 1 row for 2 materials in analyses"],
    [
      "columns that do not fit the needs",
      [[[100, 12, 5]], analyses, prices],
      "analyses: it has 2 nutrient columns for 3 needs",
    ],
    ["limits that are too few", [[[100, 12]], analyses, prices, [[100]]], "limits: it has 1 row for 2 materials"],
    [
      "limits of three columns",
      [
        [[100, 12]],
        analyses,
        prices,
        [
          [1, 2, 3],
          [1, 2, 3],
        ],
      ],
      "limits: takes one column",
    ],
    [
      "overshoots that are too few",
      [[[1, 2, 3]], [[1, 2, 3]], [[9]], null, [[1, 2]]],
      "overshoot: it has 2 values for 3 needs",
    ],
    [
      "needs in a block",
      [
        [
          [1, 2],
          [3, 4],
        ],
        analyses,
        prices,
      ],
      "needs: give one row or column of pounds per acre",
    ],
    [
      "an unknown nutrient",
      [
        [
          ["N", "salt"],
          [1, 2],
        ],
        analyses,
        prices,
      ],
      'needs "salt" is not known here',
    ],
    [
      "an amount without a name",
      [
        [
          ["N", null],
          [1, 2],
        ],
        analyses,
        prices,
      ],
      "needs: an amount stands there without",
    ],
    [
      "a need no column is headed with",
      [
        [
          ["N", "Zn"],
          [1, 2],
        ],
        [
          ["Name", "N"],
          ["urea", 46],
        ],
        [[500], [1]],
      ],
      "prices: it has 2 rows for 1 material in",
    ],
    [
      "a heading that misses a need",
      [
        [
          ["N", "Zn"],
          [1, 2],
        ],
        [
          ["Name", "N"],
          ["urea", 46],
        ],
        [[500]],
      ],
      "analyses: no column is headed Zn",
    ],
    [
      "a heading that stands twice",
      [
        [[1, 2]],
        [
          ["N", "nitrogen"],
          [46, 46],
        ],
        [[500]],
      ],
      "analyses: N heads two columns",
    ],
    [
      "shares in place of percentages",
      [
        [[100, 12]],
        [
          [0.46, 0],
          [0.21, 0.24],
        ],
        prices,
      ],
      "analyses is in percent: enter 46, not 0.46",
    ],
    [
      "a word among the percentages",
      [
        [[100, 12]],
        [
          [46, 0],
          [21, "much"],
        ],
        prices,
      ],
      "analyses must be a number (%)",
    ],
    ["a name it has no analysis for", [[[100]], [["moon dust"]], [[1]]], 'analyses "moon dust" is not known here'],
    [
      "a name that is sold at many analyses",
      [[[100]], [["borate"]], [[1]]],
      "analyses: borate is sold at 11 to 20.5 % B",
    ],
    [
      "a least rate of what has no price",
      [
        [[100, 12]],
        analyses,
        [[500], [null]],
        [
          [null, null],
          [5, null],
        ],
      ],
      "limits: Material 2 has a least of 5 lb/ac but no price",
    ],
    [
      "a need out of reach: 10 × 0.46 + 10 × 0.21",
      [[[100, 2]], analyses, prices, [[10], [10]]],
      "needs: N cannot be met: within the limits the materials supply at most 6.7 of the 100 lb/ac",
    ],
  ])("%s", (_what, call, sentence) => {
    expect(saysOf(...call)).toContain(sentence);
  });

  it("nothing while it waits for needs, analyses or prices", () => {
    expect(ask([[null, null]], analyses, prices)).toEqual([[{ code: "#N/A", message: "waiting for needs" }]]);
    expect(ask([[1, 2]], [[null, null]], prices)).toEqual([[{ code: "#N/A", message: "waiting for analyses" }]]);
    expect(ask([[1, 2]], analyses, [[null], [null]])).toEqual([[{ code: "#N/A", message: "waiting for prices" }]]);
  });

  it("and names the pair that clashes", () => {
    const message = saysOf([[20, 60]], [["DAP", 18, 46]], [[700]], null, [[0, null]]);
    expect(message).toMatch(/^needs: N and P2O5 can each be met alone but not together/);
  });
});
