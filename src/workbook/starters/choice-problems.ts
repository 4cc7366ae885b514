import { crops } from "../../reference/crops";
import { guideWords } from "../../functions/words";
import { labelsOf } from "./word-lists";
import { choiceLimits, starterCrops, type CropChoice, type StarterChoices } from "./choices";

/** What keeps a choice from being used: the field of the form and a sentence about it. */
export interface ChoiceProblem {
  readonly field: keyof StarterChoices;
  readonly sentence: string;
}

/** Every choice that has to change before a workbook can be written; empty when all is well. */
export function choiceProblems(choices: StarterChoices): readonly ChoiceProblem[] {
  return [
    ...problem("farmName", farmNameProblem(choices.farmName)),
    ...problem("guide", guideProblem(choices.guide)),
    ...problem("crops", cropsProblem(choices.crops)),
    ...choices.crops.flatMap((crop) => problem("crops", cropProblem(crop))),
    ...problem("numberOfFields", fieldsProblem(choices.numberOfFields)),
  ];
}

function problem(field: keyof StarterChoices, sentence: string | undefined): ChoiceProblem[] {
  return sentence === undefined ? [] : [{ field, sentence }];
}

function farmNameProblem(name: string): string | undefined {
  if (name.trim() === "") return "Give the farm a name: it stands at the head of every page.";
  const { farmNameLength } = choiceLimits;
  if (name.length > farmNameLength)
    return `A farm name may have ${farmNameLength} letters; this one has ${name.length}.`;
  return undefined;
}

function guideProblem(guide: string): string | undefined {
  if (guideWords.find(guide) !== undefined) return undefined;
  return `No guide is called "${guide}". Known: ${labelsOf(guideWords).join(", ")}.`;
}

function cropsProblem(chosen: readonly CropChoice[]): string | undefined {
  if (chosen.length === 0) return "Choose at least one crop.";
  if (new Set(chosen.map(({ crop }) => crop)).size < chosen.length) return "A crop is chosen twice.";
  const unknown = chosen.find(({ crop }) => !starterCrops.includes(crop));
  return unknown && `The starters plan ${starterCrops.join(", ")}; got ${unknown.crop}.`;
}

function cropProblem({ crop, priceUsdPerBu, yieldBuPerAc }: CropChoice): string | undefined {
  const { label } = crops[crop];
  return (
    outside(`The price of ${label}`, priceUsdPerBu, choiceLimits.priceUsdPerBu, "$/bu") ??
    outside(`The yield of ${label}`, yieldBuPerAc, choiceLimits.yieldBuPerAc, "bu/ac")
  );
}

function fieldsProblem(count: number): string | undefined {
  const { min, max } = choiceLimits.fields;
  if (Number.isInteger(count)) return outside("The number of fields", count, choiceLimits.fields, "");
  return `The number of fields is a whole number from ${min} to ${max}.`;
}

function outside(
  what: string,
  value: number,
  { min, max }: { min: number; max: number },
  unit: string,
): string | undefined {
  if (value >= min && value <= max) return undefined;
  if (Number.isNaN(value)) return `${what} must be a number.`;
  return `${what} must be between ${min} and ${max}${unit && ` ${unit}`}; got ${value}.`;
}
