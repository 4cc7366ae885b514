import { practiceCrop, practicePlans, practiceTerms, type PracticePlan } from "../../../scenario/practice-plans";
import { trialExamples, type TrialExample } from "../../../scenario/trial-examples";
import type { FarmContext } from "../farm-context";

/** What the sheets about practices are made from. */
export interface PracticeContext {
  /** The crop the practices are for. */
  readonly crop: string;
  /** A yield of that crop that no practice passes, to the nearest 5. */
  readonly attainableBuPerAc: number;
  /** Rows of every table of practices. */
  readonly rows: number;
  /** Examples that fill the first rows. */
  readonly practices: readonly PracticePlan[];
  readonly trials: readonly TrialExample[];
}

/** Rows of every table of practices. */
export const practiceRows = 10;

export function practiceContext({ crops, fields, withDemo }: FarmContext): PracticeContext {
  const chosen = crops.find(({ crop: name }) => name === practiceCrop) ?? crops[0];
  const crop = chosen?.crop ?? "";
  const hasField = (name: string) => fields.some(({ field }) => field === name);
  const practices =
    withDemo && crop === practiceCrop ? practicePlans.filter(({ field }) => field === null || hasField(field)) : [];
  const isWeighed = (name: string) => practices.some(({ practice }) => practice === name);
  return {
    crop,
    attainableBuPerAc: 5 * Math.round(((chosen?.yieldBuPerAc ?? 0) * practiceTerms.attainableShare) / 5),
    rows: practiceRows,
    practices,
    trials: trialExamples.filter(({ practice, field }) => isWeighed(practice) && hasField(field)),
  };
}
