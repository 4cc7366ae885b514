import type { Guide, NeedRule, RatePoints } from "./guide";

const pulses = (points: RatePoints["points"], note: string): NeedRule => ({
  crops: ["fieldPea", "lentil", "chickpea"],
  form: { kind: "points", points, above: { times: 1, plus: 0 } },
  mark: "V",
  source: "msu-montana-pulse",
  locator: "Table 1",
  note,
});

/** Montana, annual pulses. */
export const montana: Guide = {
  label: "MT",
  also: ["Montana"],
  title: "Soil fertility for pulse crops",
  year: "undated",
  sources: ["msu-montana-pulse"],
  approach: "sufficiency",
  isPartial: true,
  P2O5: {
    extractants: ["olsen"],
    testUnit: "ppm",
    highestTest: 500,
    depthIn: null,
    roundTo: 1,
    removalSet: "montana",
    rules: [
      pulses(
        [
          [4, 30],
          [12, 20],
          [16, 15],
        ],
        "The rate printed at 8 ppm is an evident misprint and left out. Above 16 ppm: removal.",
      ),
    ],
  },
  K2O: {
    extractants: ["ammoniumAcetate"],
    testUnit: "ppm",
    highestTest: 1500,
    depthIn: null,
    roundTo: 1,
    removalSet: "montana",
    rules: [
      pulses(
        [
          [50, 40],
          [100, 35],
          [150, 30],
          [200, 25],
          [250, 20],
        ],
        "Above 250 ppm: removal.",
      ),
    ],
  },
};
