import { drainageLimits } from "../../core/drainage/drainage-limits";
import { tileCost as tileCostOf, tileLength as tileLengthOf } from "../../core/drainage/tile-cost";
import { line, optional, quantity, worksheetFunction } from "../frame";
import { spacing } from "./drain-arguments";
import { digging, drainageDesign, drainageLaw } from "../cautions";

export const tileLength = worksheetFunction({
  name: "TILELENGTH",
  family: "drainage",
  summary: "Feet of tile on an acre at a spacing.",
  asks: ["how many feet of tile per acre", "tile footage"],
  args: { spacing },
  returns: { shape: "one", unit: "ft/ac", says: "feet of lateral, mains not counted" },
  sources: ["tile-cost"],
  example: { call: [50], gives: 871.2, because: "by hand: 43,560 / 50" },
  compute: (values) => tileLengthOf(values.spacing),
  value: (feet) => feet,
  working: (feet, values) => [
    line("Spacing", values.spacing, "ft"),
    line("Laterals", feet, "ft/ac"),
    line("Laterals on 40 acres", feet * 40, "ft"),
  ],
});

export const tileCost = worksheetFunction({
  name: "TILECOST",
  family: "drainage",
  summary: "Cost of tiling an acre: laterals, mains, outlet and design.",
  asks: ["what does tile cost per acre", "tiling cost", "cost of pattern tile"],
  args: {
    spacing,
    pricePerFoot: quantity(drainageLimits.pricePerFoot, {
      says: "a foot of lateral, tubing and installation together",
    }),
    acres: optional(
      quantity(drainageLimits.acresDrained, { says: "acres that share mains, outlet and design" }),
      null,
      "asked for when there are any to share",
    ),
    mainFeet: optional(quantity(drainageLimits.mainFeet, { says: "feet of main" }), 0, "0: no main"),
    mainPrice: optional(
      quantity(drainageLimits.pricePerFoot, { says: "a foot of main, pipe and installation together" }),
      null,
      "asked for when there is a main",
    ),
    fixedCost: optional(quantity(drainageLimits.fixedCost, { says: "outlet, fittings, design, permits" }), 0, "0"),
  },
  returns: { shape: "one", unit: "$/ac", says: "paid once; YEARLYCOST turns it into a yearly cost" },
  sources: ["tile-cost"],
  cautions: [digging, drainageLaw],
  example: {
    call: [50, 1.1, 40, 1320, 6, 4000],
    gives: 1256.32,
    because: "by hand: 871.2 × 1.10 = 958.32; (1,320 × 6 + 4,000) / 40 = 11,920 / 40 = 298",
  },
  compute: (values) =>
    tileCostOf({
      spacingFt: values.spacing,
      lateralUsdPerFt: values.pricePerFoot,
      acres: values.acres,
      mainFt: values.mainFeet,
      mainUsdPerFt: values.mainPrice,
      fixedUsd: values.fixedCost,
    }),
  value: (result) => result.costUsdPerAc,
  working: (result) => [
    line("Laterals", result.lateralFtPerAc, "ft/ac"),
    line("Laterals", result.lateralUsdPerAc, "$/ac"),
    line("Mains", result.mainUsdPerAc, "$/ac"),
    line("Outlet, fittings, design", result.fixedUsdPerAc, "$/ac"),
    line("Cost", result.costUsdPerAc, "$/ac"),
    ...(result.jobUsd === null ? [] : [line("The whole job", result.jobUsd, "$")]),
    line("Mind", drainageDesign),
  ],
});
