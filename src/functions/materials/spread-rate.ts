import { materialLimits } from "../../core/materials/material-limits";
import { spreadRate as spreadRateOf } from "../../core/materials/spread-rate";
import { line, quantity, worksheetFunction } from "../frame";
import { machinery } from "../cautions";

export const spreadRate = worksheetFunction({
  name: "SPREADRATE",
  family: "materials",
  summary: "Pounds per acre a dry spreader puts on, from what it spread over a measured run.",
  asks: [
    "calibrate the spreader",
    "how many pounds is the spreader putting on",
    "spreader pan test",
    "set the fertilizer spreader",
  ],
  args: {
    poundsCaught: quantity(materialLimits.poundsCaught, { says: "pounds spread or caught over the run" }),
    swath: quantity(materialLimits.swath, { says: "width one pass covers, from the middle of one pass to the next" }),
    distance: quantity(materialLimits.distance, { says: "length of the run" }),
  },
  returns: { shape: "one", unit: "lb/ac", says: "pounds of product per acre" },
  sources: ["spreader-catch"],
  cautions: [
    machinery,
    "Keep people out of the throw of the spreader.",
    "A right rate can still lie unevenly: catch pans across the swath show the pattern.",
  ],
  example: {
    call: [20, 40, 100],
    gives: 217.8,
    because: "by hand: 20 × 43,560 / (40 × 100) = 871,200 / 4,000",
  },
  compute: ({ poundsCaught, swath, distance }) =>
    spreadRateOf({ caughtLb: poundsCaught, swathFt: swath, distanceFt: distance }),
  value: (result) => result.rateLbPerAc,
  working: (result, { poundsCaught }) => [
    line("Pounds spread", poundsCaught, "lb"),
    line("Ground covered", result.areaSqFt, "sq ft"),
    line("Ground covered", result.areaAc, "ac"),
    line("Rate", result.rateLbPerAc, "lb/ac"),
  ],
});
