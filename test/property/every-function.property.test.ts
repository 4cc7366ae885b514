import fc from "fast-check";
import { allFunctions } from "../../src/functions";
import { runFunction } from "../../src/functions/frame/run";
import { answerTroubles } from "./answer-troubles";
import { anyCall } from "./any-call";

describe.each(allFunctions.map((fn) => [fn.name, fn] as const))("%s, called with anything", (_name, fn) => {
  it("answers a rectangle of finite numbers, text, booleans or errors of the four kinds", () => {
    fc.assert(
      fc.property(anyCall(fn), (call) => expect(answerTroubles(runFunction(fn, call))).toEqual([])),
      { numRuns: 300, seed: 20 },
    );
  });
  it("answers the same twice", () => {
    fc.assert(
      fc.property(anyCall(fn), (call) => expect(runFunction(fn, call)).toEqual(runFunction(fn, call))),
      { numRuns: 30, seed: 21 },
    );
  });
});
