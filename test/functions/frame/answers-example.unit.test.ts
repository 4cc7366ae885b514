import { allFunctions } from "../../../src/functions";
import { answersExample } from "../../../src/functions/frame/answers-example";

describe("a function's example", () => {
  const number = allFunctions.find(({ example }) => typeof example.gives === "number");
  const table = allFunctions.find(({ example }) => typeof example.gives === "object");

  it("comes out as it stands there", () => {
    expect([number, table].map((fn) => fn && answersExample(fn))).toEqual([true, true]);
  });
  it("does not when another number, another word or another shape is stated", () => {
    if (!number || !table) throw new Error("no function to try");
    const stating = (gives: number | string | (string | number)[][]) => ({
      ...number,
      example: { ...number.example, gives },
    });
    expect(answersExample(stating(Number(number.example.gives) + 1))).toBe(false);
    expect(answersExample(stating("words"))).toBe(false);
    expect(answersExample(stating([[1, 2]]))).toBe(false);
  });
});
