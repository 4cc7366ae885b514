import fc from "fast-check";
import { cornLeaves, stageHeat } from "../../../src/core/seed/corn-stage";
import { heatUnits } from "../../../src/core/seed/heat-units";
import { maturityMargin, maturityNeed } from "../../../src/core/seed/maturity-margin";
import { stageDays } from "../../../src/core/seed/stage-days";
import { faultOf } from "../fault-of";

const oneDay = (max: number, min: number, base: number | null = null, cap: number | null = null) =>
  heatUnits({ maxTemps: [max], minTemps: [min], base, cap }).heatUnits;

describe("Ohio State University AGF-101 and University of Minnesota: the 86/50 rule", () => {
  it.each([
    [80, 60, 20],
    [60, 40, 5],
    [66, 50, 8],
  ])("%i/%i °F: %i", (max, min, printed) => {
    expect(oneDay(max, min)).toBe(printed);
  });
  // A field-guide article prints 17.5 for this day: the mean of 86 and 55 less 50 is 20.5.
  it("90/55 °F: 20.5 by the rule", () => {
    expect(oneDay(90, 55)).toBe(20.5);
  });
});

describe("heatUnits", () => {
  it("has no cap on another base: 60/40 on 32 is 18, 30/20 is none, 100/70 is 53", () => {
    expect([oneDay(60, 40, 32), oneDay(30, 20, 32), oneDay(100, 70, 32)]).toEqual([18, 0, 53]);
  });
  it("holds days between a base and a cap of one's own: 95 and 40 between 45 and 90: 22.5", () => {
    expect(oneDay(95, 40, 45, 90)).toBe(22.5);
  });
  it("passes over days blank in both lists and waits for half a day", () => {
    const run = (maxTemps: (number | null)[], minTemps: (number | null)[]) =>
      heatUnits({ maxTemps, minTemps, base: null, cap: null });
    expect(run([80, null, 66], [60, null, 50])).toMatchObject({ heatUnits: 28, days: 2 });
    expect(faultOf(() => run([80, 66], [60, null]))).toEqual({ kind: "waiting", argument: "minTemps" });
    expect(faultOf(() => run([80, 66], [60]))).toMatchObject({ kind: "sizesDiffer" });
    expect(faultOf(() => run([60], [80]))).toMatchObject({ kind: "refused", argument: "minTemps" });
    expect(faultOf(() => oneDay(80, 60, 60, 60))).toMatchObject({ kind: "refused", argument: "cap" });
  });
  it("lies between 0 and 36 a day, and never falls when a day is warmer", () => {
    const temperature = fc.integer({ min: -40, max: 120 });
    fc.assert(
      fc.property(temperature, temperature, fc.integer({ min: 0, max: 10 }), (a, b, warmer) => {
        const [min, max] = a < b ? [a, b] : [b, a];
        const units = oneDay(max, min);
        expect(units).toBeGreaterThanOrEqual(0);
        expect(units).toBeLessThanOrEqual(36);
        expect(oneDay(max + warmer, min)).toBeGreaterThanOrEqual(units);
      }),
    );
  });
  it("is the same in Celsius: the rule with 30 and 10 °C gives it in parts of 1.8", () => {
    fc.assert(
      fc.property(fc.integer({ min: -20, max: 30 }), fc.integer({ min: 0, max: 20 }), (low, span) => {
        const held = (celsius: number) => Math.min(30, Math.max(10, celsius));
        const celsius = (held(low + span) + held(low)) / 2 - 10;
        expect(oneDay((low + span) * 1.8 + 32, low * 1.8 + 32)).toBeCloseTo(celsius * 1.8, 9);
      }),
    );
  });
});

describe("stageDays", () => {
  it("counts whole days: 115 at 16 a day take 8, 112 take 7", () => {
    expect(stageDays({ needed: 115, daily: [16] }).days).toBe(8);
    expect(stageDays({ needed: 112, daily: [16] }).days).toBe(7);
  });
  it("goes day by day along a list: 5 + 0 + 12 + 20 passes 30 on the fourth day", () => {
    expect(stageDays({ needed: 30, daily: [5, 0, 12, 20, 20] })).toEqual({ days: 4, reached: 37 });
  });
  it("says how far a short list comes, and refuses a day that never warms", () => {
    expect(faultOf(() => stageDays({ needed: 30, daily: [5, 6] }))).toMatchObject({
      because: "adds up to 11 in 2 days; 30 are needed. List more days.",
    });
    expect(faultOf(() => stageDays({ needed: 30, daily: [0] }))).toMatchObject({ kind: "refused" });
    expect(stageDays({ needed: 0, daily: [0] }).days).toBe(0);
  });
});

describe("corn leaves", () => {
  it("Purdue: V10 at 115 + 820, V14 at 200 more; Iowa: 115 + 840, 224 more", () => {
    const heat = (leaf: number, guide: "purdue" | "iowa") => stageHeat({ leaf, guide }).heatUnits;
    expect([heat(0, "purdue"), heat(10, "purdue"), heat(14, "purdue")]).toEqual([115, 935, 1135]);
    expect([heat(10, "iowa"), heat(14, "iowa")]).toEqual([955, 1179]);
  });
  it("reads back the leaf it started from, and one unit less the leaf before", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 22 }),
        fc.constantFrom("purdue" as const, "iowa" as const),
        (leaf, guide) => {
          const { heatUnits: needed } = stageHeat({ leaf, guide });
          expect(cornLeaves({ heatUnits: needed, guide }).leaves).toBe(leaf);
          expect(cornLeaves({ heatUnits: needed - 1, guide })).toMatchObject({ leaves: leaf - 1, toNextLeaf: 1 });
        },
      ),
    );
  });
  it("knows corn that is not up and corn with all its leaves", () => {
    expect(cornLeaves({ heatUnits: 100, guide: "purdue" })).toMatchObject({ leaves: null, toNextLeaf: 15 });
    expect(faultOf(() => cornLeaves({ heatUnits: 2000, guide: "purdue" }))).toMatchObject({ kind: "notPublished" });
  });
});

describe("Purdue University, hybrids planted late", () => {
  /** May 31, 2026. */
  const may31 = 46_173;
  const need = (plantedOn: number | null, ratedFrom: "planting" | "emergence" = "planting") =>
    maturityNeed({ rating: 2700, plantedOn, ratedFrom }).heatUnits;
  it("2,700 heat units planted May 31: 2,496", () => {
    expect(need(may31)).toBe(2496);
  });
  it("changes nothing to May 1, and adds 115 for a rating from emergence", () => {
    expect([need(null), need(may31 - 30), need(may31 - 40), need(may31, "emergence")]).toEqual([
      2700, 2700, 2700, 2611,
    ]);
  });
  it("ends at mid June", () => {
    expect(need(may31 + 15)).toBeCloseTo(2700 - 45 * 6.8, 9);
    expect(faultOf(() => need(may31 + 16))).toMatchObject({ kind: "notPublished", instead: "It goes to Jun 15." });
  });
  it("spares what is left over the need, below 0 when it is not enough", () => {
    const margin = (heatUnitsLeft: number) =>
      maturityMargin({ heatUnitsLeft, rating: 2700, plantedOn: may31, ratedFrom: "planting" }).margin;
    expect([margin(2550), margin(2400)]).toEqual([54, -96]);
  });
});
