import { curveLimits } from "../../core/curves/curve-limits";
import { responseBest as responseBestOf } from "../../core/curves/response-best";
import { responseCompare as responseCompareOf } from "../../core/curves/response-compare";
import { responseFit as responseFitOf } from "../../core/curves/response-fit";
import { responseModels } from "../../core/curves/response-models";
import { responseRange as responseRangeOf } from "../../core/curves/response-range";
import { responseYield as responseYieldOf } from "../../core/curves/response-yield";
import { curveCautions, highestRate, model, parameters, priceRatio, x, y } from "./curve-arguments";
import { highestTested, parametersOf } from "./curve-parameters";
import { compareTable, edgeWords, fitTable, rangeTable, unitWords } from "./curve-table";
import { line, optional, quantity, worksheetFunction } from "../frame";
import { confidence } from "../chance";

/** Sixteen pairs printed with their fit in the manual of a statistics package, as a segmented model. */
const printedRates = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 13, 15, 16].map((rate) => [rate]);
const printedYields = [46, 47, 57, 61, 62, 68, 69, 78, 70, 74, 77, 78, 74, 80, 80, 78].map((one) => [one / 100]);

export const responseFit = worksheetFunction({
  name: "RESPONSEFIT",
  family: "curves",
  summary: "Fits a response curve to rates and yields, with standard errors.",
  asks: ["fit a nitrogen response curve", "where does yield level off", "which rate gave the most yield in my trial"],
  args: {
    x,
    y,
    model: optional(model, "quadratic-plateau", "quadratic-plateau"),
    priceRatio: optional(priceRatio, null, "the best rate is left out"),
    confidence: confidence(95),
  },
  returns: {
    shape: "table",
    unit: "",
    says: "a row for each number of the curve with its standard error and range, then R², residual SD, AICc and the rates tested",
  },
  sources: ["cerrato-blackmer-1990", "heady-pesek-brown-1955", "hurvich-tsai-1989"],
  cautions: curveCautions,
  example: {
    call: [[[0], [50], [100], [150]], [[100], [121], [139], [160]], "linear"],
    gives: [
      ["Item", "Value", "Standard error", "Low 95 %", "High 95 %", "Unit"],
      ["Intercept", 100.3, 0.7937, 96.8849, 103.7151, "bu/ac"],
      ["Slope", 0.396, 0.008_485, 0.359_49, 0.432_51, "bu/ac per unit of x"],
      ["R²", 0.9991, "", "", "", "share of variation explained"],
      ["Residual SD", 0.948_68, "", "", "", "bu/ac"],
      ["AICc", "", "", "", "", "cannot be told from so few pairs"],
      ["Pairs used", 4, "", "", "", ""],
      ["Degrees of freedom", 2, "", "", "", ""],
      ["Lowest rate tested", 0, "", "", "", "units of x"],
      ["Highest rate tested", 150, "", "", "", "units of x"],
    ],
    tolerance: 0.0001,
    because:
      "by hand: sums about the means 75 and 130 give 4,950 / 12,500 = 0.396; the squared misses add to 1.8, over 2 left 0.9; standard errors √(0.9 / 12,500) and √(0.9 (1/4 + 75² / 12,500)); t 4.30265; R² 1 − 1.8 / 1,962",
  },
  compute: (values) =>
    responseFitOf({
      rates: values.x,
      yieldsBuPerAc: values.y,
      model: values.model,
      priceRatio: values.priceRatio,
      confidencePct: values.confidence,
    }),
  value: (result, values) => fitTable(result, values.confidence),
  working: (result) => [
    line("Curve", `y = ${responseModels[result.model].equation}`),
    ...[...result.parameters, ...result.derived, ...(result.best ? [result.best] : [])].map(({ facts, value }) =>
      line(facts.label, value, unitWords(facts)),
    ),
    line("Pairs used", result.pairs, "pairs"),
    line("Variation explained", result.r2 * 100, "%"),
    line("Yields lie off the curve by", result.residualSdBuPerAc, "bu/ac"),
  ],
});

export const responseCompare = worksheetFunction({
  name: "RESPONSECOMPARE",
  family: "curves",
  summary: "Fits six response curves to one trial and lays their best rates side by side.",
  asks: ["which response model fits best", "compare response curves", "does the model change the nitrogen rate"],
  args: { x, y, priceRatio },
  returns: {
    shape: "table",
    unit: "",
    says: "a row for each curve with its best rate, fit and what holds it",
  },
  sources: ["cerrato-blackmer-1990", "heady-pesek-brown-1955", "hurvich-tsai-1989"],
  cautions: curveCautions,
  example: {
    call: [printedRates, printedYields, 0.01],
    gives: [
      ["Model", "Best rate, units of x", "Standard error", "R²", "Residual SD, bu/ac", "AICc", "Note"],
      ["quadratic-plateau", 10.639_32, 0.820_23, 0.946_15, 0.027_826, -106.302_54, ""],
      ["linear-plateau", 8.009_51, 0.506_4, 0.937, 0.0301, -103.789_44, ""],
      ["quadratic", 11.230_32, 0.646_05, 0.943_79, 0.028_431, -105.614_39, ""],
      ["linear", 16, "", 0.817_72, 0.049_336, -90.427_76, "held at the highest rate tested"],
      ["mitscherlich", 11.1667, 1.199_92, 0.946_68, 0.027_691, -106.459_02, "lowest AICc"],
      ["square root", 11.662_18, 1.629_11, 0.940_75, 0.029_19, -104.771_14, ""],
    ],
    tolerance: 0.0001,
    because:
      "by another program: least squares of scipy 1.17 on sixteen printed pairs, its covariance by the delta method",
  },
  compute: (values) => responseCompareOf({ rates: values.x, yieldsBuPerAc: values.y, priceRatio: values.priceRatio }),
  value: compareTable,
  working: ({ models, closest }) => [
    ...models.flatMap(({ model: key, fit }) =>
      "because" in fit || fit.best === null
        ? []
        : [line(`Best rate, ${responseModels[key].label}`, fit.best.value, "units of x")],
    ),
    line("Lowest AICc", closest === null ? "cannot be told from so few pairs" : responseModels[closest].label),
  ],
});

export const responseBest = worksheetFunction({
  name: "RESPONSEBEST",
  family: "curves",
  summary: "The input rate that leaves most over its cost on a response curve.",
  asks: ["most profitable rate from my trial", "economic optimum rate", "where does the next pound stop paying"],
  args: { model, parameters, priceRatio, highestRate },
  returns: { shape: "one", unit: "units of x", says: "rate that returns most" },
  sources: ["cerrato-blackmer-1990", "heady-pesek-brown-1955"],
  cautions: curveCautions,
  example: {
    call: ["quadratic", [[98], [0.62], [-0.00155]], 0.111_111_111],
    gives: 164.158,
    tolerance: 0.001,
    because: "by hand: (0.50 / 4.50 − 0.62) / (2 × −0.00155) = −0.508889 / −0.0031",
  },
  compute: (values) =>
    responseBestOf({
      model: values.model,
      parameters: parametersOf(values.model, values.parameters),
      priceRatio: values.priceRatio,
      highestRate: values.highestRate ?? highestTested(values.parameters),
    }),
  value: (result) => result.bestRate,
  working: (result) => {
    const edge = edgeWords(result.heldAt, result.freeRate);
    return [
      line("Best rate", result.bestRate, "units of x"),
      line("Yield there", result.yieldBuPerAc, "bu/ac"),
      line("Over no input", result.gainBuPerAc, "bu/ac"),
      line("Less the input, in bushels", result.netGainBuPerAc, "bu/ac"),
      ...(edge ? [line("Note", edge)] : []),
    ];
  },
});

export const responseRange = worksheetFunction({
  name: "RESPONSERANGE",
  family: "curves",
  summary: "The best rate, and how far below and above it a rate returns almost as much.",
  asks: ["how far can I be off the best rate", "range of profitable rates", "what does a wrong rate cost"],
  args: {
    model,
    parameters,
    inputPrice: quantity(curveLimits.inputPrice, { says: "price of a unit of input, such as a lb of N" }),
    cropPrice: quantity(curveLimits.cropPrice, { says: "price of the crop" }),
    highestRate,
    within: optional(
      quantity(curveLimits.shortfall, { says: "dollars an acre one may fall short of the best" }),
      1,
      "1",
    ),
  },
  returns: {
    shape: "table",
    unit: "units of x",
    says: "the best rate between the lowest and highest that come near it",
  },
  sources: ["cerrato-blackmer-1990", "heady-pesek-brown-1955"],
  cautions: curveCautions,
  example: {
    call: ["quadratic", [[98], [0.62], [-0.00155]], 0.5, 4.5],
    gives: [
      ["Rate", "Units of x", "Yield, bu/ac", "Return over no input, $/ac", "Note"],
      ["Lowest within $1", 152.185, 156.456, 186.96, ""],
      ["Best", 164.158, 158.009, 187.96, ""],
      ["Highest within $1", 176.132, 159.117, 186.96, ""],
    ],
    tolerance: 0.01,
    because: "by hand: 164.158 ± √(1 / (4.50 × 0.00155)) = 164.158 ± 11.974; 4.50 × 60.009 − 0.50 × 164.158 = 187.96",
  },
  compute: (values) =>
    responseRangeOf({
      model: values.model,
      parameters: parametersOf(values.model, values.parameters),
      inputPriceUsd: values.inputPrice,
      cropPriceUsdPerBu: values.cropPrice,
      highestRate: values.highestRate ?? highestTested(values.parameters),
      withinUsdPerAc: values.within,
    }),
  value: (result, values) => rangeTable(result, values.within),
  working: (result) => {
    const edge = edgeWords(result.heldAt, result.freeRate);
    return [
      line("A unit of input costs", result.priceRatio, "bu"),
      line("Lowest rate near the best", result.low.rate, "units of x"),
      line("Best rate", result.best.rate, "units of x"),
      line("Highest rate near the best", result.high.rate, "units of x"),
      line("Return at the best rate", result.best.returnUsdPerAc, "$/ac"),
      ...(edge ? [line("Note", edge)] : []),
    ];
  },
});

export const responseYield = worksheetFunction({
  name: "RESPONSEYIELD",
  family: "curves",
  summary: "The yield a response curve expects at a rate.",
  asks: ["yield at a nitrogen rate", "draw the response curve", "what would this rate yield"],
  args: { model, parameters, x: quantity(curveLimits.rate, { says: "rate of the input" }) },
  returns: { shape: "one", unit: "bu/ac", says: "yield on the curve" },
  sources: ["cerrato-blackmer-1990", "heady-pesek-brown-1955"],
  example: {
    call: ["linear-plateau", [[110], [0.5], [120]], 150],
    gives: 170,
    because: "by hand: the join at 120 comes first: 110 + 0.5 × 120",
  },
  compute: (values) =>
    responseYieldOf({
      model: values.model,
      parameters: parametersOf(values.model, values.parameters),
      rate: values.x,
    }),
  value: (result) => result.yieldBuPerAc,
  working: (result) => [
    line("Yield with none", result.withNoneBuPerAc, "bu/ac"),
    line("Gain", result.gainBuPerAc, "bu/ac"),
    line("Yield", result.yieldBuPerAc, "bu/ac"),
  ],
});
