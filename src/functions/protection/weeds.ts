import { weedBenefit as weedBenefitOf, weedThreshold as weedThresholdOf } from "../../core/protection/weed-benefit";
import type { WeedCurve, WeedSlope } from "../../core/protection/weed-curve";
import { weedLoss as weedLossOf } from "../../core/protection/weed-loss";
import { pestLimits } from "../../core/protection/pest-limits";
import type { WeedCurveKey } from "../../reference/protection/weeds";
import { weedCurves, weedCurveTable } from "../../reference/protection/weeds";
import { line, optional, percent, quantity, worksheetFunction, type WorkingLine } from "../frame";
import { orWord } from "../number-or-word";
import { weedCurveWords } from "./protection-words";
import { labelLaw } from "../cautions";

const singleStudies =
  "Loss for a weed differs between sites and years by half and by double, and most with the time the weeds come up: use a local trial's numbers, and read the range in the working. Weeds left also make seed for years to come, which is not counted here.";

const density = quantity(pestLimits.density, { says: "weeds, counted on the area that the slope stands for" });
const slope = orWord<WeedCurveKey, WeedSlope>(
  quantity(pestLimits.slope, {
    says: "% of the yield lost to one weed per area while weeds are few; or a published curve, counted in a square meter (1 per square foot is 10.76)",
  }),
  weedCurveWords,
  { ofNumber: (slopePct) => ({ slopePct }), ofWord: (curve) => ({ curve }) },
);
const yieldGoal = quantity(pestLimits.yield, { says: "yield without weeds" });
const control = percent(pestLimits.control, { says: "share of the weeds that the treatment takes out" });
const price = quantity(pestLimits.price, { says: "price of the crop" });
const ceiling = optional(
  percent(pestLimits.ceiling, { says: "most that weeds without number take, % of the yield" }),
  null,
  "the published curve's, or 100 with a typed slope",
);
const daysAfterCrop = optional(
  quantity(pestLimits.daysAfterCrop, { says: "days from the crop's emergence to the weeds'" }),
  0,
  "0: up together",
);
const fade = optional(
  quantity(pestLimits.fade, {
    says: "how much a day's delay weakens the weeds: 0.1 takes about a tenth off the slope",
  }),
  null,
  "asked for when the weeds come up on another day",
);

interface CurveAsTyped {
  readonly slope: WeedSlope;
  readonly ceiling: number | null;
  readonly daysAfterCrop: number;
  readonly fade: number | null;
}

interface TreatmentAsTyped {
  readonly yield: number;
  readonly control: number;
  readonly price: number;
  readonly cost: number;
}

function curveOf(values: CurveAsTyped) {
  return {
    slope: values.slope,
    ceilingPct: values.ceiling,
    daysAfterCrop: values.daysAfterCrop,
    fadePerDay: values.fade,
  };
}

function treatmentOf(values: TreatmentAsTyped) {
  return {
    yieldBuPerAc: values.yield,
    controlPct: values.control,
    priceUsdPerBu: values.price,
    costUsdPerAc: values.cost,
  };
}

export const weedLoss = worksheetFunction({
  name: "WEEDLOSS",
  family: "protection",
  summary: "Percent of the yield lost to weeds that stay.",
  asks: ["how much yield do weeds cost", "yield loss from weeds", "volunteer soybean in corn"],
  args: { density, slope, ceiling, daysAfterCrop, fade },
  returns: { shape: "one", unit: "%", says: "yield lost" },
  sources: ["cousens-1985", "cousens-1987", "alms-2016"],
  cautions: [labelLaw, singleStudies],
  example: { call: [4, 3.2, 56], gives: 10.42, because: "by hand: 3.2 × 4 / (1 + 12.8 / 56) = 12.8 / 1.22857" },
  compute: (values) => weedLossOf({ density: values.density, ...curveOf(values) }),
  value: (result) => result.lossPct,
  working: (result) => [
    ...curveLines(result.curve),
    line("Yield lost", result.lossPct, "%"),
    line("With half the slope", result.lowPct, "%"),
    line("With twice the slope", result.highPct, "%"),
  ],
  cites: (result) => citedIn(result.curve),
});

export const weedBenefit = worksheetFunction({
  name: "WEEDBENEFIT",
  family: "protection",
  summary: "Dollars an acre that taking weeds out saves, less its cost.",
  asks: ["does it pay to spray these weeds", "value of weed control"],
  args: {
    density,
    slope,
    yield: yieldGoal,
    control,
    price,
    cost: optional(
      quantity(pestLimits.cost, { says: "cost of the treatment, product and pass" }),
      0,
      "0: before its cost",
    ),
    ceiling,
    daysAfterCrop,
    fade,
  },
  returns: { shape: "one", unit: "$/ac", says: "value saved less the cost" },
  sources: ["cousens-1985", "cousens-1987", "alms-2016"],
  cautions: [labelLaw, singleStudies],
  example: {
    call: [4, 3.2, 200, 90, 4.5, 25, 56],
    gives: 57.505,
    because:
      "by hand: loss 12.8 / 1.228571 = 10.4186 %, left 1.28 / 1.022857 = 1.2514 %; $900 × 9.1672 % = $82.505; − $25",
  },
  compute: (values) =>
    weedBenefitOf({
      density: values.density,
      ...treatmentOf(values),
      ...curveOf(values),
    }),
  value: (result) => result.netUsdPerAc,
  working: (result) => [
    ...curveLines(result.curve),
    line("Lost if nothing is done", result.lossPct, "%"),
    line("Lost to the weeds left", result.leftPct, "%"),
    line("Saved", result.savedUsdPerAc, "$/ac"),
    line("Saved at the worst, with half or twice the slope", result.lowSavedUsdPerAc, "$/ac"),
    line("Saved at the best", result.highSavedUsdPerAc, "$/ac"),
    line("Less the cost", result.netUsdPerAc, "$/ac"),
    line(
      "Begins to pay at",
      result.payingDensity ?? "no density of weeds",
      result.payingDensity === null ? "" : "weeds",
    ),
  ],
  cites: (result) => citedIn(result.curve),
});

export const weedThreshold = worksheetFunction({
  name: "WEEDTHRESHOLD",
  family: "protection",
  summary: "Weeds at which taking them out begins to pay.",
  asks: ["how many weeds are too many", "weed threshold"],
  args: {
    slope,
    yield: yieldGoal,
    control,
    price,
    cost: quantity(pestLimits.cost, { says: "cost of the treatment, product and pass" }),
    ceiling,
    daysAfterCrop,
    fade,
  },
  returns: { shape: "one", unit: "weeds", says: "weeds on the area that the slope stands for" },
  sources: ["cousens-1985", "cousens-1987", "alms-2016"],
  cautions: [labelLaw, singleStudies],
  example: {
    call: [2, 100, 100, 5, 20, 50],
    gives: 2.174,
    because: "by hand: cost is 4 % of $500; 2 × d / (1 + 2 × d / 50) = 4 where d = 4 / (2 × (1 − 4 / 50)) = 2.174",
  },
  compute: (values) => weedThresholdOf({ ...treatmentOf(values), ...curveOf(values) }),
  value: (result) => result.density,
  working: (result) => [
    ...curveLines(result.curve),
    line("Begins to pay at", result.density, "weeds"),
    line("With twice the slope", result.lowDensity ?? "none", "weeds"),
    line("With half the slope", result.highDensity ?? "none", "weeds"),
  ],
  cites: (result) => citedIn(result.curve),
});

function curveLines({ slopePct, ceilingPct, published }: WeedCurve): WorkingLine[] {
  const of = published ? `, ${weedCurves[published.curve].label}` : "";
  return [
    line(`First weeds take${of}`, slopePct, published ? weedCurveTable.units.slopePct : "% for one weed per area"),
    line("Weeds without number take", ceilingPct, "%"),
  ];
}

function citedIn({ published }: WeedCurve) {
  return published ? [published] : [];
}
