import { typedText } from "../../../src/hosts/excel/typed-text";

describe("text written into Excel", () => {
  it.each([
    "6-24-24",
    "1/2",
    "1 1/2",
    "3-4",
    "205",
    " 12",
    "1,200",
    "$4.35",
    "8 %",
    "(12)",
    "1e5",
    "10:30",
    "10:30 pm",
    "12 a",
  ])("is marked where Excel would read a number, a date or a time: %s", (text) =>
    expect(typedText(text)).toBe(`'${text}`),
  );
  it.each(["5 Jan 2026", "Mar-24", "May 2026", "12 September"])("is marked where it is a date in words: %s", (text) =>
    expect(typedText(text)).toBe(`'${text}`),
  );
  it.each(["=A1", "+lime", "-", "@here", "'quoted", "#N/A", "TRUE", "false"])(
    "is marked where it begins something else: %s",
    (text) => expect(typedText(text)).toBe(`'${text}`),
  );
  it.each([
    "Creek Bend",
    "Field 3",
    "2 t/ac",
    "IN-MI-OH",
    "K2O",
    "May",
    "10-34-0 starter",
    "bu/ac",
    "°F",
    "true to type",
  ])("is left alone otherwise: %s", (text) => expect(typedText(text)).toBe(text));
});
