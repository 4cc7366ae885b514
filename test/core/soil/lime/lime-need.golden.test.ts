import { askLime } from "./ask";

/** Bulletin E-2567: tons of 90 % limestone to pH 6.8, 6.5 and 6.0 by lime test index. */
const limeTestIndex = [
  [68, 1.4, 1.2, 1.0],
  [67, 2.4, 2.1, 1.7],
  [66, 3.4, 2.9, 2.4],
  [65, 4.5, 3.8, 3.1],
  [64, 5.5, 4.7, 3.9],
  [63, 6.5, 5.5, 4.6],
  [62, 7.5, 6.4, 5.3],
  [61, 8.6, 7.2, 6.0],
  [60, 9.6, 8.1, 6.7],
] as const;

describe("IN-MI-OH, mineral soil", () => {
  describe.each(limeTestIndex)("lime test index %d", (index, ...printed) => {
    it.each([6.8, 6.5, 6.0].map((targetPh, column) => [targetPh, printed[column] ?? Number.NaN] as const))(
      "to pH %d prints %d ton, which its equation meets within 0.15",
      (targetPh, tons) => {
        const { methodRate, needTonPerAc } = askLime({ ph: 5.5, bufferPh: index / 10, targetPh, method: "inMiOh" });
        expect(Math.abs(methodRate - tons)).toBeLessThanOrEqual(0.15);
        expect(needTonPerAc).toBeCloseTo(methodRate * 0.9, 9);
      },
    );
  });

  it("needs none from a lime test index of 70 (Michigan), nor above it", () => {
    for (const bufferPh of [7, 7.1, 7.5]) {
      expect(askLime({ ph: 5.5, bufferPh, targetPh: 6.5, method: "inMiOh" }).needTonPerAc).toBe(0);
    }
  });
});

describe("IN-MI-OH, organic soil", () => {
  it.each([
    [5.2, 0.0],
    [5.1, 0.7],
    [5.0, 1.3],
    [4.9, 2.0],
    [4.8, 2.6],
    [4.7, 3.2],
    [4.6, 3.9],
    [4.5, 4.5],
    [4.4, 5.1],
  ])("at pH %d prints %d ton, which its equation meets within 0.15", (ph, tons) => {
    const { methodRate } = askLime({ ph, targetPh: 5.3, method: "inMiOh", soil: "organic" });
    expect(Math.abs(methodRate - tons)).toBeLessThanOrEqual(0.15);
  });
});

/** Publication 811, Table 9-3: t/ha to pH 7.0, 6.5, 6.0 and 5.5. Typed a second time. */
const ontario = [
  [7.0, 2, 2, 1, 1],
  [6.9, 3, 2, 1, 1],
  [6.8, 3, 2, 1, 1],
  [6.7, 4, 2, 2, 1],
  [6.6, 5, 3, 2, 1],
  [6.5, 6, 3, 2, 1],
  [6.4, 7, 4, 3, 2],
  [6.3, 8, 5, 3, 2],
  [6.2, 10, 6, 4, 2],
  [6.1, 11, 7, 5, 2],
  [6.0, 13, 9, 6, 3],
  [5.9, 14, 10, 7, 4],
  [5.8, 16, 12, 8, 4],
  [5.7, 18, 13, 9, 5],
  [5.6, 20, 15, 11, 6],
] as const;

describe("Ontario", () => {
  describe.each(ontario)("buffer pH %d", (bufferPh, ...printed) => {
    it.each([7.0, 6.5, 6.0, 5.5].map((targetPh, column) => [targetPh, printed[column] ?? Number.NaN] as const))(
      "to pH %d reads %d t/ha",
      (targetPh, tonnes) => {
        const result = askLime({ ph: 5, bufferPh, targetPh, method: "on" });
        expect(result.methodRate).toBe(tonnes);
        // 1 t/ha is 0.44609 ton/ac; Agricultural Index 75.
        expect(result.needTonPerAc).toBeCloseTo(tonnes * 0.44609 * 0.75, 4);
      },
    );
  });

  it("gives 20 t/ha below buffer pH 5.6", () => {
    expect(askLime({ ph: 4.8, bufferPh: 5.4, targetPh: 7, method: "on" }).methodRate).toBe(20);
  });

  it("reads a buffer pH between rows to the nearest tenth", () => {
    expect(askLime({ ph: 5, bufferPh: 6.23, targetPh: 7, method: "on" }).methodRate).toBe(10);
    expect(askLime({ ph: 5, bufferPh: 6.27, targetPh: 7, method: "on" }).methodRate).toBe(8);
  });
});

/** PM 1688, 2002: lb calcium carbonate equivalent to pH 6.5 and 6.9. Typed a second time. */
const iowa = [
  [7.0, 0, 1100],
  [6.8, 600, 2700],
  [6.6, 2100, 4400],
  [6.4, 3500, 6000],
  [6.2, 5000, 7700],
  [6.0, 6400, 9300],
  [5.8, 7900, 10600],
] as const;

describe("Iowa", () => {
  it.each(iowa)("buffer pH %d reads %d lb to pH 6.5 and %d lb to 6.9", (bufferPh, to65, to69) => {
    const at = (targetPh: number) => askLime({ ph: 5.4, bufferPh, targetPh, method: "ia" });
    expect(at(6.5).methodRate).toBeCloseTo(to65, 6);
    expect(at(6.9).methodRate).toBeCloseTo(to69, 6);
    expect(at(6.9).needTonPerAc).toBeCloseTo(to69 / 2000, 9);
  });

  it("draws a straight line between rows: half way from 3,500 to 5,000 at 6.3", () => {
    expect(askLime({ ph: 5.4, bufferPh: 6.3, targetPh: 6.5, method: "ia" }).methodRate).toBeCloseTo(4250, 6);
  });
});

describe("Pennsylvania", () => {
  it("asks 4,500 lb for an exchangeable acidity of 4.5 to pH 7.0 (Agronomy Guide)", () => {
    const result = askLime({ ph: 5.8, targetPh: 7, method: "pa", acidityMeq: 4.5 });
    expect(result.methodRate).toBeCloseTo(4500, 9);
    expect(result.needTonPerAc).toBeCloseTo(2.25, 9);
  });

  it("asks 840 lb per meq to pH 6.5 above 4 meq, and 2,000 lb up to 4", () => {
    const at = (acidityMeq: number) => askLime({ ph: 5.8, targetPh: 6.5, method: "pa", acidityMeq }).methodRate;
    expect(at(5)).toBeCloseTo(4200, 9);
    expect(at(4)).toBe(2000);
    expect(at(1)).toBe(2000);
  });
});

describe("Southeast (Adams-Evans)", () => {
  it("meets its check: pH 5.2, buffer 7.80, target 6.5 is about 1,406 lb", () => {
    const result = askLime({ ph: 5.2, bufferPh: 7.8, targetPh: 6.5, method: "southeast" });
    expect(Math.abs(result.methodRate - 1406)).toBeLessThanOrEqual(1);
    expect(result.needTonPerAc).toBeCloseTo(0.703, 3);
  });
});

describe("Kansas", () => {
  it("is 676 lb per inch at buffer 6.6 to pH 6.8: 25620 − 6360 × 6.6 + 391 × 43.56 = 675.96, over 6 in 4,055.76", () => {
    const result = askLime({ ph: 5.6, bufferPh: 6.6, targetPh: 6.8, method: "ks", depthIn: 6 });
    expect(result.methodRate).toBeCloseTo(4055.76, 6);
    expect(result.needTonPerAc).toBeCloseTo(2.02788, 6);
  });

  it("is about zero where the buffer reads 7.4, and zero above", () => {
    for (const targetPh of [5.5, 6, 6.8]) {
      const at = (bufferPh: number) => askLime({ ph: 5.2, bufferPh, targetPh, method: "ks", depthIn: 6 });
      // Under 0.05 ton/ac: the rounded coefficients leave at most 11 lb an inch.
      expect(at(7.4).needTonPerAc).toBeLessThan(0.05);
      expect(at(7.41).needTonPerAc).toBe(0);
    }
  });
});

describe("Wisconsin", () => {
  it("is 8.905 ton of NI 60-69 lime: 134 − 17.2 × 6.4 − 2.73 × 5.5, counted at 65 %", () => {
    const result = askLime({ ph: 5.5, bufferPh: 6.4, targetPh: 6.5, method: "wi" });
    expect(result.methodRate).toBeCloseTo(8.905, 9);
    expect(result.needTonPerAc).toBeCloseTo(5.78825, 9);
  });

  /** 36.1 − 3.29 B − 2.67 pH and so on, each worked by hand at buffer 6.0 and pH 5.0. */
  it.each([
    [5.2, 36.1 - 19.74 - 13.35],
    [5.4, 48.2 - 29.04 - 15.15],
    [5.6, 51 - 32.4 - 13.35],
    [5.8, 57.2 - 33.3 - 17.5],
    [6.0, 72.7 - 45.54 - 18.9],
    [6.3, 103 - 75.6 - 15.9],
    [6.6, 152 - 121.8 - 10.85],
    [6.8, 195 - 170.4 + 0.72],
  ])("to pH %d meets its line by hand", (targetPh, tons) => {
    const ph = targetPh === 5.2 ? 4.99 : 5;
    const steeper = targetPh === 5.2 ? 2.67 * 0.01 : 0;
    const result = askLime({ ph, bufferPh: 6, targetPh, method: "wi" });
    expect(result.methodRate).toBeCloseTo(tons + steeper, 6);
  });
});

describe("North Carolina", () => {
  const field = { ph: 5.2, bufferPh: 6.2, targetPh: 6, method: "nc" } as const;

  it("is acidity 4 × 0.4 = 1.6 times 0.8 / 1.4", () => {
    expect(askLime(field).needTonPerAc).toBeCloseTo(1.28 / 1.4, 9);
  });

  it("credits a ton of lime spread six months ago with 1 − 6 × 0.08 = 0.52, on organic soil with 0.04", () => {
    const limed = { ...field, limedTonPerAc: 1, monthsSince: 6 };
    expect(askLime(limed).needTonPerAc).toBeCloseTo(1.28 / 1.4 - 0.52, 9);
    expect(askLime({ ...limed, soil: "organic" }).needTonPerAc).toBeCloseTo(1.28 / 1.4 - 0.04, 9);
  });

  it("forgets lime after a year and a bit, and never credits more than is needed", () => {
    expect(askLime({ ...field, limedTonPerAc: 1, monthsSince: 13 }).creditTonPerAc).toBe(0);
    expect(askLime({ ...field, limedTonPerAc: 9, monthsSince: 1 }).needTonPerAc).toBe(0);
  });
});
