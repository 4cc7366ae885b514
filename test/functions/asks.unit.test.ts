import { allFunctions } from "../../src/functions";

describe("the questions that find a function", () => {
  it.each(allFunctions.map((fn) => [fn.name, fn.asks ?? []] as const))(
    "%s has two to four, short and in everyday writing",
    (_name, asks) => {
      expect(asks.length).toBeGreaterThanOrEqual(2);
      expect(asks.length).toBeLessThanOrEqual(4);
      for (const ask of asks) {
        expect(ask.split(" ").length).toBeLessThanOrEqual(12);
        expect(ask).toBe(ask.trim());
        expect(ask).not.toMatch(/[!?.]$/);
      }
      expect(new Set(asks).size).toBe(asks.length);
    },
  );
});
