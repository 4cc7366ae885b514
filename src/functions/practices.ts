import { practiceDecision } from "./practices/practice-decision";
import { practiceOdds } from "./practices/practice-odds";
import { practicePick } from "./practices/practice-pick";
import { practiceStrips } from "./practices/practice-strips";
import { practiceTestValue } from "./practices/practice-test-value";
import { practiceUpdate } from "./practices/practice-update";

export { practiceDecision, practiceOdds, practicePick, practiceStrips, practiceTestValue, practiceUpdate };

export const practiceFunctions = [
  practiceOdds,
  practiceUpdate,
  practiceTestValue,
  practiceStrips,
  practicePick,
  practiceDecision,
] as const;
