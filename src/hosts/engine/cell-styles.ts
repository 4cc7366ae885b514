import {
  BooleanNumber,
  BorderStyleTypes,
  HorizontalAlign,
  VerticalAlign,
  WrapStrategy,
  type IBorderData,
  type IStyleData,
} from "@univerjs/core";
import type { StyleName } from "../../workbook/plan";
import { borderColor, cellLooks, fontFamily, type CellLook } from "../../workbook/styles";

/** Calibri where it is installed, else a face of the same widths, else the system's own. */
export const fonts = `${fontFamily}, Carlito, "Segoe UI", "Helvetica Neue", Arial, sans-serif`;

const horizontal = { left: HorizontalAlign.LEFT, center: HorizontalAlign.CENTER, right: HorizontalAlign.RIGHT };
const vertical = { top: VerticalAlign.TOP, middle: VerticalAlign.MIDDLE, bottom: VerticalAlign.BOTTOM };

/** Name under which a workbook keeps a look with a number format. */
export function styleKey(style: StyleName, format: string | undefined): string {
  return format === undefined ? `loam-${style}` : `loam-${style} ${format}`;
}

/** A cell look in the engine's terms. */
export function styleData(style: StyleName, format: string | undefined): IStyleData {
  const look: CellLook = cellLooks[style];
  return {
    ff: fonts,
    fs: look.size,
    cl: { rgb: look.color },
    vt: vertical[look.vertical],
    ...(look.bold && { bl: BooleanNumber.TRUE }),
    ...(look.italic && { it: BooleanNumber.TRUE }),
    ...(look.fill !== undefined && { bg: { rgb: look.fill } }),
    ...(look.align !== undefined && { ht: horizontal[look.align] }),
    ...(look.wrap && { tb: WrapStrategy.WRAP }),
    ...(look.border !== undefined && { bd: borders(look.border) }),
    ...(format !== undefined && { n: { pattern: format } }),
  };
}

function borders(border: "thin" | "top"): IBorderData {
  const line = { s: BorderStyleTypes.THIN, cl: { rgb: borderColor } };
  return border === "top" ? { t: line } : { t: line, r: line, b: line, l: line };
}
