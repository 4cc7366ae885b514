import type { Guide, NeedRule, NeedSystem } from "../../../../src/reference/guides";

/** The parts of a rule that a test is about; the rest holds for every crop and method. */
export type RuleUnderTest = Pick<NeedRule, "form"> & Partial<NeedRule>;

/** A guide made of printed rules, to show that the evaluator holds forms no shipped guide uses yet. */
export function guideUnderTest(rules: readonly RuleUnderTest[], system: Partial<NeedSystem> = {}): Guide {
  const half: NeedSystem = {
    extractants: ["bray"],
    testUnit: "ppm",
    highestTest: 1000,
    depthIn: 6,
    roundTo: 1,
    removalSet: "inMiOh2020",
    rules: rules.map((rule) => ({
      crops: "all",
      extractants: ["bray"],
      approaches: ["build", "sufficiency"],
      mark: "M",
      source: "ksu-mf2586",
      ...rule,
    })),
    ...system,
  };
  return {
    label: "under test",
    also: [],
    title: "Rules under test",
    year: "undated",
    sources: ["ksu-mf2586"],
    approach: "build",
    P2O5: half,
    K2O: half,
  };
}
