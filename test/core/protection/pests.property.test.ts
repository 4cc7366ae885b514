import fc from "fast-check";
import { pestActionLevel, pestDays } from "../../../src/core/protection/pest-growth";
import { pestInjuryLevel } from "../../../src/core/protection/pest-injury-level";
import { coversStage, stageOrder } from "../../../src/core/protection/crop-stage";

const from = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const close = (got: number, wanted: number) => expect(got / wanted).toBeCloseTo(1, 8);

describe("pest economics, as laws", () => {
  it("the injury level doubles with cost and halves with price", () => {
    fc.assert(
      fc.property(from(1, 50), from(1, 20), from(0.001, 1), from(10, 100), (cost, price, loss, controlPct) => {
        const level = (costUsdPerAc: number, priceUsdPerBu: number) =>
          pestInjuryLevel({ costUsdPerAc, priceUsdPerBu, lossBuPerAcEach: loss, controlPct }).injuryLevel;
        close(level(2 * cost, price), 2 * level(cost, price));
        close(level(cost, 2 * price), level(cost, price) / 2);
      }),
    );
  });
  it("waiting from the action level for its days ends at the injury level", () => {
    fc.assert(
      fc.property(from(10, 1000), from(1, 50), from(0.5, 20), (injuryLevel, pctPerDay, daysToSpray) => {
        const growth = { pctPerDay };
        const { actionLevel } = pestActionLevel({ injuryLevel, growth, daysToSpray });
        close(pestDays({ count: actionLevel, injuryLevel, growth }).days, daysToSpray);
      }),
    );
  });
  it("no days to wait: act at the injury level", () => {
    fc.assert(
      fc.property(from(1, 1000), from(0, 50), (injuryLevel, pctPerDay) => {
        const growth = { pctPerDay };
        close(pestActionLevel({ injuryLevel, growth, daysToSpray: 0 }).actionLevel, injuryLevel);
      }),
    );
  });
  it("stages keep their order, and a span covers its ends", () => {
    const inOrder = ["VE", "VC", "V1", "V9", "V14", "VT", "R1", "R8"];
    const orders = inOrder.map((code) => stageOrder(code) ?? Number.NaN);
    expect([...orders].sort((a, b) => a - b)).toEqual(orders);
    expect(["V0", "V31", "R9", "boot", "V"].map(stageOrder)).toEqual(Array(5).fill(undefined));
    expect([coversStage({ first: "V1", last: "V5" }, "v5"), coversStage({ first: "V1", last: "V5" }, "V6")]).toEqual([
      true,
      false,
    ]);
  });
});
