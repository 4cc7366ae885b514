import { useEffect, useReducer, useRef } from "react";
import { chartSvg, type ReadRange } from "../../chart/chart-svg";
import type { ChartPlan } from "../../../workbook/plan";

/** Tells every chart on the page to draw itself anew. */
export class Redraw {
  private readonly listeners = new Set<() => void>();

  now(): void {
    for (const listener of this.listeners) listener();
  }

  listen(listener: () => void): () => void {
    this.listeners.add(listener);
    return () => this.listeners.delete(listener);
  }
}

interface ChartSource {
  /** The chart of this key as it stands, undefined once it is gone. */
  readonly chart: (key: string) => ChartPlan | undefined;
  readonly read: ReadRange;
  readonly redraw: Redraw;
}

/** The element the grid floats over its cells for a chart: the drawing fills it. */
export function chartView({ chart, read, redraw }: ChartSource) {
  return function ChartView({ data }: { readonly data?: { readonly key: string } }) {
    const frame = useRef<HTMLDivElement>(null);
    const [, draw] = useReducer((count: number) => count + 1, 0);
    useEffect(() => redraw.listen(draw), []);
    useEffect(() => {
      const observer = new ResizeObserver(draw);
      if (frame.current) observer.observe(frame.current);
      return () => observer.disconnect();
    }, []);
    const plan = chart(data?.key ?? "");
    const size = { width: frame.current?.clientWidth || 640, height: frame.current?.clientHeight || 360 };
    const svg = plan ? chartSvg(plan, read, size) : "";
    // Drawn from the plan with every text escaped.
    return <div ref={frame} className="loam-chart" dangerouslySetInnerHTML={{ __html: svg }} />;
  };
}
