import { refuseArgument } from "../fault";
import { within } from "../limit";
import { limits } from "../limits";
import { nutrients, testChange, testChangeRange, type NutrientKey } from "../../reference/nutrients";
import type { Cited } from "../../reference/table";

export interface TestDriftInput {
  readonly soilTestPpm: number;
  /** Applied less removed, lb/ac of P2O5 or K2O. */
  readonly balanceLbPerAc: number;
  readonly nutrient: NutrientKey;
  /** lb/ac of oxide per ppm; null: the published number. */
  readonly lbPerPpm: number | null;
  /** meq/100 g; sharpens the published number for K2O. */
  readonly cecMeq: number | null;
}

export interface TestDrift {
  readonly expectedPpm: number;
  /** The test if the soil moves as little, or as much, as published soils do. */
  readonly slowPpm: number;
  readonly fastPpm: number;
  readonly changePpm: number;
  readonly lbPerPpm: number;
  readonly floorPpm: number;
  readonly isAtFloor: boolean;
  readonly system: string;
  readonly cited: readonly Cited[];
}

/**
 * Soil test expected after a balance has worked on it, ppm.
 *
 *   test + balance / lb per ppm, not below a floor
 *
 * Buffering is the soil's own: published soils take 16 to 30 lb P2O5 or 6 to 10 lb K2O per ppm. Only phosphate and
 * potash stay in the soil that way.
 */
export function testDrift(input: TestDriftInput): TestDrift {
  const { soilTestPpm, balanceLbPerAc, nutrient } = input;
  if (nutrient !== "P2O5" && nutrient !== "K2O") return refuseNutrient(nutrient);
  within("soilTest", soilTestPpm, nutrient === "P2O5" ? limits.soilTestP : limits.soilTestK);
  const range = testChangeRange[nutrient];
  const { lbPerPpm, system, cited } = changeFactor(nutrient, input);
  // A test already under the floor stays where it is rather than jumping up to it.
  const floorPpm = Math.min(range.floorPpm, soilTestPpm);
  const after = (factor: number) => Math.max(floorPpm, soilTestPpm + balanceLbPerAc / factor);
  const expectedPpm = after(lbPerPpm);
  return {
    expectedPpm,
    slowPpm: after(Math.max(range.high, lbPerPpm)),
    fastPpm: after(Math.min(range.low, lbPerPpm)),
    changePpm: expectedPpm - soilTestPpm,
    lbPerPpm,
    floorPpm,
    isAtFloor: soilTestPpm + balanceLbPerAc / lbPerPpm < floorPpm,
    system,
    cited: [...cited, range],
  };
}

function changeFactor(
  nutrient: "P2O5" | "K2O",
  { lbPerPpm, cecMeq }: TestDriftInput,
): { lbPerPpm: number; system: string; cited: readonly Cited[] } {
  if (lbPerPpm !== null) return { lbPerPpm, system: "typed", cited: [] };
  const row = nutrient === "P2O5" ? testChange.phosphate : cecMeq === null ? testChange.potash : testChange.potashByCec;
  return {
    lbPerPpm: row.lbPerPpm + row.lbPerPpmPerCec * (cecMeq ?? 0),
    system: row.system,
    cited: [row],
  };
}

function refuseNutrient(nutrient: NutrientKey): never {
  refuseArgument("nutrient", `only P2O5 and K2O carry over into a soil test; ${nutrients[nutrient].label} does not.`);
}
