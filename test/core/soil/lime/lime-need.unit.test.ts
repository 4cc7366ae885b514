import { faultOf } from "../../fault-of";
import { askLime } from "./ask";

const acid = { ph: 5.9, bufferPh: 6.6, targetPh: 6.5, method: "inMiOh" } as const;

describe("limeNeed", () => {
  it("needs none at or above the target, with or without a buffer pH", () => {
    for (const ph of [6.5, 7.2]) {
      expect(askLime({ ...acid, ph, bufferPh: null })).toMatchObject({ needTonPerAc: 0, why: "at target" });
    }
    expect(askLime({ ...acid, ph: 6.6, bufferPh: 6.9 }).needTonPerAc).toBe(0);
  });

  it("waits for the buffer pH of a soil under its target", () => {
    expect(faultOf(() => askLime({ ...acid, bufferPh: null }))).toEqual({ kind: "waiting", argument: "bufferPH" });
  });

  it("waits for exchangeable acidity in Pennsylvania and for a depth in Kansas", () => {
    expect(faultOf(() => askLime({ ...acid, method: "pa" }))).toEqual({ kind: "waiting", argument: "acidity" });
    expect(faultOf(() => askLime({ ...acid, targetPh: 6.8, method: "ks" }))).toEqual({
      kind: "waiting",
      argument: "depthIn",
    });
  });

  it("refuses a target that is not printed and names those that are", () => {
    expect(faultOf(() => askLime({ ...acid, targetPh: 6.2 }))).toMatchObject({
      argument: "targetPH",
      because: "IN-MI-OH publishes lime to pH 6.0, 6.5, 6.8; got 6.2.",
    });
    expect(faultOf(() => askLime({ ...acid, targetPh: 6.8, method: "nc" }))).toMatchObject({ max: 6.6 });
  });

  it("asks whether pH and buffer pH changed places", () => {
    expect(faultOf(() => askLime({ ...acid, ph: 6.6, bufferPh: 5.9 }))).toMatchObject({
      argument: "bufferPH",
      because: expect.stringContaining("wrong way round"),
    });
    expect(faultOf(() => askLime({ ...acid, ph: 7.8, bufferPh: 5.2, method: "southeast" }))).toMatchObject({
      because: expect.stringContaining("wrong way round"),
    });
  });

  it("does not ask on a limy soil, whose buffer reads under its pH by nature", () => {
    expect(askLime({ ...acid, ph: 7.9, bufferPh: 7.4 }).needTonPerAc).toBe(0);
  });

  it("refuses a buffer pH outside the printed range", () => {
    expect(faultOf(() => askLime({ ...acid, ph: 5, bufferPh: 5.9 }))).toMatchObject({ min: 6, max: 7 });
    expect(faultOf(() => askLime({ ...acid, bufferPh: 6.9, targetPh: 6, method: "nc" }))).toMatchObject({ max: 6.6 });
    expect(faultOf(() => askLime({ ...acid, ph: 5, bufferPh: 5.7, method: "ia" }))).toMatchObject({ min: 5.8 });
  });

  it("refuses organic soil where only mineral soil is printed", () => {
    expect(faultOf(() => askLime({ ...acid, method: "ia", soil: "organic" }))).toMatchObject({ argument: "soil" });
  });

  it("limes organic soil of the IN-MI-OH area by pH to 5.3 alone", () => {
    const muck = { ...acid, ph: 4.8, soil: "organic" } as const;
    expect(faultOf(() => askLime(muck))).toMatchObject({ because: expect.stringContaining("5.3") });
    // 32.9 − 6.31 × 4.8 = 2.612; × 0.90
    expect(askLime({ ...muck, targetPh: 5.3 }).needTonPerAc).toBeCloseTo(2.3508, 9);
  });

  it("halves the rate for half the depth", () => {
    expect(askLime({ ...acid, depthIn: 4 }).needTonPerAc).toBeCloseTo(askLime(acid).needTonPerAc / 2, 12);
  });

  it("leaves Wisconsin soil alone within 0.2 of its target", () => {
    const near = { ...acid, ph: 6.3, bufferPh: 6.6, method: "wi" } as const;
    expect(askLime(near)).toMatchObject({ needTonPerAc: 0, why: "near target" });
    expect(askLime({ ...near, ph: 6.29 }).why).toBe("rate");
  });

  it("credits earlier lime in North Carolina only, and waits for the months", () => {
    expect(faultOf(() => askLime({ ...acid, limedTonPerAc: 1, monthsSince: 2 }))).toMatchObject({
      argument: "limeApplied",
    });
    expect(faultOf(() => askLime({ ...acid, bufferPh: 6.2, method: "nc", limedTonPerAc: 1 }))).toMatchObject({
      argument: "monthsSince",
    });
  });

  it("refuses a pH under the range of the Adams-Evans curve", () => {
    expect(faultOf(() => askLime({ ...acid, ph: 4.4, bufferPh: 7.5, method: "southeast" }))).toMatchObject({
      min: 4.5,
    });
  });
});
