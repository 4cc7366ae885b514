import type { Guide, NeedRule, NeedSystem } from "./guide";
import { sharedPhosphate } from "./northern-equations";

const ofMinnesota = (rule: NeedRule): NeedRule => ({
  ...rule,
  source: "umn-corn",
  note: "Bray P1 below pH 7.4, Olsen from pH 7.4. Equations shared with South Dakota. A band may halve the broadcast rate.",
});

const P2O5: NeedSystem = {
  extractants: ["bray", "olsen"],
  testUnit: "ppm",
  highestTest: 500,
  depthIn: 6,
  roundTo: 1,
  removalSet: null,
  rules: Object.values(sharedPhosphate).map(ofMinnesota),
};

const K2O = {
  extractants: ["ammoniumAcetate"],
  testUnit: "ppm",
  highestTest: 1500,
  depthIn: 6,
  roundTo: 5,
  removalSet: null,
} as const;

/** Minnesota since 2019: a critical potassium level of 200 ppm, its rates not held. */
export const minnesota: Guide = {
  label: "MN",
  also: ["Minnesota", "MN 2019"],
  title: "Fertilizing corn and soybean in Minnesota",
  year: "2019",
  sources: ["umn-corn", "umn-potassium-levels-2019"],
  approach: "sufficiency",
  isPartial: true,
  P2O5,
  K2O: {
    ...K2O,
    rules: [
      {
        crops: ["corn", "soybean"],
        form: {
          kind: "threshold",
          critical: 200,
          below: null,
          above: null,
          zones: { below: "below critical", above: "at or above critical" },
        },
        mark: "V",
        source: "umn-potassium-levels-2019",
        note: "Medium and fine soils.",
      },
    ],
  },
};

/** Minnesota to 2018: potash by class, the rates of the two highest held. */
export const minnesota2018: Guide = {
  label: "MN-2018",
  also: ["MN to 2018", "Minnesota 2018"],
  title: "Fertilizing corn in Minnesota, potassium classes to 2018",
  year: "2018",
  sources: ["umn-corn", "umn-vetsch-2019"],
  approach: "sufficiency",
  isPartial: true,
  P2O5,
  K2O: {
    ...K2O,
    rules: [
      {
        crops: ["corn"],
        form: {
          kind: "classes",
          criticalZone: "high",
          classes: [
            ["very low", 40, null],
            ["low", 80, null],
            ["medium", 120, null],
            ["high", 160, 30],
            ["very high", null, 0],
          ],
        },
        mark: "V",
        source: "umn-vetsch-2019",
        note: "Printed 25 to 35 lb at 121 to 160 ppm; its middle is given.",
      },
    ],
  },
};
