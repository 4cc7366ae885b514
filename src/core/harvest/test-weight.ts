import { refuse } from "../fault";
import { within } from "../limit";
import { bushelWeight } from "../units/bushel-weight";
import type { GrainKey } from "../../reference/grain";
import { cornGrades } from "../../reference/harvest/drying";
import type { Cited } from "../../reference/table";
import { harvestLimits } from "./harvest-limits";

export interface WetTestWeight {
  readonly testWeightLbPerBu: number;
  readonly moisturePct: number;
  readonly dryMoisturePct: number;
}

export interface DryTestWeight {
  readonly testWeightLbPerBu: number;
  readonly gainLbPerBu: number;
  /** Best grade that this test weight reaches, in words. */
  readonly grade: string;
  readonly cited: readonly Cited[];
}

/**
 * Test weight of sound, mature corn after drying.
 *
 *   wet test weight × (100 - dry moisture) / (100 - moisture)
 *
 * @source hellevang-1995
 */
export function testWeightDry({ testWeightLbPerBu, moisturePct, dryMoisturePct }: WetTestWeight): DryTestWeight {
  within("testWeight", testWeightLbPerBu, harvestLimits.testWeight);
  within("moisture", moisturePct, harvestLimits.testWeightMoisture);
  within("dryMoisture", dryMoisturePct, harvestLimits.testWeightMoisture);
  if (dryMoisturePct > moisturePct) {
    const { min, unit } = harvestLimits.testWeightMoisture;
    refuse({ kind: "outOfRange", argument: "dryMoisture", received: dryMoisturePct, min, max: moisturePct, unit });
  }

  const dry = (testWeightLbPerBu * (100 - dryMoisturePct)) / (100 - moisturePct);
  const best = cornGrades.rows.find(({ value }) => dry >= value);
  return {
    testWeightLbPerBu: dry,
    gainLbPerBu: dry - testWeightLbPerBu,
    grade: best ? `heavy enough for ${best.key}` : `below the ${cornGrades.rows[1].value} lb of No. 2`,
    cited: cornGrades.rows,
  };
}

export interface PaidBushels {
  readonly paidBu: number;
  readonly weightLb: number;
  readonly bushelLb: number;
  readonly cited: readonly Cited[];
}

/**
 * Bushels paid for a volume of grain: payment is on weight.
 *
 *   volume bushels × test weight / bushel weight
 *
 * @source osu-paid-bushels-2014
 */
export function paidBushels(volumeBu: number, testWeightLbPerBu: number, grain: GrainKey): PaidBushels {
  within("volumeBushels", volumeBu, harvestLimits.bushels);
  within("testWeight", testWeightLbPerBu, harvestLimits.testWeight);
  const bushel = bushelWeight(grain);
  const weightLb = volumeBu * testWeightLbPerBu;
  return { paidBu: weightLb / bushel.bushelWeightLb, weightLb, bushelLb: bushel.bushelWeightLb, cited: [bushel] };
}
