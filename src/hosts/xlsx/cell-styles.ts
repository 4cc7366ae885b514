import type { CellStyle } from "hucre/xlsx";
import type { CellPlan } from "../../workbook/plan";
import { formatOf } from "../text-format";
import { borderColor, cellLooks, fontFamily, type CellLook } from "../../workbook/styles";

/** "rrggbb" as the file writes colours. */
export function hex(color: string): string {
  return color.replace("#", "").toUpperCase();
}

/** "ffrrggbb": the same with its opacity in front, which conditional formats want. */
export function opaqueHex(color: string): string {
  return `FF${hex(color)}`;
}

/** "#rrggbb", from a colour in a file with or without its opacity. */
export function colorOf(rgb: string): string {
  return `#${rgb.slice(-6).toLowerCase()}`;
}

/** The look of a cell in the writer's words. */
export function cellStyle(cell: CellPlan): CellStyle {
  const look = cellLooks[cell.style];
  const numFmt = formatOf(cell);
  return {
    font: font(look),
    alignment: alignment(look),
    ...(look.fill ? { fill: { type: "pattern", pattern: "solid", fgColor: { rgb: hex(look.fill) } } } : {}),
    ...(look.border ? { border: border(look.border) } : {}),
    ...(numFmt ? { numFmt } : {}),
    ...(look.input ? { protection: { locked: false } } : {}),
  };
}

function font({ size, bold, italic, color }: CellLook): NonNullable<CellStyle["font"]> {
  return {
    name: fontFamily,
    size,
    color: { rgb: hex(color) },
    ...(bold ? { bold } : {}),
    ...(italic ? { italic } : {}),
  };
}

function alignment({ align, vertical, wrap }: CellLook): NonNullable<CellStyle["alignment"]> {
  return {
    vertical: vertical === "middle" ? "center" : vertical,
    ...(align ? { horizontal: align } : {}),
    ...(wrap ? { wrapText: true } : {}),
  };
}

function border(kind: NonNullable<CellLook["border"]>): NonNullable<CellStyle["border"]> {
  const side = { style: "thin" as const, color: { rgb: hex(borderColor) } };
  return kind === "top" ? { top: side } : { top: side, right: side, bottom: side, left: side };
}
