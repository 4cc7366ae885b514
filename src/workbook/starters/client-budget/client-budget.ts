import type { WorkbookModel } from "../../model/workbook-model";
import type { StarterChoices } from "../choices";
import { changesSheet } from "./changes-sheet";
import { clientContext, type ClientContext } from "./client-context";
import { clientSheet } from "./client-sheet";
import { compareSheet } from "./compare-sheet";
import { fieldsTodaySheet } from "./fields-today-sheet";
import { clientSoilSheet } from "./client-soil-sheet";
import { reportSheet } from "./report-sheet";

/** A consultant's visit: the client's fields today, proposed changes as partial budgets, one page to leave behind. */
export function clientBudget(choices: StarterChoices): WorkbookModel {
  return clientBudgetOf(clientContext(choices));
}

export function clientBudgetOf(context: ClientContext): WorkbookModel {
  const { clientName, group, soil } = context;
  return {
    starter: "client-budget",
    title: `${clientName} client budget`,
    ...(group !== undefined && { group }),
    sheets: [
      clientSheet(context),
      fieldsTodaySheet(context),
      ...(soil ? [clientSoilSheet(soil, context.rows)] : []),
      changesSheet(context),
      compareSheet(context),
      reportSheet(context),
    ],
  };
}
