import type { Expression, Term } from "../../formula/expression";
import { lookUp } from "../../formula/natives";
import { cropTable } from "./headers";

/** What the table of crops says about a crop. */
export function ofCrop(crop: Term, column: keyof typeof cropTable.headers): Expression {
  return lookUp(crop, cropTable.all("crop"), cropTable.all(column));
}
