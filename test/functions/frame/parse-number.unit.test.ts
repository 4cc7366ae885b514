import { parseNumber } from "../../../src/functions/frame/parse-number";

describe("parseNumber", () => {
  it.each([
    ["1,234.5", 1234.5, false],
    ["$4.35", 4.35, false],
    ["15 %", 15, true],
    ["(12)", -12, false],
    ["-0.5", -0.5, false],
    [".25", 0.25, false],
    ["1e3", 1000, false],
    ["\u00a07\u00a0", 7, false],
  ])("reads %p", (text, value, percent) => {
    expect(parseNumber(text)).toEqual({ value, percent });
  });
  it.each(["", " ", "abc", "1,23", "12 bu", "1.2.3", "(5", "--3", "%", ".", "e5"])("refuses %p", (text) => {
    expect(parseNumber(text)).toBeUndefined();
  });
});
