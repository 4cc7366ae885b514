import type { SheetPlan } from "../../../workbook/plan";
import { borderColor, cellLooks, type CellLook } from "../../../workbook/styles";
import { columnLetters } from "../../../workbook/write/address";
import { columnPixels, pointsOf } from "../../cell-sizes";
import type { Requests } from "./requests";
import { styleAreas, type StyleAreas } from "./style-areas";

/** Fonts, fills, borders, widths, heights and the rows that stay in sight. */
export async function writeLooks(plan: SheetPlan, requests: Requests, protect: boolean): Promise<void> {
  for (const areas of styleAreas(plan.cells)) {
    await requests.makeRoom({ steps: 40 + areas.address.length / 300 });
    const look = cellLooks[areas.style];
    const { format } = requests.sheet(plan.name).getRanges(areas.address);
    writeFont(format, look);
    writeAlignment(format, look);
    if (look.fill !== undefined) format.fill.color = look.fill;
    for (const edge of edgesOf(look, areas)) drawEdge(format.borders.getItem(edge));
    if (protect && look.input) format.protection.locked = false;
  }
  await requests.makeRoom({ steps: 3 * (plan.columnWidths.length + Object.keys(plan.rowHeights).length + 1) });
  writeSizes(plan, requests.sheet(plan.name));
  freeze(plan, requests.sheet(plan.name));
}

/** Only what differs from the look that the whole sheet has already. */
function writeFont({ font }: Excel.RangeFormat, { size, bold, italic, color }: CellLook): void {
  const { body } = cellLooks;
  if (size !== body.size) font.size = size;
  // A link brings a colour and a line of its own.
  font.color = color;
  font.underline = "None";
  if (bold) font.bold = true;
  if (italic) font.italic = true;
}

const horizontal = { left: "Left", center: "Center", right: "Right" } as const;
const vertical = { top: "Top", middle: "Center", bottom: "Bottom" } as const;

function writeAlignment(format: Excel.RangeFormat, look: CellLook): void {
  if (look.align !== undefined) format.horizontalAlignment = horizontal[look.align];
  if (look.vertical !== cellLooks.body.vertical) format.verticalAlignment = vertical[look.vertical];
  if (look.wrap) format.wrapText = true;
}

type Edge = "EdgeTop" | "EdgeBottom" | "EdgeLeft" | "EdgeRight" | "InsideHorizontal" | "InsideVertical";

function edgesOf({ border }: CellLook, { insideRows, insideColumns }: StyleAreas): readonly Edge[] {
  if (border === undefined) return [];
  if (border === "top") return ["EdgeTop"];
  return [
    "EdgeTop",
    "EdgeBottom",
    "EdgeLeft",
    "EdgeRight",
    ...(insideRows ? (["InsideHorizontal"] as const) : []),
    ...(insideColumns ? (["InsideVertical"] as const) : []),
  ];
}

function drawEdge(edge: Excel.RangeBorder): void {
  edge.style = "Continuous";
  edge.color = borderColor;
}

function writeSizes({ columnWidths, rowHeights }: SheetPlan, sheet: Excel.Worksheet): void {
  columnWidths.forEach((characters, column) => {
    const letters = columnLetters(column);
    sheet.getRange(`${letters}:${letters}`).format.columnWidth = pointsOf(columnPixels(characters));
  });
  for (const [row, points] of Object.entries(rowHeights)) {
    sheet.getRange(`${Number(row) + 1}:${Number(row) + 1}`).format.rowHeight = points;
  }
}

function freeze({ freeze: still }: SheetPlan, { freezePanes }: Excel.Worksheet): void {
  if (still === undefined) return;
  const { rows, columns } = still;
  if (rows > 0 && columns > 0) freezePanes.freezeAt(`A1:${columnLetters(columns - 1)}${rows}`);
  else if (rows > 0) freezePanes.freezeRows(rows);
  else if (columns > 0) freezePanes.freezeColumns(columns);
}
