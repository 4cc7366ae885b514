import type { Cited } from "../table";

/** Where the best day falls within the days that a job takes, and what the lateness of all acres is divided by. */
export const bestDays = {
  end: {
    label: "at one end",
    also: ["end", "start", "first day", "beginning"],
    divisor: 2,
    mark: "M",
    source: "asabe-ep496",
  },
  middle: { label: "in the middle", also: ["middle", "centered"], divisor: 4, mark: "M", source: "asabe-ep496" },
} as const satisfies Record<string, Cited & { label: string; also: readonly string[]; divisor: number }>;

export type BestDayKey = keyof typeof bestDays;
