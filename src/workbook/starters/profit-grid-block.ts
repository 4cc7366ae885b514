import type { Expression } from "../formula/expression";
import { place, type Reference } from "../formula/reference";
import type { PlacedCell, RowsBlock } from "../model/block";
import { formats } from "../model/cell";

interface ProfitGridFacts {
  readonly title: string;
  /** The profit where the heading of a yield meets the heading of a price. */
  readonly profit: (yields: Reference, prices: Reference) => Expression;
  /** Headings by their step from the middle, -3 to 3. */
  readonly yieldAt: (step: number) => Expression;
  readonly priceAt: (step: number) => Expression;
}

const size = 7;
const steps = Array.from({ length: size }, (_, index) => index);
const middle = (size - 1) / 2;

const priceKey = (step: number) => `grid.price${step + 1}`;
const yieldKey = (step: number) => `grid.yield${step + 1}`;
const profitKey = (down: number, across: number) => `grid.profit${down + 1}x${across + 1}`;

/**
 * Yields down, prices across, profit between. A formula for each cell, not one that spills: a program without the
 * add-in then still shows the grid. The first and last profits are registered as grid.profit1x1 and grid.profit7x7.
 */
export function profitGridBlock({ title, profit, yieldAt, priceAt }: ProfitGridFacts): RowsBlock {
  const prices: PlacedCell[] = steps.map((step) => ({
    key: priceKey(step),
    content: priceAt(step - middle),
    style: "head",
    format: formats.cents,
  }));
  const body = steps.map((down): PlacedCell[] => [
    { key: yieldKey(down), content: yieldAt(down - middle), style: "head", format: formats.one },
    ...steps.map((across): PlacedCell => ({
      key: profitKey(down, across),
      content: profit(place(yieldKey(down)), place(priceKey(across))),
      style: "computed",
      format: formats.dollars,
    })),
  ]);
  return {
    kind: "rows",
    title,
    rows: [[{ content: "bu/ac down, $/bu across", style: "head" }, ...prices], ...body],
    rules: [
      {
        from: profitKey(0, 0),
        to: profitKey(size - 1, size - 1),
        rule: { kind: "scale", low: "#eab4ba", middle: "#ffffff", high: "#a9d3c1", middleAt: 0 },
      },
    ],
  };
}
