import type { Expression, Term } from "../../formula/expression";
import { lookUpNumber, lookUpWords, wordsInRow } from "../../formula/natives";
import { oneOf } from "../../model/columns";
import type { Headers } from "../../model/table";
import { fieldTable, soilTable } from "./headers";

/**
 * The field that stands in the same row of the list of fields, so that a name is typed once; nothing when that row
 * is empty.
 */
export function fieldOfRow({ rowNumber }: Pick<Headers<string>, "rowNumber">): Expression {
  return wordsInRow(fieldTable.all("field"), rowNumber);
}

/** A cell for one of the fields. */
export const fieldList = oneOf({ table: fieldTable.table, column: "field" }, "A field from the list of fields.");

type FieldColumn = keyof typeof fieldTable.headers;
type SoilColumn = keyof typeof soilTable.headers;

/** A number that the list of fields gives for the field of this row; blank stays blank. */
export function fromFields(field: Term, column: FieldColumn): Expression {
  return lookUpNumber(field, fieldTable.all("field"), fieldTable.all(column));
}

/** Words that the list of fields gives. */
export function wordsFromFields(field: Term, column: FieldColumn): Expression {
  return lookUpWords(field, fieldTable.all("field"), fieldTable.all(column));
}

/** What the soil test of this row's field says. A field without a test gives nothing. */
export function fromSoilTest(field: Term, column: SoilColumn): Expression {
  return lookUpNumber(field, soilTable.all("field"), soilTable.all(column));
}
