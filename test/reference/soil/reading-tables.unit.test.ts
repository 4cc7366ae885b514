import {
  bandLimits,
  furrowCorn,
  microRules,
  sulfurRules,
  type BandLimit,
  type MicroForm,
} from "../../../src/reference/soil";
import { sources } from "../../../src/reference/sources";

const sum = (numbers: readonly number[]) => numbers.reduce((total, one) => total + one, 0);

/** Counts and sums added by hand from the printed rows. */
describe("sulfur, micronutrient and salt tables", () => {
  it("keep 10 sulfur rules: factors 0.6 + 0.2 + 0.4, pounds 25 + 12.5 + 10 + 25 + 25", () => {
    expect(sulfurRules).toHaveLength(10);
    expect(sum(sulfurRules.map(({ form }) => (form.kind === "line" ? form.perYield : 0)))).toBeCloseTo(1.2, 9);
    expect(sum(sulfurRules.map(({ form }) => ("lb" in form ? form.lb : 0)))).toBeCloseTo(97.5, 9);
  });

  it("keep 23 micronutrient rules and the sums of their forms", () => {
    expect(microRules).toHaveLength(23);
    const of = <Kind extends MicroForm["kind"]>(kind: Kind) =>
      microRules.flatMap(({ form }) => (form.kind === kind ? [form as Extract<MicroForm, { kind: Kind }>] : [])); // narrowed by its kind
    // Zn 10+5, 10+5; B 2; Cl 20+10
    expect(sum(of("classes").flatMap(({ classes }) => classes.map(({ broadcast }) => broadcast)))).toBe(62);
    // 11.5 + 10 − 32 − 36 − 46 + 60
    expect(sum(of("line").map(({ constant }) => constant))).toBeCloseTo(-32.5, 9);
    // 101.2 + 108.2 + 101.7
    expect(sum(of("index").map(({ constant }) => constant))).toBeCloseTo(311.1, 9);
    // Zn 0.8, 1, 1; Cu 0.5; Fe 50; B 0.5, 0.5; Mg 35
    expect(sum(of("critical").map(({ level }) => level))).toBeCloseTo(89.3, 9);
  });

  it("keep the furrow cells 26 and 18 and the band limits 360 N + K2O", () => {
    expect([sum(furrowCorn.heavier), sum(furrowCorn.sandy)]).toEqual([26, 18]);
    const rows: readonly BandLimit[] = bandLimits.rows;
    expect(sum(rows.map(({ salts }) => salts))).toBe(360);
    expect(sum(rows.flatMap(({ n, p2o5, k2o }) => [n ?? 0, p2o5 ?? 0, k2o ?? 0]))).toBe(120 + 300 + 320);
  });

  it("cite publications that exist", () => {
    for (const { source } of [...sulfurRules, ...microRules]) expect(sources).toHaveProperty([source]);
  });
});
