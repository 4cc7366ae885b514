import type { Expression, Term } from "../../formula/expression";
import { lookUp } from "../../formula/natives";
import { oneOf } from "../../model/columns";
import { cropTable } from "./headers";

/** A cell for one of the crops. */
export const cropList = oneOf({ table: cropTable.table, column: "crop" }, "One of the crops of the plan.");

/** What the table of crops says about a crop. */
export function ofCrop(crop: Term, column: keyof typeof cropTable.headers): Expression {
  return lookUp(crop, cropTable.all("crop"), cropTable.all(column));
}
