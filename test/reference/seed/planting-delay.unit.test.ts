import { plantingDelays } from "../../../src/reference/seed/planting-delay";
import { sources } from "../../../src/reference/sources";

describe("losses by planting delay", () => {
  const sumOf = (crop: string) =>
    plantingDelays.rows.filter((row) => row.crop === crop).reduce((sum, { loss }) => sum + loss, 0);
  it("are frozen: 29 rows; corn 2.1 + 4.3 + 2.8 + 4.7 + 5.3 + 3.9 + 2.7; soybean 3.713 + 2.6 / 7", () => {
    expect(plantingDelays.rows).toHaveLength(29);
    expect(sumOf("corn")).toBeCloseTo(25.8, 10);
    // 0.5 + 0.333 + 1 + 0.5 + 2.6 / 7 + 0.5 + 0.63 + 0.25
    expect(sumOf("soybean")).toBeCloseTo(3.713 + 2.6 / 7, 10);
  });
  it("each stand in a source and run forward", () => {
    for (const { source, from, to } of plantingDelays.rows) {
      expect(sources).toHaveProperty([source]);
      expect(from[0] * 100 + from[1]).toBeLessThanOrEqual(to[0] * 100 + to[1]);
    }
  });
});
