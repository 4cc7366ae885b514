import { bandRate } from "../../core/protection/band-rate";
import { carrierDensity, type CarrierWeight } from "../../core/protection/carrier-density";
import { sprayLimits } from "../../core/protection/spray-limits";
import { chartWater, solutions, type SolutionKey } from "../../reference/protection/solutions";
import { line, quantity, worksheetFunction } from "../frame";
import { orWord } from "../number-or-word";
import { solutionWords } from "./protection-words";
import { labelLaw } from "../cautions";

export const sprayDensity = worksheetFunction({
  name: "SPRAYDENSITY",
  family: "protection",
  summary: "Water rate to look up in a nozzle chart when the carrier is heavier or lighter than water.",
  asks: ["spraying 28 % nitrogen through nozzles", "density correction for nozzles", "nozzle chart for UAN"],
  args: {
    rate: quantity(sprayLimits.volume, { says: "rate of the solution wanted" }),
    poundsPerGallon: orWord<SolutionKey, CarrierWeight>(
      quantity(sprayLimits.weight, { says: "weight of the solution, or its name, such as 28-0-0" }),
      solutionWords,
      { ofNumber: (lbPerGal) => ({ lbPerGal }), ofWord: (solution) => ({ solution }) },
    ),
  },
  returns: { shape: "one", unit: "gal/ac", says: "rate of water that sets the same nozzle" },
  sources: ["unl-solutions-2016", "uga-sumner-density"],
  cautions: [labelLaw],
  example: { call: [20, 10.65], gives: 22.6, tolerance: 0.01, because: "by hand: 20 × √(10.65 / 8.34) = 20 × 1.130" },
  compute: (values) => carrierDensity({ rateGalPerAc: values.rate, weight: values.poundsPerGallon }),
  value: (result) => result.waterGalPerAc,
  working: (result) => [
    line(`Weight of the solution${named(result.published?.solution)}`, result.lbPerGal, "lb/gal"),
    line("Weight of water in the charts", chartWater.lbPerGal, "lb/gal"),
    line("Specific gravity", result.specificGravity),
    line("Its square root, the factor", result.factor),
    ...(result.published ? [line("Factor as printed", result.published.printedFactor)] : []),
    line("Look up in the chart", result.waterGalPerAc, "gal/ac"),
  ],
  cites: (result) => [chartWater, ...(result.published ? [result.published] : [])],
});

export const sprayBand = worksheetFunction({
  name: "SPRAYBAND",
  family: "protection",
  summary: "Product or spray used on a field acre when only a band over the row is treated.",
  asks: ["how much for a band application", "banding herbicide rate per field acre"],
  args: {
    rate: quantity(sprayLimits.rate, { says: "rate on the treated strip, in any unit per acre" }),
    bandWidth: quantity(sprayLimits.bandWidth, { says: "width of the band" }),
    rowWidth: quantity(sprayLimits.rowWidth, { says: "distance from row to row" }),
  },
  returns: { shape: "one", unit: "per field acre", says: "amount used on an acre of field, in the unit of rate" },
  sources: ["tank-arithmetic"],
  cautions: [labelLaw, "On the treated strip the rate stays at or below the label's broadcast rate."],
  example: { call: [2, 10, 30], gives: 0.6667, because: "by hand: 2 × 10 / 30" },
  compute: (values) =>
    bandRate({ broadcastRatePerAc: values.rate, bandWidthIn: values.bandWidth, rowWidthIn: values.rowWidth }),
  value: (result) => result.ratePerFieldAc,
  working: (result) => [
    line("Treated share of the field", result.treatedShare * 100, "%"),
    line("For a field acre", result.ratePerFieldAc, "per field acre"),
  ],
});

function named(solution: SolutionKey | null | undefined): string {
  return solution ? `, ${solutions[solution].label}` : "";
}
