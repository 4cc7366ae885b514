import type { BuildMaintain, CecLine, Guide, NeedRule } from "./guide";

const form = (critical: CecLine, lbPerUnit: number, years: number | readonly number[]): BuildMaintain => ({
  kind: "buildMaintain",
  critical,
  plateau: 0,
  drawdown: 0,
  build: { lbPerUnit: { base: lbPerUnit, perCec: 0 }, years, curve: "squareRoot" },
  maintenance: { times: 1, plus: 0 },
  unpublishedAbove: true,
  zones: { build: "below target", maintain: "at or above target", none: "at or above target" },
});

const cited = { crops: "all", mark: "M", source: "mu-handbook-2004" } as const;

const potash = (group: "target220" | "target160", base: number): NeedRule => ({
  ...cited,
  group,
  form: form({ base, perCec: 5 }, 75.5, 8),
  classes: [
    ["low", 110],
    ["medium", 220],
  ],
  note: "Which crops take 220 and which 160 stands in the bulletin.",
});

/** Missouri: tests in lb/ac, build-up along a square root; no rates held from the target up. */
export const missouri: Guide = {
  label: "MO",
  also: ["Missouri"],
  title: "Soil Test Interpretations and Recommendations Handbook",
  year: "2004",
  sources: ["mu-handbook-2004", "mu-subsoil-p", "mu-classes"],
  approach: "build",
  isPartial: true,
  P2O5: {
    extractants: ["bray"],
    testUnit: "lb/ac",
    highestTest: 1000,
    depthIn: null,
    roundTo: 5,
    removalSet: "missouri",
    rules: [
      {
        ...cited,
        crops: ["corn", "soybean"],
        form: form({ base: 45, perCec: 0 }, 110, [4, 8]),
        classes: [
          ["low", 22],
          ["medium", 44],
          ["desired", null],
        ],
        note: "Target 45 lb/ac and the years seen; the equation from memory.",
      },
    ],
  },
  K2O: {
    extractants: ["ammoniumAcetate"],
    testUnit: "lb/ac",
    highestTest: 3000,
    depthIn: null,
    roundTo: 5,
    removalSet: "missouri",
    rules: [potash("target220", 220), potash("target160", 160)],
  },
};
