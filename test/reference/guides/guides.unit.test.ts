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
