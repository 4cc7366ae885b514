import { allFunctions } from "../../../src/functions";
import { isCellError } from "../../../src/functions/frame/cell";
import { calculate } from "../../../src/hosts/engine";
import type { CalculatedWorkbook } from "../../../src/hosts/calculated-workbook";
import { findingsIn } from "../../../src/workbook/findings";
import type { CellPlan, SheetPlan, WorkbookPlan } from "../../../src/workbook/plan";
import type { Picture, TriedAcre } from "../../../src/workbook/pictures/picture";
import { planPicture } from "../../../src/workbook/pictures/plan-picture";
import { readingOfPlan } from "../findings/reading-of-plan";
import { cell, plan, sheet } from "../../hosts/plan-parts";
import { retyped } from "../retyped";

const madeOn = "January 15, 2027";

/** A workbook of a person: an acre on one sheet, three fields of a ledger on the other. */
const own = plan([
  sheet("My acre", [
    ...[58, 10.6, 620, 0.12, 5].map((value, row) => cell(row, 1, value)),
    cell(6, 0, "written by the person"),
  ]),
  sheet("Potash ledger", [
    ...["Mill Road", "Creek Bend", "Home Quarter"].map((name, row) => cell(row + 1, 0, name)),
    ...[-31.2, 11.8, 1.5].map((amount, row) => cell(row + 1, 11, amount)),
    ...[138, 160, 121].map((now, row) => cell(row + 1, 12, now)),
    ...[141, 158, 130].map((byPlan, row) => cell(row + 1, 13, byPlan)),
    ...[120, 139, 104].map((nothing, row) => cell(row + 1, 14, nothing)),
  ]),
]);
const taken = { sheets: own.sheets.map(({ name }) => name), names: [], tables: [] };

const inLedger = (row: number, column: number) => ({ sheet: "Potash ledger", row: row + 1, column });
const inAcre = (row: number) => ({ follows: { sheet: "My acre", row, column: 1 } });
const acre: TriedAcre = {
  yield: inAcre(0),
  price: inAcre(1),
  cost: inAcre(2),
  perBushel: inAcre(3),
  other: inAcre(4),
};

const pictures = {
  ledger: {
    kind: "ledger",
    trade: "potash",
    rows: [0, 1, 2].map((row) => ({ field: inLedger(row, 0), perYear: inLedger(row, 11) })),
  },
  drift: {
    kind: "drift",
    trade: "potash",
    rows: [0, 1, 2].map((row) => ({
      field: inLedger(row, 0),
      now: inLedger(row, 12),
      byPlan: inLedger(row, 13),
      nothingOn: inLedger(row, 14),
    })),
  },
  grid: { kind: "grid", crop: "soybean", tried: { ...acre, yield: { value: 60 } }, yieldStep: 4, priceStep: 0.5 },
  tornado: {
    kind: "tornado",
    crop: "soybean",
    tried: acre,
    swings: [
      { name: "Yield", moves: "yield", low: 48, high: 68 },
      { name: "Price", moves: "price", low: 9.2, high: 12 },
      { name: "Land rent", moves: { planned: 200 }, low: 180, high: 260 },
    ],
  },
  pairs: {
    kind: "pairs",
    name: "fungicide in Home Quarter",
    design: "pairs",
    confidencePct: 90,
    treatments: { check: "check", treated: "fungicide" },
    // The printed example of TRIALPAIRS with one pair more, of which a strip was lost.
    pairs: [
      [180, 187.1],
      [176, 179.4],
      [171, 180.8],
      [183, 188.2],
      [190, 188.5],
      [174, 180.6],
      [181, null],
    ].map(([check = null, treated = null], index) => ({ block: index + 1, check, treated })),
    money: { priceUsdPerBu: 4.5, costUsdPerAc: 18.5 },
  },
  blocks: {
    kind: "blocks",
    name: "",
    design: "blocks",
    confidencePct: 95,
    check: "none",
    // The printed example of TRIALBLOCKS.
    strips: (
      [
        ["none", 30, 26, 32],
        ["early", 35, 27, 33],
        ["late", 43, 35, 45],
      ] as const
    ).flatMap(([treatment, ...yields], at) =>
      yields.map((yieldBuPerAc, block) => ({ strip: block * 3 + at + 1, block: block + 1, treatment, yieldBuPerAc })),
    ),
    money: {
      priceUsdPerBu: 10,
      costs: [
        { treatment: "none", usdPerAc: 5 },
        { treatment: "early", usdPerAc: 15 },
        { treatment: "late", usdPerAc: 25 },
      ],
    },
  },
} as const satisfies Record<string, Picture>;

interface Shown {
  readonly plan: WorkbookPlan;
  readonly sheet: SheetPlan;
  readonly book: CalculatedWorkbook;
  /** The cells of the row that begins with these words; of the first such row from a row on. */
  row(label: string, from?: number): unknown[];
  find(content: string): CellPlan;
  /** The sentence of a trial. */
  words(): unknown;
}

/** The picture's sheet in the person's workbook, calculated with it. */
async function show(picture: Picture, workbook: WorkbookPlan = own): Promise<Shown> {
  const made = planPicture(picture, madeOn, taken);
  const [added] = made.sheets;
  if (!added || made.sheets.length !== 1) throw new Error("one sheet is wanted");
  const book = await calculate({ ...made, sheets: [...workbook.sheets, added] }, allFunctions);
  const right = Math.max(...added.cells.map(({ column }) => column));
  const bottom = Math.max(...added.cells.map(({ row }) => row));
  const at = (row: number, column: number) => {
    const value = book.valueAt(added.name, row, column);
    return isCellError(value) ? value.code : value;
  };
  const find = (content: string) => {
    const found = added.cells.find((one) => one.content === content);
    if (!found) throw new Error(`no cell ${content}`);
    return found;
  };
  return {
    plan: made,
    sheet: added,
    book,
    row(label, from = 0) {
      for (let row = from; row <= bottom; row++) {
        if (at(row, 0) === label) return Array.from({ length: right + 1 }, (_, column) => at(row, column));
      }
      throw new Error(`no row ${label}`);
    },
    find,
    words: () => at(find("In words").row + 1, 0),
  };
}

/** The workbook with another number on the acre. */
function withAcre(row: number, value: number): WorkbookPlan {
  return retyped(own, own.sheets[0]?.name ?? "", { row, column: 1 }, value);
}

describe.each(Object.entries(pictures))("the sheet of %s", (_kind, picture: Picture) => {
  it("is one new sheet that says when it was made and what is live, and shows no error", async () => {
    const { plan: made, sheet: added, book } = await show(picture);
    expect(made.names).toEqual([]);
    expect(added.tables).toEqual([]);
    expect(added.cells.some(({ content }) => String(content).startsWith(`Made ${madeOn}.`))).toBe(true);
    const errors = added.cells.filter(({ row, column }) => isCellError(book.valueAt(added.name, row, column)));
    expect(errors).toEqual([]);
  });

  it("has a chart of cells on its own sheet, described in words that stand below it as well; the grid is a table", () => {
    const [added] = planPicture(picture, madeOn, taken).sheets;
    const charts = added?.charts ?? [];
    expect(charts).toHaveLength(picture.kind === "grid" ? 0 : 1);
    for (const { alt, categories, series, at } of charts) {
      expect(alt.length).toBeGreaterThan(60);
      const below = (added?.cells ?? []).filter(({ row, style }) => row > at.bottom && style === "says");
      expect(below.map(({ content }) => content).join(" ")).toContain(alt);
      const [rows] = [categories.area.bottom - categories.area.top];
      for (const { values } of series) {
        expect([values.sheet, values.area.bottom - values.area.top]).toEqual([added?.name, rows]);
      }
    }
  });

  it("takes a free name and leaves the other sheets alone", () => {
    const [first] = planPicture(picture, madeOn, taken).sheets;
    const again = planPicture(picture, madeOn, {
      ...taken,
      sheets: [...taken.sheets, first?.name.toUpperCase() ?? ""],
    });
    expect(again.sheets.map(({ name }) => name)).toEqual([`${first?.name} 2`]);
  });

  it("has nothing for the workbook check to ask", async () => {
    const { plan: made, book } = await show(picture);
    const findings = findingsIn(readingOfPlan(made, book), [], { year: 2027, serial: 46_402 });
    expect(findings).toEqual([]);
  });
});

describe("the ledger by field", () => {
  it("follows the ledger, in numbers and in words", async () => {
    const { row } = await show(pictures.ledger);
    expect(row("Mill Road")).toEqual(["Mill Road", -31.2, "▼ draws potash down by 31 lb/ac a year"]);
    expect(row("Creek Bend")).toEqual(["Creek Bend", 11.8, "▲ builds potash by 12 lb/ac a year"]);
    expect(row("Home Quarter")).toEqual(["Home Quarter", 1.5, "● holds its potash"]);
  });
  it("points to the person's cells, both ways fixed", () => {
    const [added] = planPicture(pictures.ledger, madeOn, taken).sheets;
    const formulas = (added?.cells ?? []).flatMap(({ content }) =>
      typeof content === "object" ? [content.formula] : [],
    );
    expect(formulas).toEqual(expect.arrayContaining(["='Potash ledger'!$A$2", "='Potash ledger'!$L$2"]));
  });
  it("is refused where it would point to a sheet that is not there", () => {
    expect(() => planPicture(pictures.ledger, madeOn, { sheets: [], names: [], tables: [] })).toThrow("no sheet");
  });
});

it("the drift of the soil test follows the ledger", async () => {
  const { row, sheet: added } = await show(pictures.drift);
  expect(row("Creek Bend").slice(0, 4)).toEqual(["Creek Bend", 160, 158, 139]);
  expect(added.charts[0]?.series.map(({ name }) => name)).toEqual(["Now", "By the plan", "Nothing put on"]);
});

describe("the profit grid", () => {
  const gridOf = async (workbook: WorkbookPlan) => {
    const { book, sheet: added, find } = await show(pictures.grid, workbook);
    const top = find("bu/ac down, $/bu across").row;
    return (down: number, across: number) => book.valueAt(added.name, top + down, across);
  };
  it("stands around the acre as tried", async () => {
    const at = await gridOf(own);
    expect([1, 4, 7].map((down) => at(down, 0))).toEqual([48, 60, 72]);
    expect([1, 4, 7].map((across) => at(0, across))).toEqual([9.1, 10.6, 12.1]);
    expect(at(4, 4)).toBeCloseTo(60 * (10.6 - 0.12) + 5 - 620, 6); // 13.80
    expect(at(1, 1)).toBeCloseTo(48 * (9.1 - 0.12) + 5 - 620, 6); // -183.96
    expect(at(7, 7)).toBeCloseTo(72 * (12.1 - 0.12) + 5 - 620, 6); // 247.56
  });
  it("follows the cells it is tied to and keeps the yield that was tried", async () => {
    const at = await gridOf(withAcre(1, 11));
    expect([at(4, 0), at(0, 4)]).toEqual([60, 11]);
    expect(at(4, 4)).toBeCloseTo(60 * (11 - 0.12) + 5 - 620, 6); // 37.80
  });
  it("colors gain and loss apart, with white at zero", () => {
    const [added] = planPicture(pictures.grid, madeOn, taken).sheets;
    expect(added?.rules).toMatchObject([{ kind: "scale", middle: "#ffffff", middleAt: 0 }]);
  });
});

describe("what moves profit most", () => {
  it("works out profit with each figure at its ends", async () => {
    const { row, find } = await show(pictures.tornado);
    const from = find("Figure").row;
    // 58 × 10.48 + 5 − 620 = −7.16
    expect(row("An acre leaves")[1]).toBeCloseTo(-7.16, 6);
    const numbers = (label: string) => row(label, from).slice(5) as number[];
    const expected = {
      Yield: [48 * 10.48 - 615, 68 * 10.48 - 615, -104.8, 104.8],
      Price: [58 * 9.08 - 615, 58 * 11.88 - 615, -81.2, 81.2],
      "Land rent": [-7.16 + 20, -7.16 - 60, 20, -60],
    };
    for (const [label, wanted] of Object.entries(expected)) {
      numbers(label).forEach((value, index) => expect(value).toBeCloseTo(wanted[index] ?? Number.NaN, 6));
    }
  });
  it("follows the cells of the acre", async () => {
    const { row, find } = await show(pictures.tornado, withAcre(2, 600));
    const [, , , tried, , atLow, , change] = row("Yield", find("Figure").row);
    expect(tried).toBe(58);
    expect(atLow).toBeCloseTo(48 * 10.48 + 5 - 600, 6);
    expect(change).toBeCloseTo(-104.8, 6);
  });
});

describe("strip differences", () => {
  it("in pairs: every gain, the mean with its range and what pays, as the printed example has them", async () => {
    const { row, find, words } = await show(pictures.pairs);
    const from = find("Pair").row;
    expect(row("Pair 1", from).slice(1, 4)).toEqual([180, 187.1, expect.closeTo(7.1, 6)]);
    expect(row("Pair 7", from)[3]).toBe("");
    const gain = (label: string) => row(label, from)[3];
    expect(gain("Mean of all")).toBeCloseTo(5.1, 6);
    expect(gain("Likely from")).toBeCloseTo(1.918, 3);
    expect(gain("Likely to")).toBeCloseTo(8.282, 3);
    expect(gain("Gain that pays")).toBeCloseTo(18.5 / 4.5, 6);
    expect(words()).toBe(
      "The gain is 5.1 bu/ac, likely between 1.9 and 8.3; at $4.50/bu and a cost of $18.50/ac the chance that it pays is 72 %.",
    );
  });
  it("without money speak of none", async () => {
    const { name, design, confidencePct, treatments, pairs } = pictures.pairs;
    const { words, sheet: added } = await show({ kind: "pairs", name, design, confidencePct, treatments, pairs });
    expect(words()).toBe("The gain is 5.1 bu/ac, likely between 1.9 and 8.3.");
    expect(added.cells.map(({ content }) => content)).not.toContain("Gain that pays");
  });
  it("in blocks: the gain of each treatment, best first, as the printed example has them", async () => {
    const { row, find, words } = await show(pictures.blocks);
    const from = find("Treatment, best first").row;
    const near = (value: number) => expect.closeTo(value, 3) as number;
    expect(row("late", from)).toEqual(["late", 41, near(11.6667), near(7.9647), near(15.3686), near(2)]);
    expect(row("early", from)).toEqual(["early", near(31.6667), near(2.3333), near(-1.3686), near(6.0353), near(1)]);
    expect(row("none", from).slice(0, 3)).toEqual(["none", near(29.3333), "check"]);
    expect(words()).toContain("The gain of late over none is 11.7 bu/ac, likely between 8.0 and 15.4");
  });
});
