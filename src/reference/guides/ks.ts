import type { CropKey } from "../crops";
import type { BuildMaintain, Guide, NeedRule } from "./guide";

const zones = { below: "below critical", above: "at or above critical" } as const;

const build = (base: number, plateau: number, lbPerUnit: number): NeedRule => ({
  crops: "all",
  approaches: ["build"],
  form: {
    kind: "buildMaintain",
    critical: { base, perCec: 0 },
    plateau,
    drawdown: 0,
    build: { lbPerUnit: { base: lbPerUnit, perCec: 0 }, years: [4, 6, 8], curve: "straight" },
    maintenance: { times: 1, plus: 0 },
    zones: { build: zones.below, maintain: zones.above, none: zones.above },
  } satisfies BuildMaintain,
  mark: "M",
  source: "ksu-mf2586",
});

function sufficiency(
  crops: readonly CropKey[],
  critical: number,
  [constant, perYield, perTest, perYieldTest]: readonly [number, number, number, number],
): NeedRule {
  return {
    crops,
    form: { kind: "plane", constant, perYield, perTest, perYieldTest, critical, least: 15, zones },
    mark: "M",
    source: "ksu-mf2586",
    note: `Critical level ${critical} ppm seen; at least 15 lb below it.`,
  };
}

export const kansas: Guide = {
  label: "KS",
  also: ["Kansas", "MF2586"],
  title: "MF2586, Soil Test Interpretations and Fertilizer Recommendations",
  year: "undated",
  sources: ["ksu-mf2586", "ksu-wheat-p-2014", "ksu-potassium-2011"],
  approach: "sufficiency",
  isPartial: true,
  P2O5: {
    extractants: ["bray", "mehlich3"],
    testUnit: "ppm",
    highestTest: 500,
    depthIn: 6,
    roundTo: 5,
    removalSet: "kansas",
    rules: [
      build(20, 10, 18),
      sufficiency(["corn", "sorghum"], 20, [50, 0.2, -2.5, -0.01]),
      sufficiency(["wheat"], 20, [46, 0.42, -2.3, -0.021]),
    ],
  },
  K2O: {
    extractants: ["ammoniumAcetate", "mehlich3"],
    testUnit: "ppm",
    highestTest: 1500,
    depthIn: 6,
    roundTo: 5,
    removalSet: "kansas",
    rules: [
      build(130, 30, 9),
      sufficiency(["corn", "sorghum"], 130, [73, 0.21, -0.565, -0.0016]),
      sufficiency(["wheat"], 130, [62, 0.24, -0.48, -0.0018]),
      sufficiency(["soybean"], 130, [60, 0.628, -0.46, -0.0048]),
    ],
  },
};
