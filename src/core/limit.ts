import { refuse } from "./fault";

/**
 * The accepted range of a quantity with its unit. Written once, used by the formula that guards it and by the
 * worksheet function that declares it.
 */
export interface Limit {
  readonly min: number;
  readonly max: number;
  readonly unit: string;
  /**
   * The likely slip when a value falls outside: it was typed this many times too large ("6.5" as "65" is 10, a
   * percentage typed as a share is 0.01). The message then asks "did you mean …".
   */
  readonly slip?: number;
}

/**
 * Refuses a value outside its limit. The test is written as "not inside" so that NaN is refused too.
 *
 * @param argument the name as the sheet shows it
 * @param value in the limit's unit
 */
export function within(argument: string, value: number, limit: Limit): void {
  if (!(value >= limit.min && value <= limit.max)) refuseOutOfRange(argument, value, limit);
}

function refuseOutOfRange(argument: string, received: number, { min, max, unit, slip }: Limit): never {
  const meant = slip === undefined ? Number.NaN : tidy(received / slip);
  const suggestion = meant >= min && meant <= max ? { suggestion: String(meant) } : {};
  refuse({ kind: "outOfRange", argument, received, min, max, unit, ...suggestion });
}

/** Drops the binary dust of a division (0.29 / 0.01 is 28.999…). */
function tidy(value: number): number {
  return Number(value.toPrecision(12));
}
