import {
  creditRows,
  nitrogenGuides,
  oatMinnesota,
  organicRelease,
  type NitrogenGuide,
} from "../../../src/reference/nitrogen";
import { sources } from "../../../src/reference/sources";

const sum = (numbers: readonly number[]) => numbers.reduce((total, one) => total + one, 0);

/** Counts and sums added by hand from the printed tables. */
describe("nitrogen tables", () => {
  it("keep the 50 oat rates: 200 + 160, 200 + 190, 70 + 50, 400 + 350", () => {
    const { rows } = oatMinnesota;
    expect(rows.map(({ low, high }) => [low.length, high.length])).toEqual(rows.map(() => [5, 5]));
    expect(rows.map(({ low, high }) => sum([...low, ...high]))).toEqual([0, 360, 390, 120, 750]);
  });

  it("keep 31 credits and their sum, by region", () => {
    const byGuide = (guide: string) => creditRows.filter((row) => row.guide === guide);
    expect(creditRows).toHaveLength(31);
    const totals = ["WI", "MN", "SD", "ND", "NE", "KS", "IA", "IN-MI-OH"].map((guide) =>
      sum(byGuide(guide).map(({ lb }) => lb)),
    );
    // MN 150+100+40+75+50+0+30+20+10+10+35; SD 150+100+50+0+40+80; NE 45+35+100+50+40+80; KS 120+40+0
    expect(totals).toEqual([190, 520, 420, 40, 350, 160, 50, 0]);
    for (const { source } of creditRows) expect(sources).toHaveProperty([source]);
  });

  it("keep 29 rules of 18 methods, the sum of their yield factors and constants", () => {
    const guides: readonly NitrogenGuide[] = Object.values(nitrogenGuides);
    const rules = guides.flatMap((guide) => guide.rules);
    expect([guides.length, rules.length]).toEqual([18, 29]);
    // NE 1.2, KS 1.6+2.4, SD 1+2.5+1.1+1.3+1.7+3+.05 and 1.5 and 1.2, MN 2.5+1.3+.05+6.5 and 1.2, MO .06, OH 1.33+1.75, 1.2
    expect(sum(rules.map(({ perYield }) => perYield))).toBeCloseTo(34.44, 9);
    // 35 + 150 + 140 + 120 + 110 + 130 − 13 − 47.5
    expect(sum(rules.map(({ constant }) => constant))).toBeCloseTo(624.5, 9);
    for (const { source } of rules) expect(sources).toHaveProperty([source]);
  });

  it("keep the pounds per percent of organic matter: 20 + 20 + 10 + 11.2", () => {
    expect(sum(Object.values(organicRelease).map(({ lbPerPct }) => lbPerPct))).toBeCloseTo(61.2, 9);
  });
});
