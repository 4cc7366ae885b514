/** What is known of an uncertain amount: the chance of each value or less, between two ends. */
export interface Distribution {
  readonly lowest: number;
  readonly highest: number;
  /** Chance of a value at or below x. */
  cdf(x: number): number;
}
