import { practiceLimits } from "../../../../core/practices/practice-limits";
import { interactionWords } from "../../../../functions/practices/practice-pick";
import { formula } from "../../../formula/expression";
import { place, type Reference } from "../../../formula/reference";
import type { EntriesBlock, Entry } from "../../../model/block";
import { formats } from "../../../model/cell";
import { oneOf, within } from "../../../model/columns";
import { computedEntry, typedEntry, wordsEntry } from "../../../model/entries";
import { practiceTerms } from "../../../scenario/practice-plans";
import { ofBudget } from "../budgets/budget-rows";
import type { PracticeContext } from "../practices/practice-context";
import { term } from "../practices/practice-terms-block";

type StackTerm = "crop" | "budget" | "most" | "interaction" | "yieldNow" | "attainable" | "together";

/** A line of the terms on which practices are put together. */
export const stackTerm = (key: StackTerm): Reference => place(`stack-terms.${key}`);

/** Ways that gains come together which need nothing but a yield to aim at. */
export const stackInteractions = (["additive", "multiplicative", "diminishing"] as const).map(
  (key) => interactionWords.words[key].label,
);

export function stackTermsBlock(context: PracticeContext): EntriesBlock {
  return {
    kind: "entries",
    key: "stack-terms",
    title: "On what terms",
    entries: [...budgetLines(), ...gainLines(context)],
  };
}

function budgetLines(): Entry[] {
  return [
    wordsEntry({ key: "crop", label: "Crop", says: "From the sheet of practices." }, formula`${term("crop")}&""`),
    typedEntry(
      {
        key: "budget",
        label: "Most to spend",
        unit: "$/ac",
        format: formats.cents,
        says: "On new practices, spread over all acres of the crop.",
      },
      practiceTerms.budgetUsdPerAc,
      within(practiceLimits.budget, "Dollars to spend on new practices, an acre of the crop"),
    ),
    typedEntry(
      {
        key: "most",
        label: "New practices at most",
        format: formats.whole,
        says: "As many as you can carry out well in one season.",
      },
      practiceTerms.mostPractices,
      { kind: "between", min: 0, max: 100, whole: true, prompt: "Practices to take up at most." },
    ),
  ];
}

function gainLines({ attainableBuPerAc }: PracticeContext): Entry[] {
  return [
    typedEntry(
      {
        key: "interaction",
        label: "Gains come together",
        says: "additive: they add up; diminishing: each closes a share of the gap that the others leave.",
      },
      stackInteractions[0] ?? null,
      oneOf(stackInteractions, "How the gains of several practices come together."),
    ),
    computedEntry(
      {
        key: "yieldNow",
        label: "Yield without them",
        unit: "bu/ac",
        format: formats.one,
        says: "From the crop budgets.",
      },
      ofBudget("yield", term("crop")),
    ),
    typedEntry(
      {
        key: "attainable",
        label: "Yield that none passes",
        unit: "bu/ac",
        format: formats.one,
        says: "Only diminishing gains need it: the best your ground has given.",
      },
      attainableBuPerAc,
      within(practiceLimits.yield, "Best yield to reach with everything done"),
    ),
    typedEntry(
      {
        key: "together",
        label: "Beliefs off the same way",
        format: formats.two,
        says: "0: each gain is off on its own; 1: all alike. 0.3 is our own choice.",
      },
      practiceTerms.sharedOptimism,
      { kind: "between", min: 0, max: 1, prompt: "How far your beliefs are all too high or all too low together." },
    ),
  ];
}
