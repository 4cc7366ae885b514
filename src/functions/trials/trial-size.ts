import { trialLimits } from "../../core/trials/trial-limits";
import { trialPower as trialPowerOf, trialSize as trialSizeOf, type TrialPower } from "../../core/trials/trial-power";
import { line, optional, percent, quantity, worksheetFunction, type WorkingLine } from "../frame";
import { chanceUnit, confidence } from "../chance";

const stripSD = quantity(trialLimits.stripSd, {
  says: "standard deviation from strip to strip inside a block; from your own past trials, 3 to 6 % of the yield where none is known",
});
const treatments = optional(
  quantity(trialLimits.treatments, { says: "treatments in the trial, the check among them" }),
  2,
  "2",
);

export const trialSize = worksheetFunction({
  name: "TRIALSIZE",
  family: "trials",
  summary: "Blocks a trial needs to see a gain.",
  asks: ["how many replications", "how many strips do I need", "how big a trial"],
  args: {
    gainToSee: quantity(trialLimits.gainToSee, { says: "smallest gain worth finding" }),
    stripSD,
    confidence: confidence(90),
    power: optional(
      percent(trialLimits.power, { says: "chance that a gain that is there shows as clear" }),
      80,
      "80: seen 8 times in 10",
    ),
    treatments,
  },
  returns: { shape: "one", unit: "blocks", says: "blocks, each holding one strip of every treatment" },
  sources: ["student-1908", "gomez-gomez-1984"],
  example: {
    call: [10, 10 / Math.SQRT2, 95],
    gives: 10,
    because:
      "by the noncentral t in another program (SciPy): gain equal to the SD of a difference; 9 pairs see it 75 times in a hundred, 10 pairs 80",
  },
  compute: (values) =>
    trialSizeOf(
      {
        gainBuPerAc: values.gainToSee,
        stripSdBuPerAc: values.stripSD,
        confidencePct: values.confidence,
        treatments: values.treatments,
      },
      values.power,
    ),
  value: (result) => result.blocks,
  working: (result, values) => [
    line("Blocks", result.blocks, "blocks"),
    line("Strips in all", result.blocks * values.treatments, "strips"),
    ...powerWorking(result),
  ],
});

export const trialPower = worksheetFunction({
  name: "TRIALPOWER",
  family: "trials",
  summary: "Chance that a trial of so many blocks shows a gain that is there.",
  asks: ["is my trial big enough", "will four blocks show it", "power of a strip trial"],
  args: {
    gain: quantity(trialLimits.gainToSee, { says: "true gain" }),
    stripSD,
    blocks: quantity(trialLimits.blocks, { says: "blocks in the trial" }),
    confidence: confidence(90),
    treatments,
  },
  returns: { shape: "one", unit: chanceUnit, says: "that the trial shows it as clear; show it with a % format" },
  sources: ["student-1908", "gomez-gomez-1984"],
  example: {
    call: [8, 9 / Math.SQRT2, 6, 95],
    gives: 0.42202,
    tolerance: 0.00005,
    because: "by the noncentral t in another program (SciPy): six pairs, a gain of 8, an SD of the difference of 9",
  },
  compute: (values) =>
    trialPowerOf(
      {
        gainBuPerAc: values.gain,
        stripSdBuPerAc: values.stripSD,
        confidencePct: values.confidence,
        treatments: values.treatments,
      },
      values.blocks,
    ),
  value: (result) => result.powerPct / 100,
  working: (result) => powerWorking(result),
});

function powerWorking(result: TrialPower): WorkingLine[] {
  return [
    line("Standard error of a difference", result.differenceErrorBuPerAc, "bu/ac"),
    line("Degrees of freedom", result.errorDf),
    line("Chance to see the gain", result.powerPct, "%"),
  ];
}
