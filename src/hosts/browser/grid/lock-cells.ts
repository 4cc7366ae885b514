import type { FWorksheet } from "@univerjs/sheets/facade";
import type { StyleName } from "../../../workbook/plan";
import { sizeOf, type CellAt } from "../../../workbook/area";
import { rectanglesOf } from "../../rectangles";
import type { OpenWorkbook } from "../open-workbook";
import { memoryOf } from "../data/page-memory";
import { plannedCell } from "../data/planned-cell";
import type { Grid } from "./start-grid";
import { hostWords } from "../../words";

/** Makes computed cells refuse typing on the sheets that were filled in that way. All other cells stay open. */
export async function lockComputedCells(grid: Grid, workbook: OpenWorkbook): Promise<void> {
  const { facade } = workbook;
  const memory = memoryOf({ custom: facade.getCustomMetadata() ?? {} });
  for (const sheet of facade.getSheets()) {
    if (memory.sheets[sheet.getSheetId()]?.locked) await lockSheet(grid, sheet);
  }
}

async function lockSheet({ api }: Grid, sheet: FWorksheet): Promise<void> {
  const ranges = rectanglesOf(computedCells(sheet)).map((area) => {
    const { rows, columns } = sizeOf(area);
    return sheet.getRange(area.top, area.left, rows, columns);
  });
  if (ranges.length === 0) return;
  const rules = await sheet
    .getWorksheetPermission()
    .protectRanges([{ ranges, options: { name: hostWords.browser.lockedCells } }]);
  for (const rule of rules) await rule.setPoint(api.Enum.RangePermissionPoint.Edit, false);
}

const computed: ReadonlySet<StyleName | undefined> = new Set(["computed", "computedText", "total", "totalText"]);

function computedCells(sheet: FWorksheet): CellAt[] {
  const cells: CellAt[] = [];
  sheet
    .getSheet()
    .getCellMatrix()
    .forValue((row, column, cell) => {
      if (computed.has(plannedCell(cell).look)) cells.push({ row, column });
    });
  return cells;
}
