import { roundStep } from "../../core/round-step";

/** Maps values to pixels along one axis, with the round values that get a line and a label. */
export interface LinearScale {
  readonly ticks: readonly number[];
  readonly low: number;
  readonly high: number;
  at(value: number): number;
}

/**
 * A scale over round limits that hold all values.
 *
 * @param from pixel of the low end
 * @param to pixel of the high end
 */
export function linearScale(values: readonly number[], from: number, to: number, fromZero: boolean): LinearScale {
  const least = Math.min(...values, ...(fromZero || values.length === 0 ? [0] : []));
  const most = Math.max(...values, ...(fromZero || values.length === 0 ? [0] : []));
  const span = most > least ? most - least : Math.abs(most) || 1;
  const step = roundStep(span / 5);
  const low = Math.floor(least / step + 1e-9) * step;
  const high = Math.max(Math.ceil(most / step - 1e-9) * step, low + step);
  const count = Math.round((high - low) / step);
  const ticks = Array.from({ length: count + 1 }, (_, index) => Number((low + index * step).toPrecision(12)));
  return { ticks, low, high, at: (value) => from + ((value - low) / (high - low)) * (to - from) };
}

export interface BandScale {
  readonly width: number;
  /** Pixel where the band of an index begins. */
  at(index: number): number;
}

export function bandScale(count: number, from: number, to: number): BandScale {
  const width = (to - from) / Math.max(count, 1);
  return { width, at: (index) => from + index * width };
}
