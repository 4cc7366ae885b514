import type { ColumnDef, TableDefinition, WriteSheet } from "hucre/xlsx";
import type { PrintPlan, SheetPlan } from "../../workbook/plan";
import { keyOf, type CellMap } from "./cells";
import { hex } from "./cell-styles";
import { sheetChart } from "./charts";
import { areaAddress } from "../address";
import { columnPixels, digitPixels } from "../cell-sizes";
import { cellText } from "./parts/package-parts";
import { conditionalRule } from "./rules";
import type { TableFacts } from "./tables";
import { dataValidation } from "./validations";

const noteAuthor = "Loamsheet";

/** Everything of a sheet but its print titles and areas, which the workbook holds. */
export function writeSheet(
  sheet: SheetPlan,
  cells: CellMap,
  tables: readonly TableFacts[],
  protect: boolean,
): WriteSheet {
  return {
    name: sheet.name,
    columns: sheet.columnWidths.map(column),
    rowDefs: new Map(Object.entries(sheet.rowHeights).map(([row, height]) => [Number(row), { height }])),
    cells: withNotes(sheet, cells),
    tables: tables.map(table),
    dataValidations: sheet.validations.map(dataValidation),
    conditionalRules: sheet.rules.map(conditionalRule),
    charts: sheet.charts.map(sheetChart),
    pageSetup: pageSetup(sheet.print),
    headerFooter: { oddFooter: sheet.print.footer },
    ...(sheet.freeze ? { freezePane: sheet.freeze } : {}),
    view: { showGridLines: false, ...(sheet.tabColor ? { tabColor: { rgb: hex(sheet.tabColor) } } : {}) },
    ...(protect ? { protection: { sheet: true, formatColumns: true, formatRows: true } } : {}),
  };
}

/** The file counts the empty pixels at both sides of a cell into the width of its column. */
function column(characters: number): ColumnDef {
  return { width: Math.trunc((columnPixels(characters) / digitPixels) * 256) / 256 };
}

function withNotes(sheet: SheetPlan, cells: CellMap): CellMap {
  const noted: CellMap = new Map(cells);
  for (const note of sheet.notes) {
    noted.set(keyOf(note), { ...noted.get(keyOf(note)), comment: { author: noteAuthor, text: note.text } });
  }
  return noted;
}

function table({ plan, columns }: TableFacts): TableDefinition {
  return {
    name: plan.name,
    range: areaAddress(plan.area),
    columns: columns.map(({ name }) => ({ name: cellText(name).replace(/\r?\n/g, "_x000a_") })),
    style: "TableStyleLight1",
    showRowStripes: false,
    showTotalRow: plan.totals,
  };
}

function pageSetup({ orientation, fit }: PrintPlan): NonNullable<WriteSheet["pageSetup"]> {
  return {
    paperSize: "letter",
    orientation,
    fitToPage: true,
    fitToWidth: fit.wide,
    fitToHeight: fit.tall,
    margins: { top: 0.6, bottom: 0.7, left: 0.5, right: 0.5, header: 0.3, footer: 0.3 },
  };
}
