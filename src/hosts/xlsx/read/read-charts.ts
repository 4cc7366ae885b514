import type { Sheet } from "hucre/xlsx";
import type { ChartPlan, ChartRange, SeriesLook } from "../../../workbook/plan";
import { parseSheetAddress } from "../../address";
import { colorOf } from "../cell-styles";
import { seriesDashes } from "../charts";

type Chart = NonNullable<Sheet["charts"]>[number];
type Series = NonNullable<Chart["series"]>[number];

const plainColor = "#5a4636";

/** Charts of the kinds a plan knows; others are left out. */
export function readCharts({ charts = [] }: Sheet): ChartPlan[] {
  return charts.flatMap((chart) => {
    const kind = kindOf(chart);
    const series = (chart.series ?? []).flatMap((one) => {
      const values = rangeOf(one.valuesRef);
      if (!values) return [];
      const look = kind === "line" ? lookOf(one) : undefined;
      return [{ name: one.name ?? "", values, color: seriesColor(one), ...(look && { look }) }];
    });
    const categories = rangeOf(chart.series?.[0]?.categoriesRef);
    const at = placeOf(chart);
    if (!kind || !categories || !at || series.length === 0) return [];
    const { x, y } = chart.axes ?? {};
    return [
      {
        kind,
        title: chart.title ?? "",
        alt: chart.altText ?? "",
        categories,
        series,
        ...(x?.title !== undefined && { xTitle: x.title }),
        ...(y?.title !== undefined && { yTitle: y.title }),
        ...(chart.overlap === 100 && { onOneLine: true }),
        ...(y?.numberFormat && { yFormat: y.numberFormat.formatCode }),
        at,
      },
    ];
  });
}

/** Bars that lie are told from columns by their axis, which runs from the top down. */
function kindOf({ kinds, axes }: Chart): ChartPlan["kind"] | undefined {
  const [kind] = kinds;
  if (kind === "bar") return axes?.x?.reverse === true ? "bar" : "column";
  return kind === "line" || kind === "scatter" ? kind : undefined;
}

/** Points that stand alone keep their colour in their markers. */
function seriesColor({ color, marker }: Series): string {
  const [found] = [color, marker?.fill].filter((one) => typeof one === "string");
  return found === undefined ? plainColor : colorOf(found);
}

function lookOf({ color, stroke, marker }: Series): SeriesLook | undefined {
  if (marker?.symbol !== "none") return marker?.fill !== undefined && color === undefined ? "points" : undefined;
  const looks = Object.keys(seriesDashes) as (keyof typeof seriesDashes)[];
  return looks.find((look) => seriesDashes[look] === stroke?.dash) ?? "solid";
}

function rangeOf(reference: string | undefined): ChartRange | undefined {
  return reference === undefined ? undefined : parseSheetAddress(reference);
}

function placeOf({ anchor }: Chart): ChartPlan["at"] | undefined {
  if (!anchor?.to) return undefined;
  const { from, to } = anchor;
  return {
    top: from.row,
    left: from.col,
    bottom: Math.max(from.row, to.row - 1),
    right: Math.max(from.col, to.col - 1),
  };
}
