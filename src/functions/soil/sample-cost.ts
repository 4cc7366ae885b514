import { sampleCost as sampleCostOf } from "../../core/soil/sample-cost";
import { soilLimits } from "../../core/soil/soil-limits";
import { line, optional, quantity, worksheetFunction } from "../frame";

export const sampleCost = worksheetFunction({
  name: "SAMPLECOST",
  family: "soil",
  summary: "Yearly cost of soil sampling on an acre, by grid, zone or whole field.",
  asks: ["what does soil sampling cost", "grid or whole-field soil samples", "cost of grid sampling per acre"],
  args: {
    acres: quantity(soilLimits.acresSampled, { says: "acres of the field" }),
    acresPerSample: quantity(soilLimits.acresPerSample, {
      says: "acres that one sample stands for: the size of a grid cell or zone, or all acres of the field",
    }),
    costPerSample: quantity(soilLimits.costPerSample, { says: "laboratory's price of a sample, postage included" }),
    years: quantity(soilLimits.yearsServed, { says: "years until the field is sampled again" }),
    collecting: optional(
      quantity(soilLimits.collecting, { says: "collecting the samples, where it is charged by the acre" }),
      0,
      "0: nothing by the acre",
    ),
  },
  returns: { shape: "one", unit: "$/ac/yr", says: "the laboratory and the collecting, spread over acres and years" },
  sources: ["sampling-cost"],
  example: {
    call: [80, 2.5, 10, 4, 6],
    gives: 2.5,
    because: "by hand: 80 / 2.5 = 32 samples; (32 × 10 + 6 × 80) / 80 = 800 / 80 = 10; 10 / 4",
  },
  compute: (values) =>
    sampleCostOf({
      acres: values.acres,
      acresPerSample: values.acresPerSample,
      costUsdPerSample: values.costPerSample,
      collectingUsdPerAc: values.collecting,
      years: values.years,
    }),
  value: (result) => result.costUsdPerAcYear,
  working: (result, values) => [
    line("Samples", result.samples),
    line("Laboratory", result.samplesUsd, "$"),
    line("Collecting", result.collectingUsd, "$"),
    line("Each time the field is sampled", result.roundUsd, "$"),
    line("On an acre", result.roundUsdPerAc, "$/ac"),
    line("Years it serves", values.years, "years"),
    line("Cost", result.costUsdPerAcYear, "$/ac/yr"),
  ],
});
