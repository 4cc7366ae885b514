import { contourFactor as contourFactorOf } from "../../core/cover/contour-factor";
import { coverFactor as coverFactorOf } from "../../core/cover/cover-factor";
import { coverLimits } from "../../core/cover/cover-limits";
import { slopeFactor as slopeFactorOf } from "../../core/cover/slope-factor";
import { soilLoss as soilLossOf, soilLossRatio as soilLossRatioOf } from "../../core/cover/soil-loss";
import { slopeMethods, soilDepth, usualTolerance } from "../../reference/cover/erosion";
import { choice, line, optional, percent, quantity, worksheetFunction } from "../frame";
import { checkLines } from "../check-lines";
import { coverEffectWords, slopeMethodWords } from "./cover-words";

const planningCaution =
  "A planning estimate of sheet and rill erosion: conservation programs use their own approved procedure.";

const length = quantity(coverLimits.slopeLength, {
  says: "slope from its top to where soil settles or a channel begins",
});
const steepness = percent(coverLimits.steepness, { says: "feet of fall in 100 feet", smallIsUsual: true });

export const slopeFactor = worksheetFunction({
  name: "SLOPEFACTOR",
  family: "cover",
  summary: "Slope factor LS of the soil loss equation, by either published form.",
  asks: ["what is the LS factor", "how does slope change erosion"],
  args: {
    length,
    steepness,
    method: optional(
      choice(slopeMethodWords, { says: "USLE for the equation of 1978, RUSLE for that of 1997" }),
      "usle",
      "USLE 1978",
    ),
  },
  returns: { shape: "one", unit: "LS", says: "soil loss against a slope of 9 % and 72.6 ft" },
  sources: ["usda-ah537-1978", "usda-ah703-1997"],
  example: {
    call: [100, 5],
    gives: 0.53498,
    tolerance: 0.00005,
    because:
      "by hand: √(100 / 72.6) × (65.41 × 0.0024938 + 4.56 × 0.049938 + 0.065) = 1.17363 × 0.45583; printed as 0.536",
  },
  cautions: [planningCaution],
  compute: (values) => slopeFactorOf({ lengthFt: values.length, steepnessPct: values.steepness }, values.method),
  value: (result) => result.factor,
  working: (result) => [
    line("Length factor", result.lengthFactor),
    line("Exponent of the length", result.exponent),
    line("Steepness factor", result.steepnessFactor),
    line(`LS by ${slopeMethods[result.method].label}`, result.factor),
    line(`LS by ${slopeMethods[result.other.method].label}`, result.other.factor),
    ...(result.isLong
      ? [line("Mind", "past 400 ft water mostly runs together: look for the channel that ends the slope")]
      : []),
    ...checkLines(result.cited),
  ],
  cites: (result) => result.cited,
});

export const coverFactor = worksheetFunction({
  name: "COVERFACTOR",
  family: "cover",
  summary: "Soil loss under surface residue against that of bare ground.",
  asks: ["how much does residue cut erosion", "C factor from percent cover"],
  args: {
    cover: percent(coverLimits.cover, { says: "ground covered by residue" }),
    effect: optional(
      choice(coverEffectWords, { says: "where the wash comes from: typical cropland, sheet wash or rills" }),
      "typical",
      "typical cropland",
    ),
  },
  returns: { shape: "one", unit: "of bare ground", says: "the surface-cover part of C" },
  sources: ["usda-ah703-1997", "usda-ars-rusle-notes"],
  example: { call: [30], gives: 0.34994, tolerance: 0.0001, because: "by hand: e^(−0.035 × 30) = e^−1.05" },
  cautions: [planningCaution],
  compute: (values) => coverFactorOf(values.cover, values.effect),
  value: (result) => result.factor,
  working: (result) => [
    line("Exponent for each percent of cover", result.exponentPerPct),
    line("Soil loss against bare ground", result.factor),
    line("Where sheet wash rules", result.ofBareSoilPct.interrill, "%"),
    line("On typical cropland", result.ofBareSoilPct.typical, "%"),
    line("Where rills rule", result.ofBareSoilPct.rill, "%"),
    line("Mind", "C also holds canopy, roots and roughness, which lower it further"),
    ...checkLines([result.published]),
  ],
  cites: (result) => [result.published],
});

export const contourFactor = worksheetFunction({
  name: "CONTOURFACTOR",
  family: "cover",
  summary: "Practice factor P of rows on the contour, with the slope length it holds for.",
  asks: ["does contour farming cut erosion", "P factor for contouring"],
  args: {
    steepness,
    length: optional(length, null, "not checked against the longest slope"),
  },
  returns: { shape: "one", unit: "P", says: "soil loss against rows up and down the slope" },
  sources: ["usda-ah537-1978"],
  example: { call: [4, 250], gives: 0.5, because: "by reading: 3 to 5 %, up to 300 ft" },
  cautions: [planningCaution],
  compute: (values) => contourFactorOf(values.steepness, values.length),
  value: (result) => result.factor,
  working: (result) => [
    line("Steepness of the row used", `${result.row.fromPct} to ${result.row.toPct} %`),
    line("Longest slope", result.longestFt, "ft"),
    line("P", result.factor),
    ...checkLines([result.row]),
  ],
  cites: (result) => [result.row],
});

export const soilLoss = worksheetFunction({
  name: "SOILLOSS",
  family: "cover",
  summary: "Average soil lost to sheet and rill erosion in a year.",
  asks: ["how much soil do I lose", "tons of erosion per acre", "universal soil loss equation"],
  args: {
    rain: quantity(coverLimits.rain, { says: "R of the place; 100 to 300 in the Corn Belt" }),
    erodibility: quantity(coverLimits.erodibility, { says: "K of the soil, from the soil survey" }),
    slopeFactor: quantity(coverLimits.slopeFactor, { says: "LS; SLOPEFACTOR gives it" }),
    cover: quantity(coverLimits.coverFactor, {
      says: "C, loss against bare tilled ground; COVERFACTOR gives it from the percent of cover",
    }),
    practice: optional(
      quantity(coverLimits.practiceFactor, { says: "P; CONTOURFACTOR gives that of contouring" }),
      1,
      "1: rows up and down the slope",
    ),
  },
  returns: { shape: "one", unit: "ton/ac/yr", says: "soil lost" },
  sources: ["usda-ah537-1978", "missouri-g1650"],
  example: {
    call: [175, 0.32, 0.757, 0.2, 0.5],
    gives: 4.2392,
    because: "by hand: 175 × 0.32 = 56; × 0.757 × 0.2 × 0.5",
  },
  cautions: [planningCaution],
  compute: (values) =>
    soilLossOf({
      rain: values.rain,
      erodibility: values.erodibility,
      slopeFactor: values.slopeFactor,
      coverFactor: values.cover,
      practiceFactor: values.practice,
    }),
  value: (result) => result.lossTonPerAc,
  working: (result) => [
    line("Bare, tilled, rows up and down", result.bareTonPerAc, "ton/ac/yr"),
    line("Soil lost", result.lossTonPerAc, "ton/ac/yr"),
    line("Depth", result.depthIn, "in/yr"),
    result.yearsPerInch === null
      ? line("Years to an inch", "none is lost")
      : line("Years to an inch", result.yearsPerInch, "years"),
  ],
  cites: () => [soilDepth],
});

export const soilLossRatio = worksheetFunction({
  name: "SOILLOSSRATIO",
  family: "cover",
  summary: "Soil loss against what the soil is held to stand.",
  asks: ["is my erosion too high", "soil loss over T", "tolerable soil loss"],
  args: {
    loss: quantity(coverLimits.soilLoss, { says: "soil lost in a year; SOILLOSS gives it" }),
    tolerance: quantity(coverLimits.tolerance, {
      says: "T of the soil, from the soil survey: 1 to 5, 5 on deep soils",
    }),
  },
  returns: { shape: "one", unit: "× T", says: "above 1 more is lost than the soil is held to stand" },
  sources: ["nrcs-soil-handbook"],
  example: { call: [4.24, 5], gives: 0.848, because: "by hand: 4.24 / 5" },
  cautions: [planningCaution],
  compute: (values) => soilLossRatioOf(values.loss, values.tolerance),
  value: (result) => result.ratio,
  working: (result) => [
    line("Loss over tolerance", result.ratio),
    result.cutPct > 0 ? line("To cut", result.cutPct, "% of the loss") : line("To cut", "nothing"),
    line("Usual tolerance", `${usualTolerance.lowTonPerAc} to ${usualTolerance.highTonPerAc} ton/ac a year`),
    ...checkLines([usualTolerance]),
  ],
  cites: () => [usualTolerance],
});
