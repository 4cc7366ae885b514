import { numberText, withUnit } from "../../src/taskpane/pane/number-text";

it("keeps as many decimals as the size of a number needs", () => {
  expect([12345.6, 205.26, 54.268, 0.20456, -3].map(numberText)).toEqual(["12,346", "205.3", "54.27", "0.2046", "−3"]);
});

it("puts a unit behind a number and a dollar sign in front", () => {
  expect(withUnit(54, "lb/ac")).toBe("54 lb/ac");
  expect(withUnit(-12.5, "$")).toBe("−$12.5");
  expect(withUnit(12.5, "$/ac")).toBe("$12.5/ac");
  expect(withUnit("high", "lb/ac")).toBe("high");
});
