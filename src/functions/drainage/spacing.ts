import {
  drainRate as drainRateOf,
  tileSpacing as tileSpacingOf,
  type DrainSite,
} from "../../core/drainage/tile-spacing";
import type { SoilConductivity } from "../../core/drainage/conductivity";
import {
  drainCoefficient as drainCoefficientOf,
  soilSpacing as soilSpacingOf,
} from "../../core/drainage/drainage-rules";
import { drainageLevels } from "../../reference/drainage/rules";
import { choice, line, worksheetFunction, type WorkingLine } from "../frame";
import { checkLines } from "../check-lines";
import {
  conductivity,
  conductivityBelow,
  depth,
  depthToBarrier,
  drainRate,
  midwayTable,
  radius,
  spacing,
} from "./drain-arguments";
import {
  drainageLevelWords,
  drainCropWords,
  drainSoilWords,
  spacingSoilWords,
  surfaceInletWords,
} from "./drainage-words";
import { digging, drainageDesign, drainageLaw } from "../cautions";

interface SiteValues {
  readonly depth: number;
  readonly midwayTable: number;
  readonly conductivity: SoilConductivity;
  readonly depthToBarrier: number;
  readonly radius: number | null;
  readonly conductivityBelow: SoilConductivity | null;
}

function siteOf(values: SiteValues): DrainSite {
  return {
    drainDepthFt: values.depth,
    midwayTableFt: values.midwayTable,
    depthToBarrierFt: values.depthToBarrier,
    conductivity: values.conductivity,
    conductivityBelow: values.conductivityBelow,
    radiusIn: values.radius,
  };
}

export const tileSpacing = worksheetFunction({
  name: "TILESPACING",
  family: "drainage",
  summary: "Distance between tile lines that carries off the water you ask for.",
  asks: ["how far apart should tile be", "tile spacing for my soil", "drain spacing"],
  args: { depth, midwayTable, conductivity, drainRate, depthToBarrier, radius, conductivityBelow },
  returns: { shape: "one", unit: "ft", says: "distance from drain to drain in steady rain" },
  sources: ["hooghoudt-1940", "van-der-molen-wesseling-1991", "usual-tube-radius", "clapp-hornberger-1978"],
  cautions: [digging, drainageLaw, drainageDesign],
  example: {
    call: [4, 1.5, 1.97, 0.375, 10],
    gives: 82.37,
    because:
      "by hand: 8 × 1.97 × 4.131 × 2.5 + 4 × 1.97 × 2.5² = 212.0; / (0.375 / 12) = 6,785; its root, with the equivalent depth at that spacing 4.131 ft",
  },
  compute: (values) => tileSpacingOf(siteOf(values), values.drainRate),
  value: (result) => result.spacingFt,
  working: (result) => [
    line("Water table over the drains, midway", result.tableOverDrainFt, "ft"),
    line("Barrier below the drains", result.barrierBelowDrainFt, "ft"),
    line("Equivalent depth", result.equivalentDepthFt, "ft"),
    line("Conductivity", result.conductivityFtPerDay, "ft/day"),
    line("Spacing", result.spacingFt, "ft"),
    ...spacingLine("With the entry loss of 4-inch tubing", result.entryLossFt),
    ...spacingLine("If water moves half as fast", result.halfConductivityFt),
    ...spacingLine("If water moves twice as fast", result.twiceConductivityFt),
    ...checkLines(result.cited),
  ],
  cites: (result) => result.cited,
});

function spacingLine(label: string, feet: number | null): WorkingLine[] {
  return feet === null ? [] : [line(label, feet, "ft")];
}

export const tileDrainRate = worksheetFunction({
  name: "DRAINRATE",
  family: "drainage",
  summary: "Water that tile at a given spacing carries off in a day.",
  asks: ["is my tile close enough", "drainage coefficient of my tile", "how fast will it drain"],
  args: { spacing, depth, midwayTable, conductivity, depthToBarrier, radius, conductivityBelow },
  returns: { shape: "one", unit: "in/day", says: "inches a day in steady rain, as far as the soil lets it through" },
  sources: ["hooghoudt-1940", "van-der-molen-wesseling-1991", "usual-tube-radius", "clapp-hornberger-1978"],
  cautions: [drainageLaw, drainageDesign],
  example: {
    call: [60, 4, 1.5, 1.97, 10],
    gives: 0.6503,
    tolerance: 0.0001,
    because: "by hand: (8 × 1.97 × 3.7013 × 2.5 + 4 × 1.97 × 2.5²) / 60² × 12 = 195.08 / 3,600 × 12",
  },
  compute: (values) => drainRateOf(siteOf(values), values.spacing),
  value: (result) => result.rateInPerDay,
  working: (result) => [
    line("Water table over the drains, midway", result.tableOverDrainFt, "ft"),
    line("Barrier below the drains", result.barrierBelowDrainFt, "ft"),
    line("Equivalent depth", result.equivalentDepthFt, "ft"),
    line("Conductivity", result.conductivityFtPerDay, "ft/day"),
    line("Carried off", result.rateInPerDay, "in/day"),
    line("Mind", "the pipe may carry less: PIPECAPACITY tells"),
    ...checkLines(result.cited),
  ],
  cites: (result) => result.cited,
});

export const soilSpacing = worksheetFunction({
  name: "SOILSPACING",
  family: "drainage",
  summary: "Usual tile spacing in Minnesota for a soil and a level of drainage.",
  asks: ["usual tile spacing by soil type", "tile spacing for clay loam"],
  args: {
    soil: choice(spacingSoilWords, { says: "texture: clay loam, silty clay loam, silt loam, loam or sandy loam" }),
    level: choice(drainageLevelWords, { says: "fair (1/4 in/day), good (3/8) or excellent (1/2)" }),
  },
  returns: { shape: "one", unit: "ft", says: "usual distance from drain to drain" },
  sources: ["umn-drainage-2001"],
  cautions: [digging, drainageLaw, drainageDesign],
  example: { call: ["loam", "good"], gives: 140, because: "printed: loam, 140 ft for 3/8 inch a day" },
  compute: ({ soil, level }) => ({ row: soilSpacingOf(soil), level }),
  value: ({ row, level }) => row[level],
  working: ({ row, level }) => [
    line("Permeability", row.permeability),
    line("Carries off", drainageLevels[level].inPerDay, "in/day"),
    line("Usual depth", `${row.depthLowFt} to ${row.depthHighFt}`, "ft"),
    line("Usual spacing", row[level], "ft"),
    ...checkLines([row]),
  ],
  cites: ({ row }) => [row],
});

export const drainCoefficient = worksheetFunction({
  name: "DRAINCOEFFICIENT",
  family: "drainage",
  summary: "Drainage coefficient in print for a soil, crop and kind of surface inlet.",
  asks: ["which drainage coefficient", "how many inches a day should tile drain"],
  args: {
    soil: choice(drainSoilWords, { says: "mineral or organic" }),
    crop: choice(drainCropWords, { says: "field crops or truck crops" }),
    inlets: choice(surfaceInletWords, { says: "surface inlets: none, blind or open" }),
  },
  returns: { shape: "table", unit: "in/day", says: "the low and the high end in print" },
  sources: ["umn-drainage-2001", "nrcs-neh-650-14", "asae-ep260", "cooke-illinois-2019"],
  cautions: [drainageLaw, drainageDesign],
  example: {
    call: ["mineral", "field crops", "none"],
    gives: [
      ["low in/day", "high in/day"],
      [0.375, 0.5],
    ],
    because: "printed: mineral soil, field crops, no surface inlets, 3/8 to 1/2",
  },
  compute: ({ soil, crop, inlets }) => drainCoefficientOf(soil, crop, inlets),
  value: ({ row }) => [
    ["low in/day", "high in/day"],
    [row.lowInPerDay, row.highInPerDay],
  ],
  working: ({ row, practice, cited }) => [
    line("Low", row.lowInPerDay, "in/day"),
    line("High", row.highInPerDay, "in/day"),
    ...(practice ? [line("Illinois practice", `${practice.lowInPerDay} or ${practice.highInPerDay}`, "in/day")] : []),
    ...checkLines(cited),
  ],
  cites: ({ cited }) => cited,
});
