import { formula, type Expression, type Term } from "../../formula/expression";
import { lookUp, orBlank, quiet } from "../../formula/natives";
import { place } from "../../formula/reference";
import { placeKey } from "../../layout/fragment";
import type { Headers } from "../../model/table";
import { fieldTable, soilTable } from "./headers";

/**
 * The field that stands in the same row of the list of fields, so that a name is typed once; nothing when that row
 * is empty. By position and not by address: sorting or deleting fields never breaks it.
 */
export function fieldOfRow(headers: Pick<Headers<string>, "table">): Expression {
  const position = formula`ROW()-ROW(${place(placeKey(headers.table, "header"))})`;
  return formula`IFERROR(INDEX(${fieldTable.all("field")},${position})&"","")`;
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
