import type { Guide, NeedRule } from "./guide";

const cornPotassium = (group: "smectitic" | "illitic", critical: number): NeedRule => ({
  crops: ["corn"],
  group,
  form: {
    kind: "threshold",
    critical,
    below: null,
    above: null,
    zones: { below: "below critical", above: "at or above critical" },
  },
  mark: "V",
  source: "ndsu-potassium-2017",
  note: "Smectite to illite above 3.5: 200 ppm; otherwise 150 (the research paper found 130).",
});

export const northDakota: Guide = {
  label: "ND",
  also: ["North Dakota"],
  title: "Extension columns on phosphorus and potassium",
  year: "2017-2022",
  sources: ["ndsu-barley-2022", "ndsu-costs-2022", "ndsu-potassium-2017"],
  approach: "sufficiency",
  isPartial: true,
  P2O5: {
    extractants: ["olsen"],
    testUnit: "ppm",
    highestTest: 500,
    depthIn: 6,
    roundTo: 1,
    removalSet: null,
    rules: [
      {
        crops: ["barley"],
        form: {
          kind: "classes",
          classes: [
            ["", 3, 78],
            ["", 7, 60],
            ["", 11, 52],
            ["", 15, 26],
            ["", null, 0],
          ],
        },
        mark: "V",
        source: "ndsu-barley-2022",
        note: "Broadcast. The printed 60 and 52 may be misprints.",
      },
      {
        crops: ["soybean"],
        form: {
          kind: "classes",
          criticalZone: "P recommended",
          classes: [
            ["P recommended", 7, null],
            ["none", null, 0],
          ],
        },
        mark: "V",
        source: "ndsu-costs-2022",
        note: "P only at Olsen 7 ppm or less, broadcast.",
      },
    ],
  },
  K2O: {
    extractants: ["ammoniumAcetate"],
    testUnit: "ppm",
    highestTest: 1500,
    depthIn: 6,
    roundTo: 1,
    removalSet: null,
    rules: [
      {
        crops: ["barley"],
        form: {
          kind: "classes",
          classes: [
            ["", 40, 90],
            ["", 80, 60],
            ["", 120, 45],
            ["", null, null],
          ],
        },
        mark: "V",
        source: "ndsu-barley-2022",
        note: "Broadcast.",
      },
      cornPotassium("smectitic", 200),
      cornPotassium("illitic", 150),
    ],
  },
};
