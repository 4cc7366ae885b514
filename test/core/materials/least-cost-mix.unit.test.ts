import { leastCostMix, type LeastCostMix } from "../../../src/core/materials/least-cost-mix";
import { request } from "./mix-under-test";

const rates = ({ materials }: LeastCostMix) => materials.map(({ rateLbPerAc }) => rateLbPerAc);
const expectRates = (mix: LeastCostMix, expected: readonly number[]) =>
  rates(mix).forEach((rate, index) => expect(rate).toBeCloseTo(expected[index] ?? Number.NaN, 6));

/** Prices in $/ton; $500 a ton is $0.25 a pound. Corners and shadow prices worked by hand beside each case. */
describe("leastCostMix", () => {
  it("meets 120-60-60 from urea, DAP, MAP and potash and leaves MAP out", () => {
    // DAP 60 / 0.46 = 130.4348 lb brings 23.4783 lb N; urea (120 - 23.4783) / 0.46 = 209.8299; potash 60 / 0.60.
    const mix = leastCostMix(
      request(
        [
          ["N", 120],
          ["P2O5", 60],
          ["K2O", 60],
        ],
        [
          ["urea", 500, [46, 0, 0]],
          ["DAP", 700, [18, 46, 0]],
          ["MAP", 750, [11, 52, 0]],
          ["potash", 420, [0, 0, 60]],
        ],
      ),
    );
    expectRates(mix, [(120 - (60 / 0.46) * 0.18) / 0.46, 60 / 0.46, 0, 100]);
    expect(mix.costUsdPerAc).toBeCloseTo(0.25 * 209.8299 + 0.35 * 130.4348 + 0.21 * 100, 3);
    // N costs 0.25 / 0.46 a pound; P2O5 (0.35 - 0.18 × 0.5435) / 0.46; K2O 0.21 / 0.60.
    const [n, p, k] = mix.nutrients.map(({ nextPoundUsd }) => nextPoundUsd);
    expect(n).toBeCloseTo(0.25 / 0.46, 6);
    expect(p).toBeCloseTo((0.35 - (0.18 * 0.25) / 0.46) / 0.46, 6);
    expect(k).toBeCloseTo(0.35, 6);
  });

  it("takes from two nitrogen materials only as much of the dear one as the sulfur asks", () => {
    // Ammonium sulfate 12 / 0.24 = 50 lb with 10.5 lb N; urea (100 - 10.5) / 0.46 = 194.5652 lb.
    const mix = leastCostMix(
      request(
        [
          ["N", 100],
          ["S", 12],
        ],
        [
          ["urea", 500, [46, 0]],
          ["ammonium sulfate", 400, [21, 24]],
        ],
      ),
    );
    expectRates(mix, [89.5 / 0.46, 50]);
    expect(mix.costUsdPerAc).toBeCloseTo(0.25 * 194.5652 + 0.2 * 50, 3);
    // One more lb S: 1 / 0.24 lb at $0.20, less the 0.21 / 0.24 lb N it spares at 0.25 / 0.46.
    expect(mix.nutrients[1]?.nextPoundUsd).toBeCloseTo(0.2 / 0.24 - (0.21 / 0.24) * (0.25 / 0.46), 6);
  });

  describe("held to its need of nitrogen, with DAP at $0.30 and triple superphosphate at $0.32", () => {
    const materials = [
      ["DAP", 600, [18, 46]],
      ["TSP", 640, [0, 46]],
    ] as const;
    it("puts on DAP alone when more nitrogen is welcome: 46 / 0.46 = 100 lb", () => {
      const mix = leastCostMix(
        request(
          [
            ["N", 9],
            ["P2O5", 46],
          ],
          materials,
        ),
      );
      expectRates(mix, [100, 0]);
      expect(mix.costUsdPerAc).toBeCloseTo(30, 9);
      expect(mix.nutrients[0]).toMatchObject({ nextPoundUsd: 0, atCap: null });
      expect(mix.nutrients[0]?.overLbPerAc).toBeCloseTo(9, 9);
    });
    it("goes half and half when it is not: 9 / 0.18 = 50 lb DAP, the other 23 lb from 50 lb TSP", () => {
      const mix = leastCostMix(
        request(
          [
            ["N", 9, 0],
            ["P2O5", 46],
          ],
          materials,
        ),
      );
      expectRates(mix, [50, 50]);
      expect(mix.costUsdPerAc).toBeCloseTo(31, 9);
      // One lb of room turns 1 / 0.18 lb of TSP into DAP, $0.02 cheaper each.
      expect(mix.nutrients[0]?.atCap?.savesUsdPerLb).toBeCloseTo(0.02 / 0.18, 6);
    });
  });

  it("keeps to most and least rates and prices a pound of room in them", () => {
    // Urea stops at 100 lb (46 lb N); the other 54 lb come from ammonium nitrate, 54 / 0.34 = 158.8235 lb.
    const needs = [["N", 100]] as const;
    const most = leastCostMix(
      request(needs, [
        ["urea", 500, [46], 0, 100],
        ["ammonium nitrate", 480, [34]],
      ]),
    );
    expectRates(most, [100, 54 / 0.34]);
    // One more lb of urea costs 0.25 and spares 0.46 / 0.34 lb at 0.24.
    expect(most.materials[0]?.atMost?.savesUsdPerLb).toBeCloseTo((0.46 / 0.34) * 0.24 - 0.25, 6);
    const least = leastCostMix(
      request(needs, [
        ["urea", 500, [46]],
        ["ammonium nitrate", 480, [34], 50],
      ]),
    );
    expectRates(least, [(100 - 17) / 0.46, 50]);
    expect(least.materials[1]?.atLeast?.savesUsdPerLb).toBeCloseTo(0.24 - (0.34 / 0.46) * 0.25, 6);
    expect(least.materials[1]?.atMost).toBeNull();
  });

  it("keeps N + K2O with the seed: 50 lb of 10-34-0 carry 5 lb, 17 of 40 lb P2O5; the rest comes without salt", () => {
    const mix = leastCostMix(
      request(
        [
          ["N", 0],
          ["P2O5", 40],
          ["K2O", 0],
        ],
        [
          ["10-34-0", 600, [10, 34, 0]],
          ["TSP", 1000, [0, 46, 0]],
        ],
        { saltLimitLbPerAc: 5 },
      ),
    );
    expectRates(mix, [50, 23 / 0.46]);
    expect(mix.salt?.saltLbPerAc).toBeCloseTo(5, 6);
    // One lb more salt: 10 lb more 10-34-0 ($3.00) spare 3.4 / 0.46 lb TSP at $0.50.
    expect(mix.salt?.atLimit?.savesUsdPerLb).toBeCloseTo((3.4 / 0.46) * 0.5 - 3, 5);
  });

  it("trades price for weight under a limit on the whole load", () => {
    // x urea + y ammonium sulfate of 21 % N at a tenth of the price: 0.46 x + 0.21 y = 46, x + y = 150, so x = 58.
    const mix = leastCostMix(
      request(
        [["N", 46]],
        [
          ["urea", 500, [46]],
          ["by-product", 50, [21]],
        ],
        { totalLimitLbPerAc: 150 },
      ),
    );
    expectRates(mix, [58, 92]);
    expect(mix.totalLbPerAc).toBeCloseTo(150, 6);
    // One lb more: y rises by 0.46 / 0.25 = 1.84 lb, x falls by 0.84.
    expect(mix.atTotalLimit?.savesUsdPerLb).toBeCloseTo(0.84 * 0.25 - 1.84 * 0.025, 6);
  });

  it("prices the room in a least rate under a pound by the pound: 0.5 lb bring what a pound would, halved", () => {
    // A needed half pound of ammonium nitrate instead of urea: (0.24 - 0.34 / 0.46 × 0.25) for each pound.
    const mix = leastCostMix(
      request(
        [["N", 100]],
        [
          ["urea", 500, [46]],
          ["ammonium nitrate", 480, [34], 0.5],
        ],
      ),
    );
    expect(mix.materials[1]?.atLeast).toMatchObject({ limitLbPerAc: 0.5 });
    expect(mix.materials[1]?.atLeast?.savesUsdPerLb).toBeCloseTo(0.24 - (0.34 / 0.46) * 0.25, 5);
  });
  it("counts N and K2O as salt, and phosphate or sulfur not", () => {
    const mix = leastCostMix(
      request(
        [
          ["N", 10],
          ["P2O5", 20],
          ["K2O", 5],
        ],
        [
          ["n", 100, [50, 0, 0]],
          ["p", 100, [0, 50, 0]],
          ["k", 100, [0, 0, 50]],
        ],
        { saltLimitLbPerAc: 20 },
      ),
    );
    expect(mix.salt).toMatchObject({ saltLbPerAc: expect.closeTo(15, 6), atLimit: null });
  });
  it("buys nothing when nothing is needed", () => {
    const mix = leastCostMix(request([["N", 0]], [["urea", 500, [46]]]));
    expect([mix.costUsdPerAc, mix.totalLbPerAc]).toEqual([0, 0]);
  });

  it("says when the next pound is out of reach", () => {
    const mix = leastCostMix(request([["N", 46]], [["urea", 500, [46], 0, 100]]));
    expect(mix.nutrients[0]?.nextPoundUsd).toBeNull();
  });
});
