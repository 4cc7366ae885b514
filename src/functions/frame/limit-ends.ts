import { trueMinus } from "../../core/true-minus";
import type { Limit } from "../../core/limit";
import { plainNumber } from "./plain-number";

/** The ends of a range as people read them, and the unit that is said once, behind; dollars alone go in front of each. */
export function limitEnds({ min, max, unit }: Limit): { low: string; high: string; behind: string } {
  const isMoney = unit === "$";
  const written = (value: number) => {
    const size = plainNumber(Math.abs(value));
    return trueMinus(`${value < 0 ? "-" : ""}${isMoney ? "$" : ""}${size}`);
  };
  return { low: written(min), high: written(max), behind: isMoney || unit === "" ? "" : ` ${unit}` };
}
