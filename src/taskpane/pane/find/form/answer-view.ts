import { isCellError, type CellOut, type Matrix } from "../../../../functions/frame/cell";
import type { WorksheetFunction } from "../../../../functions/frame/declaration";
import { words } from "../../../words";
import { element, type Child } from "../../element";
import { withUnit } from "../../number-text";
import { broadTable } from "../../parts/broad-table";
import { sentence } from "../../parts/text";
import { nameInWords } from "./argument-field";
import { fillsSeveral, sizeOfAnswer, type Call } from "./call";

const say = words.find;

/** As many rows as help to know the table again; the sheet shows the rest. */
const mostRows = 8;

/** The answer to what the boxes hold now, in the unit it has; or what is still missing. */
export function answerView(fn: WorksheetFunction, { answer, missing }: Call): Child {
  if (!answer) return element("p", { class: "hint" }, say.waitingFor(missing.map(nameInWords)));
  const size = sizeOfAnswer(answer);
  const [first = ""] = answer[0] ?? [];
  if (fillsSeveral(size)) {
    return [element("p", {}, say.fills(size.rows, size.columns)), answerTable(answer, say.answerSoFar)];
  }
  if (isCellError(first)) return element("p", { class: "because" }, sentence(first.message ?? first.code));
  return [
    element("p", { class: "big-number" }, withUnit(first, fn.returns.unit)),
    element("p", { class: "hint" }, sentence(fn.returns.says)),
  ];
}

/** An answer of several cells, as the sheet will show it; a long one is cut. */
export function answerTable(answer: Matrix<CellOut>, label: string): Child {
  const shown = answer.slice(0, mostRows);
  const holdsNumbers = (column: number) => shown.some((row) => typeof row[column] === "number");
  const rows = shown.map((row) =>
    element(
      "tr",
      {},
      row.map((cell, column) =>
        element(
          "td",
          { class: holdsNumbers(column) ? "number" : undefined },
          isCellError(cell) ? cell.code : withUnit(cell, ""),
        ),
      ),
    ),
  );
  return [
    broadTable({ label, look: "answer", rows }),
    answer.length > mostRows && element("p", { class: "hint" }, say.moreRows(answer.length - mostRows)),
  ];
}
