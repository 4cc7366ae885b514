import type { MatrixBlock } from "../../../model/block";
import { remarks } from "../../../model/paragraphs";
import type { SheetModel } from "../../../model/workbook-model";
import { tabColors } from "../../tab-colors";
import { answerRows, costRows, incomeRows, totalRows } from "./budget-rows";
import { cropHeads } from "../crop-lookup";
import { budgetWithPractices } from "../stack/budget-with-practices";
import type { FarmContext } from "../farm-context";
import { farmSheets } from "../farm-sheets";

export function budgetSheet(context: FarmContext): SheetModel {
  return {
    key: "budgets",
    name: farmSheets.budgets.name,
    tabColor: tabColors.answer,
    title: "Crop budgets",
    answers: "What an acre of each crop brings, what it costs, and the price or yield that covers it.",
    blocks: [
      budget(context),
      ...(context.parts.includes("practices") ? [budgetWithPractices(context)] : []),
      remarks(
        "Phosphate and potash are charged for what the grain takes away; raising or drawing down a test shows in the plans and ledgers.",
        "The amounts on cream are examples: write your own over them.",
      ),
    ],
    widths: [34, 10, ...context.crops.map(() => Math.max(18, 54 / context.crops.length))],
    print: { orientation: "portrait", onePage: true },
  };
}

function budget(context: FarmContext): MatrixBlock {
  const columns = cropHeads(context.crops);
  return {
    kind: "matrix",
    key: "budget",
    corner: "An acre of",
    columns,
    rows: [...incomeRows(columns), ...costRows(context, columns), ...totalRows(columns), ...answerRows(columns)],
  };
}
