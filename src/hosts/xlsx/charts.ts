import type { SheetChart } from "hucre/xlsx";
import type { ChartPlan, SeriesLook } from "../../workbook/plan";
import { borderColor, fontFamily } from "../../workbook/styles";
import { hex } from "./cell-styles";
import { absoluteAddress } from "../address";

const ink = "22282E";
const quiet = hex(borderColor);
const sizes = { title: 13, axis: 10 } as const;

/** How the line of a look is broken in a file. */
export const seriesDashes = { solid: "solid", dashed: "dash", dotted: "sysDot" } as const;

type SeriesMarker = NonNullable<SheetChart["series"][number]["marker"]>;
type Axis = NonNullable<NonNullable<SheetChart["axes"]>["x"]>;

/** A chart in the writer's words. Bars read from the top down, as the rows they are drawn from do. */
export function sheetChart(plan: ChartPlan): SheetChart {
  return {
    type: plan.kind,
    title: plan.title,
    altText: plan.alt,
    titleFontSize: sizes.title,
    titleBold: true,
    titleColor: ink,
    titleFontFamily: fontFamily,
    legend: plan.series.length > 1 ? "bottom" : false,
    legendFontSize: sizes.axis,
    legendFontColor: ink,
    anchor: {
      from: { row: plan.at.top, col: plan.at.left },
      to: { row: plan.at.bottom + 1, col: plan.at.right + 1 },
    },
    series: plan.series.map((series) => oneSeries(plan, series)),
    axes: { x: categoryAxis(plan), y: valueAxis(plan) },
    chartSpaceFillColor: "FFFFFF",
    chartSpaceBorderColor: quiet,
    ...(plan.kind === "bar" || plan.kind === "column" ? { gapWidth: 60 } : {}),
    ...(plan.onOneLine ? { overlap: 100 } : {}),
    // LibreOffice takes the gap that is usual in a line for 0.
    ...(plan.kind === "line" ? { dispBlanksAs: "span" } : {}),
    ...(plan.kind === "scatter" ? { scatterStyle: "marker" } : {}),
  };
}

function oneSeries(
  plan: ChartPlan,
  { name, values, color, look }: ChartPlan["series"][number],
): SheetChart["series"][number] {
  return {
    name,
    values: absoluteAddress(values.sheet, values.area),
    categories: absoluteAddress(plan.categories.sheet, plan.categories.area),
    color: hex(color),
    ...(plan.kind === "line" && hasLine(look) ? { stroke: { width: 2.25, dash: seriesDashes[look ?? "solid"] } } : {}),
    ...(plan.kind === "line" || plan.kind === "scatter" ? { marker: markerOf(plan, hex(color), look) } : {}),
  };
}

function markerOf({ kind }: ChartPlan, color: string, look: SeriesLook | undefined): SeriesMarker {
  if (look !== undefined && look !== "points") return { symbol: "none" };
  return { symbol: "circle", size: kind === "scatter" || look === "points" ? 7 : 5, fill: color, line: color };
}

function hasLine(look: SeriesLook | undefined): look is Exclude<SeriesLook, "points"> | undefined {
  return look !== "points";
}

function categoryAxis({ kind, xTitle }: ChartPlan): Axis {
  return {
    ...axisText(xTitle, kind === "bar"),
    tickLblPos: "low",
    ...(kind === "bar" ? { reverse: true } : {}),
  };
}

function valueAxis({ kind, yTitle, yFormat }: ChartPlan): Axis {
  return {
    ...axisText(yTitle, kind !== "bar"),
    gridlines: { major: true },
    ...(yFormat ? { numberFormat: { formatCode: yFormat, sourceLinked: false } } : {}),
    ...(kind === "bar" ? { crosses: "max" } : {}),
  };
}

function axisText(title: string | undefined, upright: boolean): Axis {
  const look = { axisTitleFontSize: sizes.axis, axisTitleColor: ink, axisTitleBold: false };
  return {
    ...(title ? { title, ...look, axisTitleRotation: upright ? -90 : 0 } : {}),
    majorTickMark: "out",
    minorTickMark: "none",
    labelFontSize: sizes.axis,
    labelColor: ink,
  };
}
