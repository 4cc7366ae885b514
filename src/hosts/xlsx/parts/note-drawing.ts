import type { NotePlan, SheetPlan } from "../../../workbook/plan";
import { columnPixels, pixelsOf } from "../../cell-sizes";

const widthPx = 260;
const lettersPerLine = 42;
const linePx = 16;
const paddingPx = 14;
const defaultRowPx = 20;
const defaultColumnPx = 64;
const paper = "#FDF6E3";

/** The boxes of a sheet's notes, large enough for their words: an old drawing language that only notes still use. */
export function noteDrawing(sheet: SheetPlan, sheetIndex: number): string {
  const notes = [...sheet.notes].sort((a, b) => a.row - b.row || a.column - b.column);
  const firstShape = (sheetIndex + 1) * 1024 + 1;
  return [
    '<xml xmlns:v="urn:schemas-microsoft-com:vml" xmlns:o="urn:schemas-microsoft-com:office:office" xmlns:x="urn:schemas-microsoft-com:office:excel">',
    `<o:shapelayout v:ext="edit"><o:idmap v:ext="edit" data="${sheetIndex + 1}"/></o:shapelayout>`,
    '<v:shapetype id="_x0000_t202" coordsize="21600,21600" o:spt="202" path="m,l,21600r21600,l21600,xe">',
    '<v:stroke joinstyle="miter"/><v:path gradientshapeok="t" o:connecttype="rect"/></v:shapetype>',
    ...notes.map((note, index) => noteShape(sheet, note, firstShape + index)),
    "</xml>",
  ].join("");
}

function noteShape(sheet: SheetPlan, { row, column, text }: NotePlan, id: number): string {
  const left = column + 1;
  const right = reach(left, widthPx, (at) => columnPx(sheet, at));
  const bottom = reach(row, heightPx(text), (at) => rowPx(sheet, at));
  const anchor = [left, 15, row, 2, right.index, right.offset, bottom.index, bottom.offset].join(",");
  return [
    `<v:shape id="_x0000_s${id}" type="#_x0000_t202" style="position:absolute;visibility:hidden" fillcolor="${paper}" o:insetmode="auto">`,
    `<v:fill color2="${paper}"/><v:shadow on="t" color="black" obscured="t"/><v:path o:connecttype="none"/>`,
    '<v:textbox style="mso-direction-alt:auto"><div style="text-align:left"/></v:textbox>',
    `<x:ClientData ObjectType="Note"><x:MoveWithCells/><x:SizeWithCells/><x:Anchor>${anchor}</x:Anchor>`,
    `<x:AutoFill>False</x:AutoFill><x:Row>${row}</x:Row><x:Column>${column}</x:Column></x:ClientData></v:shape>`,
  ].join("");
}

/** Where so many pixels from the start of a row or column end: which one, and how far into it. */
function reach(start: number, lengthPx: number, sizePx: (index: number) => number): { index: number; offset: number } {
  let index = start;
  let offset = lengthPx;
  while (offset >= sizePx(index)) {
    offset -= sizePx(index);
    index += 1;
  }
  return { index, offset };
}

function heightPx(text: string): number {
  const lines = text.split("\n").reduce((sum, line) => sum + Math.max(1, Math.ceil(line.length / lettersPerLine)), 0);
  return lines * linePx + paddingPx;
}

function columnPx(sheet: SheetPlan, column: number): number {
  const characters = sheet.columnWidths[column];
  return characters === undefined ? defaultColumnPx : Math.max(1, Math.round(columnPixels(characters)));
}

function rowPx(sheet: SheetPlan, row: number): number {
  const points = sheet.rowHeights[row];
  return points === undefined ? defaultRowPx : Math.max(1, Math.round(pixelsOf(points)));
}
