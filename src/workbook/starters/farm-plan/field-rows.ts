import { formula, type Expression, type Term } from "../../formula/expression";
import { lookUp, orBlank, quiet, wordsInRow } from "../../formula/natives";
import type { Headers } from "../../model/table";
import { fieldTable, soilTable } from "./headers";

/**
 * The field that stands in the same row of the list of fields, so that a name is typed once; nothing when that row
 * is empty.
 */
export function fieldOfRow({ rowNumber }: Pick<Headers<string>, "rowNumber">): Expression {
  return wordsInRow(fieldTable.all("field"), rowNumber);
}

type FieldColumn = keyof typeof fieldTable.headers;
type SoilColumn = keyof typeof soilTable.headers;

/** A number that the list of fields gives for the field of this row; blank stays blank. */
export function fromFields(field: Term, column: FieldColumn): Expression {
  return carried(lookUp(field, fieldTable.all("field"), fieldTable.all(column)));
}

/** Words that the list of fields gives. */
export function wordsFromFields(field: Term, column: FieldColumn): Expression {
  return quiet(formula`${lookUp(field, fieldTable.all("field"), fieldTable.all(column))}&""`);
}

/** What the soil test of this row's field says. A field without a test gives nothing. */
export function fromSoilTest(field: Term, column: SoilColumn): Expression {
  return carried(lookUp(field, soilTable.all("field"), soilTable.all(column)));
}

/** A looked-up blank would read as 0, which is a number like any other: it has to stay blank. */
function carried(value: Expression): Expression {
  return quiet(orBlank(value));
}
