import type { CropKey } from "../crops";
import type { SourceKey } from "../sources";
import type { Guide, NeedSystem } from "./guide";

/** Printed class limits with no rates held. */
function ratings(
  testUnit: "ppm" | "lb/ac",
  highestTest: number,
  zones: readonly string[],
  upTo: readonly number[],
  source: SourceKey,
): NeedSystem {
  return {
    extractants: ["mehlich3"],
    testUnit,
    highestTest,
    depthIn: null,
    roundTo: 1,
    removalSet: null,
    rules: [
      {
        crops: "all",
        form: { kind: "classes", classes: zones.map((zone, place) => [zone, upTo[place] ?? null, null]) },
        mark: "V",
        source,
      },
    ],
  };
}

const delawareZones = ["low", "medium", "optimum", "excessive"];
const newJerseyZones = ["very low", "low", "medium", "high", "very high"];

export const delaware: Guide = {
  label: "DE",
  also: ["Delaware"],
  title: "Nutrient Management Recommendations, Agronomic Crops (classes)",
  year: "undated",
  sources: ["udel-nutrients"],
  approach: "sufficiency",
  isPartial: true,
  fertilityIndex: true,
  P2O5: ratings("ppm", 500, delawareZones, [25, 50, 100], "udel-nutrients"),
  K2O: ratings("ppm", 1500, delawareZones, [70, 140, 280], "udel-nutrients"),
};

export const newJersey: Guide = {
  label: "NJ",
  also: ["New Jersey"],
  title: "Relative levels of nutrients (classes)",
  year: "undated",
  sources: ["rutgers-levels"],
  approach: "sufficiency",
  isPartial: true,
  P2O5: ratings("lb/ac", 1000, newJerseyZones, [24, 45, 71, 137], "rutgers-levels"),
  K2O: ratings("lb/ac", 3000, newJerseyZones, [40, 81, 145, 277], "rutgers-levels"),
};

const smallGrains: readonly CropKey[] = ["wheat", "oat", "barley", "rye", "triticale"];
const reportZones = ["low", "medium", "sufficient", "high", "excessive"] as const;

/** Rates by the class the laboratory prints; its limits are not held. */
function byReport(smallGrain: readonly number[], alfalfa: readonly number[]): NeedSystem {
  const rule = (crops: readonly CropKey[], rates: readonly number[], note: string) =>
    ({
      crops,
      form: { kind: "classes", classes: reportZones.map((zone, place) => [zone, null, rates[place] ?? null] as const) },
      mark: "V",
      source: "clemson-classes",
      note,
    }) as const;
  return {
    extractants: [],
    testUnit: "class",
    highestTest: 0,
    depthIn: null,
    roundTo: 1,
    removalSet: null,
    rules: [
      rule(smallGrains, smallGrain, "Small grain, soil groups 1-4 and 6. The class is the one on the report."),
      rule(["alfalfa"], alfalfa, "Alfalfa, soil groups 3-4. The class is the one on the report."),
    ],
  };
}

export const southCarolina: Guide = {
  label: "SC",
  also: ["South Carolina"],
  title: "Agricultural Service Laboratory, crop codes 029 and 050 (rates by class)",
  year: "undated",
  sources: ["clemson-classes"],
  approach: "sufficiency",
  isPartial: true,
  P2O5: byReport([80, 40, 20, 0, 0], [200, 100, 50, 0, 0]),
  K2O: byReport([80, 60, 40, 0, 0], [300, 200, 100, 50, 0]),
};
