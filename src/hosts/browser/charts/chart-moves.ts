import { CommandType, type IMutationInfo } from "@univerjs/core";
import { adjustRangeOnMutation, type MutationsAffectRange } from "@univerjs/sheets";
import type { Area, ChartPlan, ChartRange } from "../../../workbook/plan";
import { areaOf, rangeOf } from "../../engine/ranges";
import type { OpenWorkbook } from "../open-workbook";
import { memoryOf, withMemory, type PageMemory } from "../data/page-memory";
import type { Grid } from "../grid/start-grid";

/** The chart with the sheets of its ranges called by other words. */
export function withSheets(chart: ChartPlan, called: (sheet: string) => string): ChartPlan {
  const renamed = (range: ChartRange): ChartRange => ({ ...range, sheet: called(range.sheet) });
  return {
    ...chart,
    categories: renamed(chart.categories),
    series: chart.series.map((one) => ({ ...one, values: renamed(one.values) })),
  };
}

/** Charts and the cells they are drawn from move and grow as rows and columns do. Calls back after a move. */
export function moveCharts({ api }: Grid, workbook: OpenWorkbook, moved: () => void): void {
  api.addEvent(api.Event.CommandExecuted, ({ id, type, params }) => {
    if (type !== CommandType.MUTATION || !isMove(params)) return;
    const custom = workbook.facade.getCustomMetadata() ?? {};
    const before = memoryOf({ custom });
    const after = memoryAfter(before, { id, params });
    if (after === before) return;
    workbook.facade.setCustomMetadata(withMemory({ custom }, after).custom);
    moved();
  });
}

type Move = MutationsAffectRange & { readonly subUnitId: string };

function isMove(params: unknown): params is Move {
  return typeof params === "object" && params !== null && "subUnitId" in params;
}

/** The same object when the mutation moves nothing. */
export function memoryAfter(memory: PageMemory, mutation: IMutationInfo<Move>): PageMemory {
  let changed = false;
  const area = (sheetId: string, before: Area): Area => {
    if (sheetId !== mutation.params.subUnitId) return before;
    const range = adjustRangeOnMutation(rangeOf(before), mutation);
    const after = range && areaOf(range);
    if (!after || same(before, after)) return before;
    changed = true;
    return after;
  };
  const range = (of: ChartRange): ChartRange => ({ ...of, area: area(of.sheet, of.area) });
  const entries = Object.entries(memory.sheets).map(([sheetId, kept]) => {
    const charts = kept.charts.map((chart) => ({
      ...chart,
      at: area(sheetId, chart.at),
      categories: range(chart.categories),
      series: chart.series.map((one) => ({ ...one, values: range(one.values) })),
    }));
    return [sheetId, { ...kept, charts }] as const;
  });
  return changed ? { ...memory, sheets: Object.fromEntries(entries) } : memory;
}

function same(one: Area, other: Area): boolean {
  return one.top === other.top && one.left === other.left && one.bottom === other.bottom && one.right === other.right;
}
