import fc from "fast-check";
import { binVolume } from "../../../src/core/harvest/bin-volume";
import { dryingCost } from "../../../src/core/harvest/drying-cost";
import { dryingFuel } from "../../../src/core/harvest/drying-fuel";
import { grainShrink, shrunkBushels } from "../../../src/core/harvest/grain-shrink";
import { lossByPlace } from "../../../src/core/harvest/loss-by-place";
import { marketBushels, marketYield } from "../../../src/core/harvest/market-bushels";
import { sellWetOrDry } from "../../../src/core/harvest/sell-wet-or-dry";
import { storageCost } from "../../../src/core/harvest/storage-cost";
import { testWeightDry } from "../../../src/core/harvest/test-weight";
import { equilibriumMoisture } from "../../../src/core/harvest/keeping-moisture";

const wet = fc.double({ min: 15.5, max: 40, noNaN: true });
const market = fc.double({ min: 8, max: 15.5, noNaN: true });
const pounds = fc.double({ min: 1, max: 1e6, noNaN: true });
const price = fc.double({ min: 1, max: 20, noNaN: true });
const input = (moisturePct: number, marketMoisturePct: number | null, handlingLossPct: number | null = 0) =>
  ({ grain: "corn", moisturePct, marketMoisturePct, handlingLossPct, shrinkPerPointPct: null }) as const;

describe("shrink, as laws", () => {
  it("dry matter stays the same: wet pounds × (100 - moisture) = dry pounds × (100 - market)", () => {
    fc.assert(
      fc.property(pounds, wet, market, (wetLb, moisturePct, marketPct) => {
        const dryLb = marketBushels(wetLb, input(moisturePct, marketPct)).bushels * 56;
        expect((dryLb * (100 - marketPct)) / (wetLb * (100 - moisturePct))).toBeCloseTo(1, 10);
      }),
    );
  });
  it("drying in two steps shrinks as much as in one", () => {
    fc.assert(
      fc.property(market, wet, fc.double({ min: 0, max: 1, noNaN: true }), (to, from, share) => {
        const between = to + share * (from - to);
        fc.pre(between <= 30);
        const step = (high: number, low: number) => grainShrink(input(high, low)).paidShare;
        expect(step(from, between) * step(between, to)).toBeCloseTo(step(from, to), 10);
      }),
    );
  });
  it("water, handling and what is paid make up the load", () => {
    fc.assert(
      fc.property(pounds, wet, fc.double({ min: 0, max: 5, noNaN: true }), (bushels, moisturePct, handlingPct) => {
        const { paidBu, waterBu, handlingBu } = shrunkBushels(bushels, input(moisturePct, null, handlingPct));
        expect((paidBu + waterBu + handlingBu) / bushels).toBeCloseTo(1, 10);
      }),
    );
  });
  it("overdry grain is paid as it weighs, and gives away what its dry matter would make", () => {
    fc.assert(
      fc.property(pounds, fc.double({ min: 6, max: 15.4, noNaN: true }), (bushels, moisturePct) => {
        const { paidBu, givenAwayBu } = shrunkBushels(bushels, input(moisturePct, null));
        expect(paidBu).toBe(bushels);
        expect(((bushels + givenAwayBu) * 84.5) / (bushels * (100 - moisturePct))).toBeCloseTo(1, 10);
      }),
    );
  });
  it("yield at market moisture does not change when the same dry matter is weighed wetter", () => {
    fc.assert(
      fc.property(pounds, wet, market, (dryMatterLb, one, other) => {
        const of = (moisturePct: number) =>
          marketYield(dryMatterLb / (1 - moisturePct / 100), 2, {
            grain: "corn",
            moisturePct,
            marketMoisturePct: null,
          });
        expect(of(one).yieldBuPerAc / of(other).yieldBuPerAc).toBeCloseTo(1, 10);
        expect(of(one).dryMatterLbPerAc * 2).toBeCloseTo(dryMatterLb, 5);
      }),
    );
  });
});

describe("losses, as laws", () => {
  it("places add up to the total, and to the count behind where residue is spread evenly", () => {
    const seeds = fc.integer({ min: 0, max: 100 });
    fc.assert(
      fc.property(seeds, seeds, seeds, (standing, header, machine) => {
        const counts = {
          crop: "soybean",
          standingPerSqFt: standing,
          headerPerSqFt: standing + header,
          seedsPerLb: null,
        } as const;
        const behindPerSqFt = standing + header + machine;
        const even = lossByPlace({ ...counts, behindPerSqFt, headerWidthFt: null, residueWidthFt: null });
        expect(even.totalBuPerAc).toBeCloseTo(behindPerSqFt / 4, 10);
        const narrow = lossByPlace({ ...counts, behindPerSqFt, headerWidthFt: 30, residueWidthFt: 10 });
        expect(narrow.machineBuPerAc * 3).toBeCloseTo(even.machineBuPerAc, 10);
        expect(narrow.headerBuPerAc).toBe(even.headerBuPerAc);
      }),
    );
  });
});

describe("drying and selling, as laws", () => {
  it("fuel is the same for the same water, whatever it burns: BTU agree", () => {
    fc.assert(
      fc.property(pounds, wet, (wetBu, moisturePct) => {
        const of = (fuel: "lpGas" | "naturalGas" | "electricity") =>
          dryingFuel({
            wetBu,
            moisturePct,
            grain: "corn",
            fuel,
            dryerUse: { btuPerLb: 2000 },
            targetMoisturePct: null,
          });
        expect(of("lpGas").fuel * 91_500).toBeCloseTo(of("naturalGas").fuel * 1000, 2);
        expect(of("electricity").fuel * 3412).toBeCloseTo(of("lpGas").energyBtu, 2);
      }),
    );
  });
  it("cost grows in step with points, bushels and the price of gas", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 20 }), price, (points, fuelPriceUsdPerGal) => {
        const work = {
          bushels: 100,
          gasUse: { rule: "usual" },
          fanKwhPerBu: 0,
          powerPriceUsdPerKwh: null,
          otherUsdPerBu: 0,
        } as const;
        const { costUsd } = dryingCost({ ...work, points, fuelPriceUsdPerGal });
        expect(dryingCost({ ...work, points: points * 2, fuelPriceUsdPerGal }).costUsd / costUsd).toBeCloseTo(2, 10);
        expect(
          dryingCost({ ...work, points, fuelPriceUsdPerGal: fuelPriceUsdPerGal * 2 }).costUsd / costUsd,
        ).toBeCloseTo(2, 10);
      }),
    );
  });
  it("the best way leaves no less than any other, and all ways are even where nothing is charged or dried", () => {
    const cost = fc.double({ min: 0, max: 0.9, noNaN: true });
    fc.assert(
      fc.property(wet, price, cost, cost, cost, (moisturePct, priceUsdPerBu, discount, charge, home) => {
        const sale = {
          wetBu: 1000,
          grain: "corn",
          moisturePct,
          marketMoisturePct: null,
          handlingLossPct: 0,
          priceUsdPerBu,
          wetDiscountUsdPerBu: discount,
          elevatorShrinkPct: 1.4,
          elevatorChargeUsdPerBu: charge,
          homeCostUsdPerBu: home,
        } as const;
        const { ways, best } = sellWetOrDry(sale);
        expect(ways).toHaveLength(3);
        for (const way of ways) expect(way.netUsd).toBeLessThanOrEqual(best.netUsd);
        const free = { wetDiscountUsdPerBu: 0, elevatorChargeUsdPerBu: 0, homeCostUsdPerBu: 0 };
        const even = sellWetOrDry({ ...sale, ...free, moisturePct: 15.5 });
        for (const way of even.ways) expect(way.netUsd).toBeCloseTo(1000 * priceUsdPerBu, 6);
      }),
    );
  });
});

describe("storing, as laws", () => {
  const carry = { rate: 0.08, handlingUsdPerBu: 0, extraDryingUsdPerBu: 0, extraShrinkPct: 0 };
  it("cost runs in step with months where nothing is paid once, and the break-even is price plus cost", () => {
    fc.assert(
      fc.property(price, fc.integer({ min: 1, max: 24 }), (priceUsdPerBu, months) => {
        const of = (m: number) => storageCost({ ...carry, priceUsdPerBu, months: m, chargeUsdPerBuMonth: 0.03 });
        expect(of(months * 2).costUsdPerBu).toBeCloseTo(of(months).costUsdPerBu * 2, 10);
        expect(of(months).breakEvenUsdPerBu - priceUsdPerBu).toBeCloseTo(of(months).costUsdPerBu, 10);
      }),
    );
  });
  it("a bin of twice the diameter holds four times as much, and a cone drawn down what its peak would add", () => {
    const feet = fc.double({ min: 5, max: 100, noNaN: true });
    fc.assert(
      fc.property(
        feet,
        fc.double({ min: 10, max: 60, noNaN: true }),
        fc.double({ min: 0, max: 10, noNaN: true }),
        (diameterFt, depthFt, peak) => {
          const of = (diameter: number, heightFt: number) =>
            binVolume({ diameterFt: diameter, depthFt, peak: { heightFt }, packFactor: 1 });
          expect(of(diameterFt * 2, 0).bushels / of(diameterFt, 0).bushels).toBeCloseTo(4, 10);
          expect(of(diameterFt, peak).peakBu).toBeCloseTo(-of(diameterFt, -peak).peakBu, 6);
        },
      ),
    );
  });
  it("corn comes to more moisture in damper and in cooler air", () => {
    const humidity = fc.double({ min: 11, max: 90, noNaN: true });
    const temperature = fc.double({ min: 10, max: 110, noNaN: true });
    fc.assert(
      fc.property(humidity, temperature, (rh, f) => {
        const here = equilibriumMoisture(rh, f).wetBasisPct;
        expect(equilibriumMoisture(rh + 2, f).wetBasisPct).toBeGreaterThan(here);
        expect(equilibriumMoisture(rh, f + 5).wetBasisPct).toBeLessThan(here);
      }),
    );
  });
  it("drying raises test weight the more, the more water goes", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 16, max: 25, noNaN: true }),
        fc.double({ min: 40, max: 60, noNaN: true }),
        (moisturePct, lb) => {
          const to = (dryMoisturePct: number) =>
            testWeightDry({ testWeightLbPerBu: lb, moisturePct, dryMoisturePct }).testWeightLbPerBu;
          expect(to(14)).toBeGreaterThan(to(15.5));
          expect(to(15.5)).toBeGreaterThan(lb);
        },
      ),
    );
  });
});
