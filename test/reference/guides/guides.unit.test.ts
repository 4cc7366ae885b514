import { guides, type Guide } from "../../../src/reference/guides";
import { sources } from "../../../src/reference/sources";

describe.each(Object.entries<Guide>(guides))("guide %s", (code, guide) => {
  it("is labelled by its code and cites sources that exist", () => {
    expect(guide.label).toBe(code);
    expect(guide.sources.length).toBeGreaterThan(0);
    for (const source of guide.sources) expect(sources).toHaveProperty([source]);
  });

  it.each(["P2O5", "K2O"] as const)(
    "ends every run of %s rules split by CEC with one that has no upper bound",
    (half) => {
      const { rules } = guide[half];
      rules.forEach((rule, place) => {
        if (rule.cecUpTo !== undefined) expect(rules[place + 1]?.crops).toEqual(rule.crops);
      });
      expect(rules[rules.length - 1]?.cecUpTo).toBeUndefined();
    },
  );

  it.each(["P2O5", "K2O"] as const)("defines an extraction for every %s rule", (half) => {
    for (const { extractants } of guide[half].rules) {
      for (const extractant of extractants ?? []) expect(guide[half].extractants).toContain(extractant);
    }
  });
});

describe("IN-MI-OH 2020", () => {
  const levels = (half: "P2O5" | "K2O") =>
    guides["IN-MI-OH"][half].rules.map(({ form }) =>
      form.kind === "buildMaintain" ? [form.critical.base, form.critical.base + form.plateau] : [],
    );

  it("prints P levels 20 and 40, 30 and 50, K levels 100 and 130, 120 and 170", () => {
    expect(levels("P2O5")).toEqual([
      [20, 40],
      [30, 50],
    ]);
    expect(levels("K2O")).toEqual([
      [100, 130],
      [120, 170],
    ]);
  });
});

/** Every number of a form, in the order it is written. */
function numbersIn(value: unknown): number[] {
  if (typeof value === "number") return [value];
  return typeof value === "object" && value !== null ? Object.values(value).flatMap(numbersIn) : [];
}

/** Rules, numbers and their sum for each half of a guide: frozen, so that a changed number is news. */
describe("frozen tables", () => {
  it.each([
    ["IN-MI-OH", [2, 18, 140], [2, 18, 358.4]],
    ["IN-MI-OH-1995", [2, 18, 140], [1, 9, 156.7]],
    ["IA", [6, 60, 1431], [4, 40, 3124]],
    ["IL", [3, 30, 241.5], [2, 18, 778]],
    ["KS", [3, 23, 228.789], [4, 29, 817.5648]],
    ["MN", [4, 28, 90.181], [1, 1, 200]],
    ["MN-2018", [4, 28, 90.181], [1, 6, 430]],
    ["MO", [1, 12, 234], [2, 22, 1219]],
    ["MT", [1, 8, 98], [1, 12, 901]],
    ["NC", [20, 60, 4874.5501], [20, 60, 4874.5501]],
    ["ND", [2, 11, 259], [3, 8, 785]],
    ["NE", [14, 38, 424], [2, 9, 643]],
    ["ON", [3, 30, 867], [3, 34, 2400]],
    ["SD", [10, 82, 385.2945], [5, 45, 2061.40413]],
    ["WI", [6, 52, 1170], [6, 54, 2733]],
    ["DE", [1, 3, 175], [1, 3, 490]],
    ["NJ", [1, 4, 277], [1, 4, 543]],
    ["SC", [2, 10, 490], [2, 10, 830]],
  ] as const)("%s", (code, ...halves) => {
    const guide: Guide = guides[code];
    (["P2O5", "K2O"] as const).forEach((half, place) => {
      const numbers = guide[half].rules.flatMap(({ form, classes }) => numbersIn([form, classes]));
      const sum = numbers.reduce((total, each) => total + each, 0);
      expect([guide[half].rules.length, numbers.length, Number(sum.toFixed(6))]).toEqual(halves[place]);
    });
  });
  it("leaves no guide out", () => expect(Object.keys(guides)).toHaveLength(18));
});

describe("what a guide rests on", () => {
  it.each(Object.entries<Guide>(guides))("%s marks every rule and names a source of its own list", (_code, guide) => {
    for (const half of ["P2O5", "K2O"] as const) {
      for (const { mark, source } of guide[half].rules) {
        expect(["V", "M"]).toContain(mark);
        expect(guide.sources).toContain(source);
      }
    }
  });
});
