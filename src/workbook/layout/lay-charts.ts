import type { ChartsBlock } from "../model/block";
import { fragment, heading, type Fragment, type Ground } from "./fragment";

/** Charts side by side over a stretch of free rows. */
export function layCharts(block: ChartsBlock, { top }: Ground): Fragment {
  const { cells, start } = heading(block.title, top);
  return fragment({
    cells,
    charts: block.charts.map((chart) => ({
      chart,
      at: { top: start, bottom: start + block.rows - 1, left: chart.columns.first, right: chart.columns.last },
    })),
    end: start + block.rows,
  });
}
