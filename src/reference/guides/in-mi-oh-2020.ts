import type { Guide } from "./guide";

const zones = { build: "deficient", maintain: "maintenance", none: "sufficient" } as const;
const bothApproaches = ["build", "sufficiency"] as const;

/** Indiana, Michigan and Ohio: build up below the critical level, maintain to the limit, nothing from there on. */
export const inMiOh2020: Guide = {
  label: "IN-MI-OH",
  also: ["Tri-State", "Tri-State 2020", "IN-MI-OH 2020", "Indiana", "Michigan", "Ohio", "IN", "MI", "OH"],
  title: "Tri-State Fertilizer Recommendations",
  year: "2020",
  sources: ["osu-974-2020", "osu-anr96-2020"],
  approach: "build",
  P2O5: {
    extractants: ["mehlich3", "mehlich3Icp"],
    testUnit: "ppm",
    highestTest: 500,
    depthIn: 8,
    roundTo: 5,
    removalSet: "inMiOh2020",
    partnerGoverns: true,
    rules: [
      {
        crops: ["corn", "cornSilage", "soybean"],
        approaches: bothApproaches,
        form: {
          kind: "buildMaintain",
          critical: { base: 20, perCec: 0 },
          plateau: 20,
          drawdown: 0,
          build: { lbPerUnit: { base: 20, perCec: 0 }, years: 4, curve: "straight" },
          maintenance: { times: 1, plus: 0 },
          zones,
        },
        mark: "M",
        source: "osu-974-2020",
        note: "Levels 20 and 40 ppm and four-year build-up seen; 20 lb P2O5 per ppm as in 1995.",
      },
      {
        crops: ["wheat", "alfalfa"],
        approaches: bothApproaches,
        form: {
          kind: "buildMaintain",
          critical: { base: 30, perCec: 0 },
          plateau: 20,
          drawdown: 0,
          build: { lbPerUnit: { base: 20, perCec: 0 }, years: 4, curve: "straight" },
          maintenance: { times: 1, plus: 0 },
          zones,
        },
        mark: "M",
        source: "osu-974-2020",
        note: "Critical level 30 ppm seen; limit 50 ppm from memory; 20 lb P2O5 per ppm as in 1995.",
      },
    ],
  },
  K2O: {
    extractants: ["mehlich3", "mehlich3Icp"],
    testUnit: "ppm",
    highestTest: 1500,
    depthIn: 8,
    roundTo: 5,
    removalSet: "inMiOh2020",
    rules: [
      {
        crops: "all",
        approaches: bothApproaches,
        cecUpTo: 5,
        form: {
          kind: "buildMaintain",
          critical: { base: 100, perCec: 0 },
          plateau: 30,
          drawdown: 0,
          build: { lbPerUnit: { base: 4, perCec: 0.2 }, years: 4, curve: "straight" },
          maintenance: { times: 1, plus: 20 },
          zones,
        },
        mark: "V",
        source: "osu-974-2020",
        note: "CEC of 5 or less.",
      },
      {
        crops: "all",
        approaches: bothApproaches,
        form: {
          kind: "buildMaintain",
          critical: { base: 120, perCec: 0 },
          plateau: 50,
          drawdown: 0,
          build: { lbPerUnit: { base: 4, perCec: 0.2 }, years: 4, curve: "straight" },
          maintenance: { times: 1, plus: 20 },
          zones,
        },
        mark: "V",
        source: "osu-974-2020",
        note: "CEC above 5.",
      },
    ],
  },
};
