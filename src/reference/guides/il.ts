import type { BuildMaintain, Guide, NeedRule } from "./guide";

const form = (
  base: number,
  plateau: number,
  lbPerUnit: number,
  timesFor: BuildMaintain["maintenance"]["timesFor"] = {},
): BuildMaintain => ({
  kind: "buildMaintain",
  critical: { base, perCec: 0 },
  plateau,
  drawdown: 0,
  build: { lbPerUnit: { base: lbPerUnit, perCec: 0 }, years: 4, curve: "straight" },
  maintenance: { times: 1, timesFor, plus: 0 },
  zones: { build: "build", maintain: "maintenance", none: "none" },
});

const cited = { mark: "M", source: "uiuc-handbook-8" } as const;

const phosphate = (group: "highSupply" | "mediumSupply" | "lowSupply", desired: number): NeedRule => ({
  ...cited,
  crops: "all",
  group,
  form: form(desired, 20, 9, { wheat: 1.5 }),
  note: "Level wanted, 9 lb per lb and wheat's half as much again seen; four-year spread from memory.",
});

const potashNote = "4 lb per lb seen; CEC split and four-year spread from memory.";

export const illinois: Guide = {
  label: "IL",
  also: ["Illinois"],
  title: "Illinois Agronomy Handbook, Chapter 8",
  year: "undated",
  sources: ["uiuc-handbook-8", "uiuc-wheat-nutrients", "uiuc-optimum-levels", "uiuc-status-2012"],
  approach: "build",
  isPartial: true,
  P2O5: {
    extractants: ["bray", "mehlich3Color"],
    testUnit: "lb/ac",
    highestTest: 1000,
    depthIn: 7,
    roundTo: 1,
    removalSet: "illinois",
    rules: [phosphate("highSupply", 40), phosphate("mediumSupply", 45), phosphate("lowSupply", 50)],
  },
  K2O: {
    extractants: ["ammoniumAcetate", "mehlich3"],
    testUnit: "lb/ac",
    highestTest: 3000,
    depthIn: 7,
    roundTo: 1,
    removalSet: "illinois",
    rules: [
      { ...cited, crops: "all", cecBelow: 12, form: form(260, 100, 4), note: `CEC below 12. ${potashNote}` },
      { ...cited, crops: "all", form: form(300, 100, 4), note: `CEC of 12 or more. ${potashNote}` },
    ],
  },
};
