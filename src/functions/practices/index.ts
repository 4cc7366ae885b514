import type { WorksheetFunction } from "../frame";
import { practiceDecision } from "./practice-decision";
import { practiceOdds } from "./practice-odds";
import { practicePick } from "./practice-pick";
import { practiceStrips } from "./practice-strips";
import { practiceTestValue } from "./practice-test-value";
import { practiceUpdate } from "./practice-update";

/** Everything this family puts on the sheet, in the order of the documentation. */
export const practiceFunctions: readonly WorksheetFunction[] = [
  practiceOdds,
  practiceUpdate,
  practiceTestValue,
  practiceStrips,
  practicePick,
  practiceDecision,
];
