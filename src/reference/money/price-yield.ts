import type { Cited } from "../table";

/** How price and yield moved together where it was measured, for a person to hold an own guess against. */
export interface PriceYieldTie extends Cited {
  readonly where: string;
  readonly crop: "corn";
  readonly correlation: { readonly from: number; readonly to: number; readonly mean: number };
}

export const priceYieldTies: readonly PriceYieldTie[] = [
  {
    where: "counties of Illinois",
    crop: "corn",
    correlation: { from: -0.72, to: -0.31, mean: -0.51 },
    mark: "V",
    source: "farmdoc-price-yield-2012",
    note: "Weaker for a single farm than for a county; near 0 or above it outside the main corn states.",
  },
];
