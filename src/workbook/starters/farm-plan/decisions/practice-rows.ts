import { formula, type Expression, type Term } from "../../../formula/expression";
import { lookUp, orBlank, quiet } from "../../../formula/natives";
import { place } from "../../../formula/reference";
import { placeKey } from "../../../layout/fragment";
import type { Headers } from "../../../model/table";
import { practiceDecisions, practiceTable } from "./decision-headers";

/** Place of a row in its table, 1 for the first. By position and not by address: sorting never breaks it. */
export function positionIn(headers: Pick<Headers<string>, "table">): Expression {
  return formula`ROW()-ROW(${place(placeKey(headers.table, "header"))})`;
}

/** The practice that stands in the same row of the list of practices; nothing where that row is empty. */
export function practiceOfRow(headers: Pick<Headers<string>, "table">): Expression {
  return formula`IFERROR(INDEX(${practiceTable.all("practice")},${positionIn(headers)})&"","")`;
}

/** The cell of the list of practices in the same row; rows of both tables belong together. */
export function besidePractice(
  headers: Pick<Headers<string>, "table">,
  column: keyof typeof practiceTable.headers,
): Expression {
  return formula`INDEX(${practiceTable.all(column)},${positionIn(headers)})`;
}

/** The cell of what is believed of the practice in the same row. */
export function besideDecision(
  headers: Pick<Headers<string>, "table">,
  column: keyof typeof practiceDecisions.headers,
): Expression {
  return formula`INDEX(${practiceDecisions.all(column)},${positionIn(headers)})`;
}

/** A number that the list of practices gives for a practice by its name; blank stays blank. */
export function fromPractices(practice: Term, column: keyof typeof practiceTable.headers): Expression {
  return quiet(orBlank(lookUp(practice, practiceTable.all("practice"), practiceTable.all(column))));
}
