import type { CellStyle } from "hucre/xlsx";
import type { StyleName } from "../../../workbook/plan";
import { cellLooks } from "../../../workbook/styles";
import { cellStyle, colorOf } from "../cell-styles";

const names = Object.keys(cellLooks) as StyleName[];

/** Which of our looks a cell has, told by what it looks like; a look of the person's own counts as plain. */
const lookBySign = new Map(names.map((style) => [signOf(cellStyle({ row: 0, column: 0, style })), style]));

export function lookOf(style: CellStyle | undefined): StyleName {
  return (style && lookBySign.get(signOf(style))) ?? "body";
}

function signOf({ font, fill, border, alignment }: CellStyle): string {
  return JSON.stringify([
    font?.size ?? 11,
    font?.bold ?? false,
    font?.italic ?? false,
    colorIn(font?.color),
    fill?.type === "pattern" && fill.pattern === "solid" ? colorIn(fill.fgColor) : "",
    border?.top?.style ?? "",
    border?.left?.style ?? "",
    alignment?.horizontal ?? "",
    alignment?.vertical ?? "bottom",
    alignment?.wrapText ?? false,
  ]);
}

function colorIn(color: { rgb?: string } | undefined): string {
  return color?.rgb === undefined ? "" : colorOf(color.rgb);
}
