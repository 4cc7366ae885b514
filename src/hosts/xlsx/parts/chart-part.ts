import { isCellError } from "../../../functions/frame/cell";
import type { ChartPlan, ChartRange, SheetPlan, WorkbookPlan } from "../../../workbook/plan";
import { borderColor } from "../../../workbook/styles";
import { cellsOf } from "../../../workbook/area";
import type { CalculatedValue, CalculatedWorkbook } from "../../calculated-workbook";
import { isFormula, keyOf } from "../cells";
import { hex } from "../cell-styles";
import { cellText, escapeXml } from "./package-parts";

type Point = CalculatedValue | undefined;
type Reader = (range: ChartRange) => Point[];

/** Reads the cells of a chart's range, typed or calculated, in order. */
export function chartReader(plan: WorkbookPlan, values: CalculatedWorkbook): Reader {
  const typed = new Map<string, Map<string, Point>>();
  for (const sheet of plan.sheets) typed.set(sheet.name, typedCells(sheet));
  return ({ sheet, area }) =>
    cellsOf(area).map((cell) => values.valueAt(sheet, cell.row, cell.column) ?? typed.get(sheet)?.get(keyOf(cell)));
}

/**
 * Puts the drawn points beside the references of a chart, so that it also shows where nothing is calculated, and
 * takes the joining line away from points that stand alone.
 */
export function finishedChart(xml: string, plan: ChartPlan, read: Reader): string {
  let series = 0;
  return quietGridlines(xml).replace(/<c:ser>.*?<\/c:ser>/gs, (written) => {
    const { values: range, look } = plan.series[series++] ?? {};
    const cached = written
      .replace(/(<c:(?:cat|xVal)>.*?<\/c:f>)/s, (start) => start + cache(start, read(plan.categories)))
      .replace(/(<c:(?:val|yVal)>.*?<\/c:f>)/s, (start) => start + cache(start, range ? read(range) : []));
    return plan.kind === "scatter" || look === "points" ? withoutLine(cached) : cached;
  });
}

function typedCells(sheet: SheetPlan): Map<string, Point> {
  const cells = new Map<string, Point>();
  for (const cell of sheet.cells) {
    if (cell.content !== undefined && !isFormula(cell.content)) cells.set(keyOf(cell), cell.content);
  }
  return cells;
}

function cache(start: string, points: readonly Point[]): string {
  const numeric = start.includes("<c:numRef>");
  const known = points.flatMap((point, index) => {
    const drawn = numeric ? typeof point === "number" : point !== undefined && !isCellError(point);
    return drawn ? [`<c:pt idx="${index}"><c:v>${escapeXml(cellText(String(point)))}</c:v></c:pt>`] : [];
  });
  const element = numeric ? "c:numCache" : "c:strCache";
  const format = numeric ? "<c:formatCode>General</c:formatCode>" : "";
  return `<${element}>${format}<c:ptCount val="${points.length}"/>${known.join("")}</${element}>`;
}

function quietGridlines(xml: string): string {
  const line = `<a:ln w="6350"><a:solidFill><a:srgbClr val="${hex(borderColor)}"/></a:solidFill></a:ln>`;
  return xml.replace("<c:majorGridlines/>", `<c:majorGridlines><c:spPr>${line}</c:spPr></c:majorGridlines>`);
}

function withoutLine(series: string): string {
  return series.replace(/<c:spPr>.*?<\/c:spPr>/s, "<c:spPr><a:ln><a:noFill/></a:ln></c:spPr>");
}
