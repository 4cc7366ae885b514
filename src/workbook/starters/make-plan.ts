import type { WorkbookModel } from "../model/workbook-model";
import type { WorkbookPlan } from "../plan";
import { planWorkbook } from "../plan-workbook";
import { nothingTaken, type TakenNames } from "../taken-names";
import type { StarterChoices } from "./choices";
import { clientBudget } from "./client-budget/client-budget";
import { farmPlan } from "./farm-plan/farm-plan";
import type { Starter, StarterKey } from "./index";
import { quickWhatIf } from "./quick-what-if/quick-what-if";

/** Apart from what a person is told about the starters: the pane loads it when a workbook is to be made. */
const models: Readonly<Record<StarterKey, (choices: StarterChoices) => WorkbookModel>> = {
  "farm-plan": farmPlan,
  "client-budget": clientBudget,
  "quick-what-if": quickWhatIf,
};

/**
 * The workbook of a starter, ready for any writer.
 *
 * @param taken names that the workbook it goes into already uses; all of ours step around them together
 */
export function makePlan({ key }: Starter, choices: StarterChoices, taken: TakenNames = nothingTaken): WorkbookPlan {
  return planWorkbook(models[key](choices), taken);
}
