import fc from "fast-check";
import { replantGain, type ReplantInput } from "../../../src/core/seed/replant-gain";
import { faultOf } from "../fault-of";

/** April 28 and May 28, 2026. */
const april28 = 46_140;
const may28 = 46_170;

const replant = (over: Partial<ReplantInput> = {}) =>
  replantGain({
    crop: "corn",
    guide: "iowa2001",
    rowWidthIn: null,
    keep: { plantedOn: april28, standPerAc: 24_000, uneven: { lossPct: 0 }, hybrid: "full" },
    replant: { plantedOn: may28, standPerAc: 30_000, hybrid: "full" },
    fullYieldBu: 180,
    priceUsdPerBu: 4,
    costUsdPerAc: 50,
    chance: 1,
    failYieldBu: 0,
    secondStandPct: 90,
    costUsdPerBu: 0,
    addedDryingUsdPerBu: 0,
    paymentUsdPerAc: 0,
    ...over,
  });

describe("University of Nebraska 2009: 24,000 of April 28 against 30,000 of May 28", () => {
  it("180 bu, $4, $50, a tenth off the second stand: replanting loses $143.60", () => {
    expect(replant().gainUsdPerAc).toBeCloseTo(-143.6, 10);
  });
  it("and no chance of a good stand would save it: (169.2 + 12.5) / 145.8 is above 1", () => {
    expect(replant().breakEvenChance).toBeCloseTo(1.2462, 4);
  });
});

describe("replantGain by hand", () => {
  it("weighs a good and a failed stand: 0.8 × 145.8 + 0.2 × 50 = 126.64", () => {
    expect(replant({ chance: 0.8, failYieldBu: 50 }).expectedYieldBu).toBeCloseTo(126.64, 10);
  });
  it("takes costs of a bushel off both, added drying off the second: -23.4 × 3.5 - 0.1 × 145.8 - 50 + 20", () => {
    const gain = replant({ costUsdPerBu: 0.5, addedDryingUsdPerBu: 0.1, paymentUsdPerAc: 20 }).gainUsdPerAc;
    expect(gain).toBeCloseTo(-81.9 - 14.58 - 30, 10);
  });
  it("has no break-even chance where a good stand is no better than a failed one", () => {
    expect(replant({ failYieldBu: 150 }).breakEvenChance).toBeNull();
  });
  it("refuses a second planting before the first, and names its own arguments", () => {
    const early = { plantedOn: april28 - 10, standPerAc: 30_000, hybrid: "full" } as const;
    expect(faultOf(() => replant({ replant: early }))).toMatchObject({ kind: "refused", argument: "replantDate" });
    const thin = { plantedOn: april28, standPerAc: 5000, uneven: { lossPct: 0 }, hybrid: "full" } as const;
    expect(faultOf(() => replant({ keep: thin }))).toMatchObject({
      what: "yield for a keepStand of 5,000 plants an acre",
    });
  });
});

describe("replantGain as laws", () => {
  const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
  it("gains nothing at the break-even chance", () => {
    fc.assert(
      fc.property(
        between(12_000, 20_000),
        between(100, 250),
        between(0, 100),
        between(0, 0.5),
        (stand, full, cost, dry) => {
          const input = {
            keep: { plantedOn: april28, standPerAc: stand, uneven: { lossPct: 30 }, hybrid: "full" as const },
            fullYieldBu: full,
            costUsdPerAc: cost,
            addedDryingUsdPerBu: dry,
          };
          const { breakEvenChance } = replant(input);
          fc.pre(breakEvenChance !== null && breakEvenChance >= 0 && breakEvenChance <= 1);
          expect(replant({ ...input, chance: breakEvenChance ?? 0 }).gainUsdPerAc).toBeCloseTo(0, 6);
        },
      ),
    );
  });
  it("loses a dollar for each dollar of cost", () => {
    fc.assert(
      fc.property(between(0, 500), (cost) => {
        expect(replant({ costUsdPerAc: cost }).gainUsdPerAc).toBeCloseTo(-93.6 - cost, 8);
      }),
    );
  });
});
