import fc from "fast-check";
import { convertUnit } from "../../../src/core/units/convert-unit";
import { readUnit, type Unit } from "../../../src/core/units/read-unit";
import { simpleUnits, usualCompounds } from "../../../src/core/units/unit-table";
import { bushelWeights } from "../../../src/reference/grain";

const units = [...usualCompounds, ...simpleUnits.map(({ label }) => label)]
  .map((label) => readUnit(label))
  .filter((unit): unit is Unit => unit !== undefined);
const grain = fc.constantFrom(...bushelWeights.rows.map((row) => row.grain));
/** Amounts a farm meets, away from absolute zero. */
const amount = fc.double({ min: 0.001, max: 1e6, noNaN: true });
const alike = (count: number) =>
  fc
    .constantFrom(...units)
    .chain((first) =>
      fc.tuple(
        fc.constant(first),
        ...Array(count - 1).fill(fc.constantFrom(...units.filter((u) => u.quantity === first.quantity))),
      ),
    ) as fc.Arbitrary<Unit[]>;

/** Each step rounds to 15 digits; three steps and a temperature's shift stay within 1e-11 of the amount or a degree. */
function expectSame(got: number, wanted: number, unit: Unit): void {
  const room = unit.quantity === "temperature" ? 1e-9 : 0;
  expect(Math.abs(got - wanted)).toBeLessThanOrEqual(Math.abs(wanted) * 1e-11 + room);
}

describe("convertUnit, as laws", () => {
  it("comes back to where it started", () => {
    fc.assert(
      fc.property(alike(2), amount, grain, ([from, to], value, grain) => {
        if (!from || !to) return;
        const there = convertUnit({ value, from, to, grain }).value;
        expectSame(convertUnit({ value: there, from: to, to: from, grain }).value, value, from);
      }),
    );
  });
  it("goes by a third unit to the same place", () => {
    fc.assert(
      fc.property(alike(3), amount, grain, ([from, by, to], value, grain) => {
        if (!from || !by || !to) return;
        const straight = convertUnit({ value, from, to, grain }).value;
        const half = convertUnit({ value, from, to: by, grain }).value;
        expectSame(convertUnit({ value: half, from: by, to, grain }).value, straight, to);
      }),
    );
  });
  it("doubles when the amount doubles, temperatures aside", () => {
    fc.assert(
      fc.property(alike(2), amount, grain, ([from, to], value, grain) => {
        if (!from || !to || from.quantity === "temperature") return;
        const [once, twice] = [value, 2 * value].map((v) => convertUnit({ value: v, from, to, grain }).value);
        expectSame(twice ?? 0, 2 * (once ?? 0), to);
      }),
    );
  });
  it("leaves a unit as it is", () => {
    fc.assert(
      fc.property(fc.constantFrom(...units), amount, (unit, value) => {
        expectSame(convertUnit({ value, from: unit, to: unit, grain: null }).value, value, unit);
      }),
    );
  });
  it("makes more kilograms of a heavier bushel", () => {
    const [bu, kg] = [readUnit("bu"), readUnit("kg")];
    if (!bu || !kg) throw new Error("unread");
    fc.assert(
      fc.property(fc.constantFrom(...bushelWeights.rows), fc.constantFrom(...bushelWeights.rows), (a, b) => {
        const [light, heavy] = [a, b].map((row) => convertUnit({ value: 1, from: bu, to: kg, grain: row.grain }).value);
        expect(Math.sign((heavy ?? 0) - (light ?? 0))).toBe(Math.sign(b.bushelWeightLb - a.bushelWeightLb));
      }),
    );
  });
});
