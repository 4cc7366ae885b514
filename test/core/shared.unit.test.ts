import { capitalized } from "../../src/core/capitalized";
import { needed } from "../../src/core/fault";
import { roundStep } from "../../src/core/round-step";
import { sameLength } from "../../src/core/same-length";
import { trueMinus } from "../../src/core/true-minus";
import { faultOf } from "./fault-of";

it("writes a true minus before a number and leaves other hyphens", () => {
  expect(["-5", "-.5", "-$5", "5-7", "-x", "no-till"].map(trueMinus)).toEqual([
    "−5",
    "−.5",
    "−$5",
    "5-7",
    "-x",
    "no-till",
  ]);
});

it("begins with a capital and leaves the rest", () => {
  expect(["soil pH", "", "N"].map(capitalized)).toEqual(["Soil pH", "", "N"]);
});

it("steps by 1, 2, 2.5, 5 or 10 times a power of ten, binary dust aside", () => {
  const steps = [0.1, 0.11, 1, 1.5, 2.2, 3, 6, 10, 260, 0.1 + 0.2 - 0.2].map(roundStep);
  const expected = [0.1, 0.2, 1, 2, 2.5, 5, 10, 10, 500, 0.1];
  steps.forEach((step, index) => expect(step).toBeCloseTo(expected[index] ?? Number.NaN, 12));
  expect(steps).toHaveLength(expected.length);
});

it("waits for what is needed and takes a 0 for a value", () => {
  expect(needed("yield", 0)).toBe(0);
  for (const missing of [null, undefined])
    expect(faultOf(() => needed("yield", missing))).toEqual({ kind: "waiting", argument: "yield" });
});

it("refuses lists that differ in length, both named with their sizes", () => {
  expect(faultOf(() => sameLength("yields", [1, 2], "prices", [3, 4]))).toBeUndefined();
  expect(faultOf(() => sameLength("yields", [1, 2], "prices", [3]))).toEqual({
    kind: "sizesDiffer",
    first: { argument: "yields", size: "2 cells" },
    second: { argument: "prices", size: "1 cell" },
  });
  expect(faultOf(() => sameLength("a", [], "b", [1], "strip"))).toMatchObject({ first: { size: "0 strips" } });
});
