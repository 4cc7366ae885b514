import type { Expression } from "../formula/expression";
import type { PlacedCell, RowsBlock } from "../model/block";
import { formats } from "../model/cell";

interface ProfitGridFacts {
  readonly title: string;
  /** The formula that fills the grid from its headings. */
  readonly grid: Expression;
  /** Headings by their step from the middle, -3 to 3. */
  readonly yieldAt: (step: number) => Expression;
  readonly priceAt: (step: number) => Expression;
}

const size = 7;
const steps = Array.from({ length: size }, (_, index) => index);
const middle = (size - 1) / 2;

/**
 * Yields down, prices across, profit between: one formula that spills. Headings are registered as grid.yield1 to
 * grid.yield7 and grid.price1 to grid.price7.
 */
export function profitGridBlock({ title, grid, yieldAt, priceAt }: ProfitGridFacts): RowsBlock {
  const prices: PlacedCell[] = steps.map((step) => ({
    key: `grid.price${step + 1}`,
    content: priceAt(step - middle),
    style: "head",
    format: formats.cents,
  }));
  const body = steps.map((step): (PlacedCell | null)[] => {
    const head: PlacedCell = {
      key: `grid.yield${step + 1}`,
      content: yieldAt(step - middle),
      style: "head",
      format: formats.one,
    };
    if (step > 0) return [head];
    const spill = { rows: size, columns: size };
    return [head, { key: "grid.profit", content: grid, style: "computed", format: formats.dollars, spill }];
  });
  return {
    kind: "rows",
    title,
    rows: [[{ content: "bu/ac down, $/bu across", style: "head" }, ...prices], ...body],
    rules: [
      {
        place: "grid.profit",
        rule: { kind: "scale", low: "#eab4ba", middle: "#ffffff", high: "#a9d3c1", middleAt: 0 },
      },
    ],
  };
}
