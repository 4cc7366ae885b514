import { limits } from "../../core/limits";
import { testDrift as testDriftOf } from "../../core/nutrients/test-drift";
import { testsVary } from "../cautions";
import { choice, line, optional, quantity, worksheetFunction } from "../frame";
import { nutrientWords } from "../words";

export const testDrift = worksheetFunction({
  name: "TESTDRIFT",
  family: "nutrients",
  summary: "Soil test to expect after a nutrient balance has worked on it.",
  asks: [
    "where will my soil test go",
    "how fast does soil test potassium fall",
    "pounds to raise a test one ppm",
    "soil test after some years",
  ],
  args: {
    soilTest: quantity(limits.soilTestK, { says: "soil-test P or K now" }),
    balance: quantity(limits.balance, { says: "pounds applied less removed, P2O5 or K2O" }),
    nutrient: choice(nutrientWords, { says: "P2O5 or K2O" }),
    lbPerPpm: optional(
      quantity(limits.lbPerPpm, { says: "pounds of P2O5 or K2O that move this soil's test by 1 ppm" }),
      null,
      "P2O5 20; K2O 4 × (1 + 0.05 × CEC), or 8 without a CEC",
    ),
    cec: optional(quantity(limits.cec, { says: "cation exchange capacity, for K2O" }), null, "not used"),
  },
  returns: { shape: "one", unit: "ppm", says: "soil test expected" },
  sources: ["osu-build-2012", "uiuc-handbook-8", "umn-randall"],
  cautions: ["Soils buffer differently: the same pounds move one test more than another.", testsVary],
  example: { call: [100, -60, "K2O", null, 10], gives: 90, because: "by hand: 100 − 60 / (4 × (1 + 0.05 × 10))" },
  compute: ({ soilTest, balance, nutrient, lbPerPpm, cec }) =>
    testDriftOf({ soilTestPpm: soilTest, balanceLbPerAc: balance, nutrient, lbPerPpm, cecMeq: cec }),
  value: (result) => result.expectedPpm,
  working: (result) => [
    line(
      result.system === "typed" ? "Pounds per ppm, typed" : `Pounds per ppm, ${result.system}`,
      result.lbPerPpm,
      "lb/ppm",
    ),
    line("Change of the test", result.changePpm, "ppm"),
    line("Test if the soil moves slowly", result.slowPpm, "ppm"),
    line("Test if the soil moves fast", result.fastPpm, "ppm"),
    ...(result.isAtFloor ? [line("Held at the floor a test does not fall below", result.floorPpm, "ppm")] : []),
  ],
  cites: (result) => result.cited,
});
