import type { ChartPlan, ChartRange, SheetPlan } from "../../../workbook/plan";
import { cellLooks, fontFamily } from "../../../workbook/styles";
import { areaAddress } from "../../address";
import type { Requests } from "./requests";

/** Draws the charts of a sheet. Excel's own interface offers no place for the sentence that describes a chart. */
export async function writeCharts({ name, charts }: SheetPlan, requests: Requests): Promise<void> {
  for (const plan of charts) {
    await requests.makeRoom({ steps: 40 + 15 * plan.series.length });
    addChart(plan, requests.sheet(name), requests);
  }
}

const types = { column: "ColumnClustered", bar: "BarClustered", line: "LineMarkers", scatter: "XYScatter" } as const;

function addChart(plan: ChartPlan, sheet: Excel.Worksheet, requests: Requests): void {
  const [first] = plan.series;
  if (first === undefined) return;
  const { top, bottom } = first.values.area;
  const chart = sheet.charts.add(
    types[plan.kind],
    rangeOf(first.values, requests),
    top === bottom ? "Rows" : "Columns",
  );
  plan.series.forEach((series, index) => {
    const drawn = index === 0 ? chart.series.getItemAt(0) : chart.series.add(series.name);
    drawn.name = series.name;
    drawn.setValues(rangeOf(series.values, requests));
    drawn.setXAxisValues(rangeOf(plan.categories, requests));
    paint(drawn, plan, series);
  });
  chart.title.text = plan.title;
  write(chart.title.format.font, 13);
  chart.title.format.font.bold = true;
  chart.legend.visible = plan.series.length > 1;
  chart.legend.position = "Bottom";
  const [from, to] = areaAddress(plan.at).split(":");
  chart.setPosition(from ?? "", to ?? from);
  dressAxes(plan, chart.axes);
}

const lineStyles = { points: "None", solid: "Continuous", dashed: "Dash", dotted: "Dot" } as const;

function paint(
  series: Excel.ChartSeries,
  { kind, onOneLine }: ChartPlan,
  { color, look }: ChartPlan["series"][number],
): void {
  if (kind === "column" || kind === "bar") {
    series.format.fill.setSolidColor(color);
    series.gapWidth = 60;
    if (onOneLine) series.overlap = 100;
    return;
  }
  if (kind === "line") {
    series.format.line.color = color;
    if (look !== undefined) series.format.line.lineStyle = lineStyles[look];
  }
  if (look !== undefined && look !== "points") {
    series.markerStyle = "None";
    return;
  }
  series.markerStyle = "Circle";
  series.markerBackgroundColor = color;
  series.markerForegroundColor = color;
}

function dressAxes({ kind, xTitle, yTitle, yFormat }: ChartPlan, { categoryAxis, valueAxis }: Excel.ChartAxes): void {
  for (const [axis, title] of [
    [categoryAxis, xTitle],
    [valueAxis, yTitle],
  ] as const) {
    write(axis.format.font, 10);
    if (title) {
      axis.title.text = title;
      write(axis.title.format.font, 10);
    }
  }
  categoryAxis.tickLabelPosition = "Low";
  if (yFormat !== undefined) valueAxis.numberFormat = yFormat;
  if (kind === "bar") {
    // Bars read from the top down, as the rows they are drawn from do; the values stay below.
    categoryAxis.reversePlotOrder = true;
    categoryAxis.position = "Maximum";
  }
}

function write(font: Excel.ChartFont, size: number): void {
  font.name = fontFamily;
  font.size = size;
  font.color = cellLooks.body.color;
}

function rangeOf({ sheet, area }: ChartRange, requests: Requests): Excel.Range {
  return requests.sheet(sheet).getRange(areaAddress(area));
}
