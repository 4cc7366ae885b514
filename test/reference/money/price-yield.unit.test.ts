import { priceYieldTies } from "../../../src/reference/money/price-yield";

describe("price and yield together, where it was measured", () => {
  it("is frozen: one row, county corn of Illinois, -0.72 to -0.31 and -0.51 on the mean", () => {
    expect(priceYieldTies).toHaveLength(1);
    expect(priceYieldTies[0]).toMatchObject({ mark: "V", correlation: { from: -0.72, to: -0.31, mean: -0.51 } });
  });
});
