import { limits } from "../../core/limits";
import { limeNeed as limeNeedOf, type LimeNeed } from "../../core/soil/lime/lime-need";
import { choice, line, optional, quantity, worksheetFunction, type WorkingLine } from "../frame";
import { limeMethodWords, soilKindWords } from "../words";
import { checkLines } from "../check-lines";

export const limeNeed = worksheetFunction({
  name: "LIMENEED",
  family: "soil",
  summary: "Tons of fully effective lime that bring an acre to a target pH.",
  asks: ["how much lime", "tons of lime per acre", "raise the pH", "lime from buffer pH"],
  args: {
    pH: quantity(limits.soilPh, { says: "soil pH in water" }),
    bufferPH: optional(
      quantity(limits.bufferPh, { says: "buffer pH by the method's own buffer; a lime test index of 66 is 6.6" }),
      null,
      "not needed where the soil is at its target or the method reads no buffer",
    ),
    targetPH: quantity(limits.targetPh, { says: "pH wanted; most methods publish a few targets" }),
    method: choice(limeMethodWords, { says: "region whose buffer and lime table the laboratory used" }),
    depthIn: optional(
      quantity(limits.depth, { says: "depth of soil to lime" }),
      null,
      "the depth the method is printed for; KS needs one",
    ),
    soil: optional(choice(soilKindWords, { says: "mineral, mineral-organic or organic" }), "mineral", "mineral"),
    acidity: optional(
      quantity(limits.exchangeableAcidity, { says: "exchangeable acidity, which PA reads in place of a buffer pH" }),
      null,
      "not given",
    ),
    limeApplied: optional(quantity(limits.limeTons, { says: "lime spread lately, which NC credits" }), 0, "none"),
    monthsSince: optional(quantity(limits.months, { says: "months since that lime was spread" }), null, "not given"),
  },
  returns: { shape: "one", unit: "ton/ac", says: "tons of fully effective lime per acre" },
  sources: [
    "msu-e2567-1995",
    "ncda-circular1-2014",
    "psu-agronomy-guide",
    "ksu-mf2586",
    "uw-a2809",
    "adams-evans-1962",
    "omafra-811",
    "isu-pm1688-2002",
  ],
  cautions: [
    "A lime method belongs to its buffer: use the one your laboratory reports.",
    "Lime takes six to twelve months or more to react; a test taken sooner asks for lime twice.",
  ],
  example: {
    call: [5.9, 6.6, 6.5, "IN-MI-OH"],
    gives: 2.682,
    because: "by hand: (60.4 − 0.87 × 66) = 2.98 ton of 90 % limestone; × 0.90",
  },
  compute: ({ pH, bufferPH, targetPH, method, depthIn, soil, acidity, limeApplied, monthsSince }) =>
    limeNeedOf({
      ph: pH,
      bufferPh: bufferPH,
      targetPh: targetPH,
      method,
      depthIn,
      soil,
      acidityMeq: acidity,
      limedTonPerAc: limeApplied,
      monthsSince,
    }),
  value: (result) => result.needTonPerAc,
  working: (result, { pH, targetPH }) => [
    line("Method", result.method.label),
    line("Reads", result.method.reads),
    line("Rise wanted", Number((targetPH - pH).toFixed(2)), "pH"),
    ...(result.why === "rate" ? rateLines(result) : [line("No lime", reasons[result.why])]),
    line("Need of fully effective lime", result.needTonPerAc, "ton/ac"),
    ...checkLines(result.cited),
  ],
  cites: (result) => result.cited,
});

const reasons = {
  "at target": "the soil is at or above its target",
  "near target": "the method limes only where pH is more than 0.2 below target",
  "buffer needs none": "the buffer pH is above the range in which lime is needed",
} as const;

function rateLines(result: LimeNeed): WorkingLine[] {
  const { method, methodDepthIn, depthIn } = result;
  return [
    line("Rate the method prints", result.methodRate, result.methodUnit),
    line("Made of", method.basis),
    ...(methodDepthIn !== null && depthIn !== null && depthIn !== methodDepthIn
      ? [
          line(
            `Depth ${depthIn} in instead of ${Number(methodDepthIn.toFixed(2))} in`,
            depthIn / methodDepthIn,
            "times",
          ),
        ]
      : []),
    line("Share counted as fully effective", method.effectiveShare * 100, "%"),
    ...(result.creditTonPerAc > 0 ? [line("Credit for lime still reacting", result.creditTonPerAc, "ton/ac")] : []),
  ];
}
