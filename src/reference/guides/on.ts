import type { CropKey } from "../crops";
import type { SourceKey } from "../sources";
import type { Mark } from "../table";
import type { Guide, NeedRule } from "./guide";

/** The guide's own way from kg/ha to lb/ac. */
const lbPerKg = 0.9;

function rates(
  crop: CropKey,
  upTo: readonly number[],
  kgPerHa: readonly number[],
  cited: { readonly mark: Mark; readonly source: SourceKey; readonly locator?: string },
): NeedRule {
  return {
    ...cited,
    crops: [crop],
    lbPerRateUnit: lbPerKg,
    form: { kind: "classes", classes: kgPerHa.map((rate, place) => ["", upTo[place] ?? null, rate]) },
    note: "Printed in kg/ha; lb/ac at 0.9 as the source does.",
  };
}

const memory = { mark: "M", source: "omafra-811" } as const;

/** Keeps the test in its range by putting back what crops take; no rates held outside the range. */
const targetAndMaintain = (low: number, high: number): NeedRule => ({
  crops: ["corn", "soybean", "wheat", "alfalfa"],
  approaches: ["removal"],
  form: {
    kind: "classes",
    classes: [
      ["below target", low - 1, null],
      ["target", high, { times: 1, plus: 0 }],
      ["above target", null, null],
    ],
  },
  mark: "V",
  source: "on-pk-database-2022",
});

const potassium = [15, 30, 45, 60, 80, 100, 120];

export const ontario: Guide = {
  label: "ON",
  also: ["Ontario", "Publication 811"],
  title: "Agronomy Guide for Field Crops",
  year: "2025",
  sources: ["omafra-corn-p-2025", "omafra-811", "on-pk-database-2022"],
  approach: "sufficiency",
  isPartial: true,
  P2O5: {
    extractants: ["olsen"],
    testUnit: "ppm",
    highestTest: 500,
    depthIn: 6,
    roundTo: 1,
    removalSet: "ontario",
    rules: [
      rates("corn", [3, 5, 7, 9, 12, 30], [110, 100, 90, 70, 50, 20, 0], {
        mark: "V",
        source: "omafra-corn-p-2025",
        locator: "Table 1",
      }),
      rates("soybean", [3, 5, 7, 9, 12, 15], [80, 60, 50, 40, 30, 20, 0], memory),
      targetAndMaintain(12, 18),
    ],
  },
  K2O: {
    extractants: ["ammoniumAcetate"],
    testUnit: "ppm",
    highestTest: 1500,
    depthIn: 6,
    roundTo: 1,
    removalSet: "ontario",
    rules: [
      rates("corn", potassium, [170, 160, 140, 110, 80, 50, 30, 0], memory),
      rates("soybean", potassium, [120, 110, 90, 80, 60, 40, 30, 0], memory),
      targetAndMaintain(100, 130),
    ],
  },
};
