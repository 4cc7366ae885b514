import type { Worksheet } from "@univerjs/core";
import { ScrollCommand } from "@univerjs/preset-sheets-core";
import type { Area } from "../../../workbook/plan";
import { firstShown } from "./first-shown";
import type { Grid } from "../grid/start-grid";

/**
 * Scrolls a cell to the corner beside the rows and columns that stay. The grid's own way of it takes those for as wide
 * and high as the cells that are scrolled away, and so hides the cell behind them where they are not.
 */
export async function scrollTo(
  { top, left }: Pick<Area, "top" | "left">,
  { grid, sheet }: { readonly grid: Grid; readonly sheet: Worksheet },
): Promise<void> {
  const { xSplit, ySplit } = sheet.getFreeze();
  const column = firstShown(xSplit, left, (index) => sheet.getColumnWidth(index));
  const row = firstShown(ySplit, top, (index) => sheet.getRowHeight(index));
  await grid.api.executeCommand(ScrollCommand.id, {
    sheetViewStartColumn: column.index,
    offsetX: column.offset,
    sheetViewStartRow: row.index,
    offsetY: row.offset,
  });
}
