import type { ChartPlan, ChartRange } from "../../../workbook/plan";
import { cellsOf, sizeOf } from "../../../workbook/area";
import { chartSvg, type ChartSize } from "../../chart/chart-svg";
import type { CellReader } from "../../engine/read-cells";
import type { HostValue } from "../../port";
import { moveCharts } from "./chart-moves";
import { chartView, Redraw } from "./chart-view";
import type { OpenWorkbook } from "../open-workbook";
import { memoryOf } from "../data/page-memory";
import type { Grid } from "../grid/start-grid";

const componentName = "loam-chart";

/** Charts floating over the cells of the sheet in sight. The grid has none of its own. */
export class ChartLayer {
  private readonly redraw = new Redraw();
  private shown: { dispose: () => void }[] = [];

  constructor(
    grid: Grid,
    private readonly workbook: OpenWorkbook,
    private readonly reader: CellReader,
  ) {
    const { api } = grid;
    const view = chartView({
      chart: (key) => this.chartOf(key),
      read: (range) => this.read(range),
      redraw: this.redraw,
    });
    api.registerComponent(componentName, view);
    // The grid loses floating parts when another sheet is shown, and takes none before it has drawn the sheet.
    api.addEvent(api.Event.ActiveSheetChanged, () => this.showSoon());
    api.addEvent(api.Event.LifeCycleChanged, ({ stage }) => {
      if (stage === api.Enum.LifecycleStages.Rendered) this.showSoon();
    });
    workbook.onOpened(() => this.showSoon());
    moveCharts(grid, workbook, () => this.showSoon());
    api.getFormula().calculationResultApplied(() => this.redraw.now());
  }

  /** The charts of a sheet, of the one in sight unless another is named, drawn as they stand. */
  drawings(sheetId = this.workbook.facade.getActiveSheet().getSheetId(), size?: ChartSize): string[] {
    return this.chartsOf(sheetId).map((chart) => chartSvg(chart, (range) => this.read(range), size));
  }

  private showSoon(): void {
    requestAnimationFrame(() => setTimeout(() => this.show()));
  }

  private show(): void {
    for (const chart of this.shown) chart.dispose();
    this.shown = [];
    const sheet = this.workbook.facade.getActiveSheet();
    const id = sheet.getSheetId();
    this.chartsOf(id).forEach(({ at }, index) => {
      const { rows, columns } = sizeOf(at);
      const range = sheet.getRange(at.top, at.left, rows, columns);
      const layer = { componentKey: componentName, data: { key: `${id} ${index}` } };
      const added = sheet.addFloatDomToRange(range, layer, {}, `chart-${id}-${index}`);
      if (added) this.shown.push(added);
    });
  }

  private chartsOf(sheetId: string): readonly ChartPlan[] {
    return memoryOf({ custom: this.workbook.facade.getCustomMetadata() ?? {} }).sheets[sheetId]?.charts ?? [];
  }

  private chartOf(key: string): ChartPlan | undefined {
    const [sheetId = "", index = ""] = key.split(" ");
    return this.chartsOf(sheetId)[Number(index)];
  }

  private read({ sheet, area }: ChartRange): HostValue[] {
    const source = this.workbook.model.getSheetBySheetId(sheet);
    if (!source) return [];
    return cellsOf(area).map(({ row, column }) => this.reader.shownAt(source, row, column));
  }
}
