import type { WriteOptions } from "hucre/xlsx";
import type { SheetPlan, WorkbookPlan } from "../../workbook/plan";
import { absoluteAddress, quotedSheet } from "../address";

type NamedRange = NonNullable<WriteOptions["namedRanges"]>[number];

/** Longest remark a defined name carries. */
const longestRemark = 255;

/** The names of a workbook, with the print areas and repeated rows of its sheets, which are names too. */
export function workbookNames(plan: WorkbookPlan): NamedRange[] {
  const own = plan.names.map(({ name, sheet, area, says }) => ({
    name,
    range: absoluteAddress(sheet, area),
    comment: says.slice(0, longestRemark),
  }));
  return [...own, ...plan.sheets.flatMap(printNames)];
}

/** Names that stand for more than one cell, in upper case. */
export function namesOfRanges(plan: WorkbookPlan): ReadonlySet<string> {
  const several = plan.names.filter(({ area }) => area.top !== area.bottom || area.left !== area.right);
  return new Set(several.map(({ name }) => name.toUpperCase()));
}

function printNames({ name, print }: SheetPlan): NamedRange[] {
  const { area, repeatRows } = print;
  const names: NamedRange[] = [];
  if (area) names.push({ name: "_xlnm.Print_Area", range: absoluteAddress(name, area), scope: name });
  if (repeatRows) {
    const range = `${quotedSheet(name)}!$${repeatRows.first + 1}:$${repeatRows.last + 1}`;
    names.push({ name: "_xlnm.Print_Titles", range, scope: name });
  }
  return names;
}
