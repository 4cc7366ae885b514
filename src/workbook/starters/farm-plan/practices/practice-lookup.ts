import { formula, type Expression, type Term } from "../../../formula/expression";
import { lookUpNumber, wordsInRow } from "../../../formula/natives";
import type { Headers } from "../../../model/table";
import { practiceDecisions, practiceTable } from "./practice-headers";

type Rows = Pick<Headers<string>, "rowNumber">;

/** The practice that stands in the same row of the list of practices; nothing where that row is empty. */
export function practiceOfRow({ rowNumber }: Rows): Expression {
  return wordsInRow(practiceTable.all("practice"), rowNumber);
}

/** The cell of the list of practices in the same row; rows of both tables belong together. */
export function besidePractice({ rowNumber }: Rows, column: keyof typeof practiceTable.headers): Expression {
  return formula`INDEX(${practiceTable.all(column)},${rowNumber})`;
}

/** The cell of what is believed of the practice in the same row. */
export function besideDecision({ rowNumber }: Rows, column: keyof typeof practiceDecisions.headers): Expression {
  return formula`INDEX(${practiceDecisions.all(column)},${rowNumber})`;
}

/** A number that the list of practices gives for a practice by its name; blank stays blank. */
export function fromPractices(practice: Term, column: keyof typeof practiceTable.headers): Expression {
  return lookUpNumber(practice, practiceTable.all("practice"), practiceTable.all(column));
}
