import type { Expression, Term } from "../../formula/expression";
import { lookUp, lookUpNumber, lookUpWords } from "../../formula/natives";
import { oneOf } from "../../model/columns";
import { clientCrops, clientFields } from "./client-headers";

/** A cell for one of the client's fields. */
export const clientFieldList = oneOf(
  { table: clientFields.table, column: "field" },
  "A field from the list of fields.",
);

/** What the table of crops says about a crop. */
export function ofClientCrop(crop: Term, column: "price" | "costPerBushel"): Expression {
  return lookUp(crop, clientCrops.all("crop"), clientCrops.all(column));
}

/** A number of a field; blank stays blank. */
export function ofClientField(field: Term, column: keyof typeof clientFields.headers): Expression {
  return lookUpNumber(field, clientFields.all("field"), clientFields.all(column));
}

export function cropOfClientField(field: Term): Expression {
  return lookUpWords(field, clientFields.all("field"), clientFields.all("crop"));
}
