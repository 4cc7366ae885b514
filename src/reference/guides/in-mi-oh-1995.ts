import type { BuildMaintain, Guide } from "./guide";

const zones = { build: "buildup", maintain: "maintenance", drawdown: "drawdown", none: "none" } as const;

/** Bray P1 levels: build up, a plateau 15 ppm wide, then a fall to nothing over 10 ppm. */
const phosphate = (base: number): BuildMaintain => ({
  kind: "buildMaintain",
  critical: { base, perCec: 0 },
  plateau: 15,
  drawdown: 10,
  build: { lbPerUnit: { base: 20, perCec: 0 }, years: 4, curve: "straight" },
  maintenance: { times: 1, plus: 0 },
  zones,
});

const cited = { mark: "M", source: "msu-e2567-1995" } as const;

/** Indiana, Michigan and Ohio before 2020. */
export const inMiOh1995: Guide = {
  label: "IN-MI-OH-1995",
  also: ["Tri-State 1995", "IN-MI-OH 1995", "E-2567"],
  title: "Tri-State Fertilizer Recommendations",
  year: "1995",
  sources: ["msu-e2567-1995", "osu-agbmp-p"],
  approach: "build",
  isPartial: true,
  P2O5: {
    extractants: ["bray"],
    testUnit: "ppm",
    highestTest: 500,
    depthIn: 8,
    roundTo: 5,
    removalSet: "inMiOh1995",
    ownRemoval: { wheat: 0.63, alfalfa: 13 },
    partnerGoverns: true,
    rules: [
      { ...cited, crops: ["corn", "soybean"], form: phosphate(15), note: "Critical level 15 ppm seen." },
      { ...cited, crops: ["wheat", "alfalfa"], form: phosphate(25), note: "Critical level 25 ppm seen." },
    ],
  },
  K2O: {
    extractants: ["ammoniumAcetate"],
    testUnit: "ppm",
    highestTest: 1500,
    depthIn: 8,
    roundTo: 5,
    removalSet: "inMiOh1995",
    ownRemoval: { wheat: 0.37, alfalfa: 50 },
    rules: [
      {
        ...cited,
        crops: "all",
        form: {
          kind: "buildMaintain",
          critical: { base: 75, perCec: 2.5 },
          plateau: 30,
          drawdown: 20,
          build: { lbPerUnit: { base: 4, perCec: 0.2 }, years: 4, curve: "straight" },
          maintenance: { times: 1, plus: 20 },
          zones,
        },
      },
    ],
  },
};
