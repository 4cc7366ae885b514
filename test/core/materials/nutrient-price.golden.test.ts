import { FormulaError } from "../../../src/core/fault";
import { nutrientPrice } from "../../../src/core/materials/nutrient-price";

const alone = { otherNutrientsUsdPerTon: 0 };

describe("nutrientPrice", () => {
  it("prints $1.08 per lb P2O5 for 0-46-0 at $996 (New Mexico State A-133)", () => {
    const { priceUsdPerLb } = nutrientPrice({ priceUsdPerTon: 996, analysisPct: 46, ...alone });
    expect(Math.abs(priceUsdPerLb - 1.08)).toBeLessThanOrEqual(0.005);
  });

  it("prints $0.79 per lb N for 35-0-0 at $550 (open agronomy lesson)", () => {
    const { priceUsdPerLb } = nutrientPrice({ priceUsdPerTon: 550, analysisPct: 35, ...alone });
    expect(Math.abs(priceUsdPerLb - 0.79)).toBeLessThanOrEqual(0.005);
  });

  it("prints 1,640 lb N per ton and $0.174 for 82-0-0 at $285 (Purdue, 2002)", () => {
    const result = nutrientPrice({ priceUsdPerTon: 285, analysisPct: 82, ...alone });
    expect(result.nutrientLbPerTon).toBeCloseTo(1640, 9);
    expect(Math.abs(result.priceUsdPerLb - 0.174)).toBeLessThanOrEqual(0.001);
  });

  it("takes the other nutrients off first: 18-46-0 at $700, 360 lb N at $0.60 leaves $484 on 920 lb", () => {
    const result = nutrientPrice({ priceUsdPerTon: 700, analysisPct: 46, otherNutrientsUsdPerTon: 360 * 0.6 });
    expect(result.priceUsdPerLb).toBeCloseTo(484 / 920, 12);
  });

  it("refuses other nutrients worth more than the ton costs", () => {
    const dear = { priceUsdPerTon: 300, analysisPct: 46, otherNutrientsUsdPerTon: 301 };
    expect(() => nutrientPrice(dear)).toThrow(FormulaError);
  });
});
