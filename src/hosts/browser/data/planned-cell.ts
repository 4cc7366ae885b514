import type { ICellData, Nullable } from "@univerjs/core";
import { cellLooks } from "../../../workbook/styles";
import type { StyleName } from "../../../workbook/plan";
import type { PlannedCell } from "../../engine/workbook-data";

/** What a plan said about a cell; it stays with the cell when rows move. */
export function plannedCell(cell: Nullable<ICellData>): Partial<PlannedCell> {
  const { look, link } = { look: undefined, link: undefined, ...cell?.custom };
  return { ...(isLook(look) && { look }), ...(typeof link === "string" && { link }) };
}

function isLook(look: unknown): look is StyleName {
  return typeof look === "string" && look in cellLooks;
}
