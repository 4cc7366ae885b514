import type { StarterChoices } from "./choices";
import { clientSheets } from "./client-budget/client-sheets";
import { farmSheets } from "./farm-plan/farm-sheets";
import { quickSheet } from "./quick-what-if/quick-sheet";
import type { StarterSheet } from "./starter-sheet";

export { choiceProblems, type ChoiceProblem } from "./choice-problems";

export {
  choiceLimits,
  cropChoice,
  defaultChoices,
  starterCrops,
  type CropChoice,
  type StarterChoices,
} from "./choices";
export { allFarmParts, farmParts, isFarmPart, type FarmPart } from "./farm-parts";
export { isWanted, type StarterSheet } from "./starter-sheet";

export type StarterKey = "farm-plan" | "client-budget" | "quick-what-if";

/** A workbook the pane can start, with what a person wants to know before it is written. */
export interface Starter {
  readonly key: StarterKey;
  readonly title: string;
  readonly forWhom: string;
  /** One sentence. */
  readonly summary: string;
  /** The sheets it can make, in order, each with its purpose in a line. */
  readonly sheets: readonly StarterSheet[];
  /** Choices that matter for this starter; the others are not asked. */
  readonly asks: readonly (keyof StarterChoices)[];
}

export const starters: readonly Starter[] = [
  {
    key: "farm-plan",
    title: "Farm plan",
    forWhom: "a grower planning next season field by field",
    summary:
      "Fields, soil tests, what crops take and what goes back, lime, fertilizer and seed, budgets and a page to show the landlord or lender.",
    sheets: Object.values(farmSheets),
    asks: ["farmName", "guide", "crops", "numberOfFields", "withDemo", "parts"],
  },
  {
    key: "client-budget",
    title: "Client budget",
    forWhom: "a consultant going through one client's fields",
    summary: "Fields as they are farmed now, proposed changes as partial budgets, and a page to hand over.",
    sheets: Object.values(clientSheets),
    asks: ["farmName", "crops", "numberOfFields", "withDemo"],
  },
  {
    key: "quick-what-if",
    title: "Quick what if",
    forWhom: "anyone with one question about one crop",
    summary: "One sheet: break-evens, profit for other yields and prices, and what the grain takes from the soil.",
    sheets: [quickSheet],
    asks: ["crops"],
  },
];
