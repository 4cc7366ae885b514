import { FormulaError } from "../../../src/core/fault";
import { convertUnit } from "../../../src/core/units/convert-unit";
import { readUnit } from "../../../src/core/units/read-unit";
import type { GrainKey } from "../../../src/reference/grain";

function convert(value: number, fromText: string, toText: string, grain: GrainKey | null = null) {
  const [from, to] = [readUnit(fromText), readUnit(toText)];
  if (!from || !to) throw new Error(`unread: ${fromText} or ${toText}`);
  return convertUnit({ value, from, to, grain });
}

function faultOf(run: () => unknown): unknown {
  try {
    return run();
  } catch (thrown) {
    return thrown instanceof FormulaError ? thrown.fault : thrown;
  }
}

describe("convertUnit", () => {
  it("gives whole numbers where the definition is whole", () => {
    expect(convert(1, "ac", "ft2").value).toBe(43_560);
    expect(convert(1, "mi", "ft").value).toBe(5280);
    expect(convert(1, "section", "ac").value).toBe(640);
    expect(convert(1, "ton", "lb").value).toBe(2000);
    expect(convert(1, "gal", "fl oz").value).toBe(128);
    expect(convert(1, "gal", "in3").value).toBe(231);
    expect(convert(1, "ac-ft", "ac-in").value).toBe(12);
    expect(convert(1, "day", "min").value).toBe(1440);
  });
  it("weighs a bushel by its crop: 200 bu of corn are 11,200 lb, of oats 6,400 lb", () => {
    expect(convert(200, "bu", "lb", "corn").value).toBe(11_200);
    expect(convert(200, "bu", "lb", "oat").value).toBe(6400);
    expect(convert(6400, "lb", "bu", "oat").value).toBe(200);
  });
  it("turns a price the other way: $4.20 a bushel of corn is 4.20 / 56 = $0.075 a pound", () => {
    expect(convert(4.2, "$/bu", "$/lb", "corn").value).toBeCloseTo(0.075, 12);
    expect(convert(420, "¢/bu", "$/lb", "corn").value).toBeCloseTo(0.075, 12);
    expect(convert(4.2, "$/bu", "$/cwt", "corn").value).toBeCloseTo(7.5, 12);
  });
  it("needs no crop where the bushel stays a bushel", () => {
    expect(convert(100, "bu/ac", "bu/ha").value).toBeCloseTo(247.105_381, 6); // 100 / 0.40468564224
    expect(convert(5, "$/bu", "¢/bu").value).toBeCloseTo(500, 10);
  });
  it("says which bushel weight it took", () => {
    expect(convert(1, "bu", "lb", "rye").bushel).toMatchObject({ bushelWeightLb: 56, source: "mn-statutes-239.32" });
    expect(convert(1, "lb", "kg", "rye").bushel).toBeUndefined();
  });
  it("shifts temperatures: 212 °F, 32 °F, -40 °F and 72 °F", () => {
    expect(convert(212, "F", "C").value).toBe(100);
    expect(convert(0, "C", "F").value).toBe(32);
    expect(convert(-40, "C", "F").value).toBe(-40);
    expect(convert(72, "F", "C").value).toBeCloseTo(22.222_222, 6); // 40 × 5 / 9
    expect(convert(0, "C", "K").value).toBe(273.15);
  });
  it("refuses what is colder than cold can be", () => {
    expect(faultOf(() => convert(-500, "F", "C"))).toMatchObject({
      kind: "outOfRange",
      argument: "value",
      min: -459.67,
    });
    expect(convert(-459.67, "F", "K").value).toBeCloseTo(0, 9);
  });
  it("asks for the crop when a bushel has to become a weight", () => {
    expect(faultOf(() => convert(1, "bu/ac", "kg/ha"))).toMatchObject({ kind: "waiting" });
  });
  it("knows no bushel of a crop that is sold otherwise", () => {
    expect(faultOf(() => convert(1, "bu", "lb", "sunflower"))).toMatchObject({ kind: "notPublished" });
    expect(faultOf(() => convert(1, "bu", "lb", "alfalfa"))).toMatchObject({ kind: "notPublished" });
  });
  it("refuses unlike units and names what both measure", () => {
    expect(faultOf(() => convert(1, "lb", "ac"))).toMatchObject({
      kind: "refused",
      argument: "to",
      because: expect.stringMatching(/ac is area but lb is weight/),
    });
    expect(faultOf(() => convert(1, "bu", "ft3", "corn"))).toMatchObject({
      because: expect.stringContaining("volume bushel"),
    });
    expect(faultOf(() => convert(20, "ppm", "lb/ac"))).toMatchObject({ because: expect.stringContaining("depth") });
    expect(faultOf(() => convert(20, "seeds/ac", "plants/ac"))).toMatchObject({ kind: "refused" });
  });
});
