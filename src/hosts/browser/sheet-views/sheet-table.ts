import { isCellError } from "../../../functions/frame/cell";
import { columnLetters } from "../../../workbook/write/address";
import type { CellReader } from "../../engine/read-cells";
import { escaped } from "../../chart/svg-text";
import { filledSize } from "./filled-size";
import type { OpenWorkbook } from "../open-workbook";
import { hostWords } from "../../words";

/**
 * The sheet in sight as plain HTML, for readers and printers that cannot use the drawn grid: every cell as it is
 * shown, and the sentence behind an error of ours.
 *
 * @param charts drawings that float over the sheet
 */
export function sheetAsHtml(workbook: OpenWorkbook, reader: CellReader, charts: readonly string[]): string {
  const sheet = workbook.facade.getActiveSheet();
  const model = sheet.getSheet();
  const { rows, columns } = filledSize(model, reader);
  const letters = Array.from({ length: columns }, (_, column) => `<th scope="col">${columnLetters(column)}</th>`).join(
    "",
  );
  const shown = rows * columns === 0 ? [] : sheet.getRange(0, 0, rows, columns).getDisplayValues();
  const body = shown.map((cells, row) => {
    const texts = cells.map((text, column) => {
      const value = reader.valueAt(model, row, column);
      const said = isCellError(value) && value.message !== undefined ? `${value.code}: ${value.message}` : text;
      const number = typeof value === "number" ? ` class="number"` : "";
      return `<td${number}>${escaped(said)}</td>`;
    });
    return `<tr><th scope="row">${row + 1}</th>${texts.join("")}</tr>`;
  });
  const name = escaped(sheet.getSheetName());
  const table = `<table><caption>${name}</caption><thead><tr><td></td>${letters}</tr></thead><tbody>${body.join("")}</tbody></table>`;
  const empty = `<p>${hostWords.browser.emptySheet(name)}</p>`;
  return (rows === 0 ? empty : table) + charts.map((chart) => `<figure>${chart}</figure>`).join("");
}
