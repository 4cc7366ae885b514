import type { WorkbookModel } from "../../model/workbook-model";
import type { StarterChoices } from "../choices";
import { changesSheet } from "./changes-sheet";
import { clientContext } from "./client-context";
import { clientSheet } from "./client-sheet";
import { compareSheet } from "./compare-sheet";
import { fieldsTodaySheet } from "./fields-today-sheet";
import { reportSheet } from "./report-sheet";

/** A consultant's visit: the client's fields today, proposed changes as partial budgets, one page to leave behind. */
export function clientBudget(choices: StarterChoices): WorkbookModel {
  const context = clientContext(choices);
  return {
    starter: "client-budget",
    title: `${choices.farmName} client budget`,
    sheets: [
      clientSheet(context),
      fieldsTodaySheet(context),
      changesSheet(context),
      compareSheet(context),
      reportSheet(),
    ],
  };
}
