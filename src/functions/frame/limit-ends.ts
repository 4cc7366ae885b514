import { trueMinus } from "../../core/true-minus";
import type { Limit } from "../../core/limit";

/** The ends of a range as people read them, and the unit that is said once, behind; dollars alone go in front of each. */
export function limitEnds({ min, max, unit }: Limit): { low: string; high: string; behind: string } {
  const isMoney = unit === "$";
  const written = (value: number) => {
    const size = Math.abs(value).toLocaleString("en-US", { maximumSignificantDigits: 12 });
    return trueMinus(`${value < 0 ? "-" : ""}${isMoney ? "$" : ""}${size}`);
  };
  return { low: written(min), high: written(max), behind: isMoney || unit === "" ? "" : ` ${unit}` };
}
