import { within, type Limit } from "../../src/core/limit";
import { faultOf } from "./fault-of";

const pH: Limit = { min: 3, max: 10, unit: "pH", slip: 10 };
const suggested = (value: number, limit: Limit = pH) => {
  const fault = faultOf(() => within("pH", value, limit));
  return fault?.kind === "outOfRange" ? (fault.suggestion ?? "none") : "accepted";
};

it("accepts both ends and nothing beyond, and no value that is no number", () => {
  for (const value of [3, 10]) expect(suggested(value)).toBe("accepted");
  for (const value of [2.999, 10.001, Number.NaN]) expect(faultOf(() => within("pH", value, pH))).toBeDefined();
});

it("suggests what was meant where the usual slip leads into the range, its ends included", () => {
  expect([65, 30, 100].map((value) => suggested(value))).toEqual(["6.5", "3", "10"]);
  expect([29, 101, 0.5].map((value) => suggested(value))).toEqual(["none", "none", "none"]);
  expect(suggested(65, { min: 3, max: 10, unit: "pH" })).toBe("none");
});

it("suggests without the dust of a division", () => {
  // 0.29 / 0.01 is 28.999999999999996.
  expect(suggested(0.29, { min: 1, max: 100, unit: "%", slip: 0.01 })).toBe("29");
});
