import { headCounts, podCounts, type HeadCountKey } from "../../reference/harvest/yield-counts";
import type { Cited } from "../../reference/table";

/** A count of the person, or the usual one with its citation. */
export interface Count {
  readonly value: number;
  readonly cited: readonly Cited[];
}

/** The usual count of a wheat estimate. */
export function usualHeadCount(key: HeadCountKey): Count {
  const rows = headCounts.rows.filter((row) => row.key === key);
  return { value: rows[0]?.value ?? Number.NaN, cited: rows };
}

/** The usual count of a soybean estimate. */
export function usualPodCount(key: (typeof podCounts.rows)[number]["key"]): Count {
  const rows = podCounts.rows.filter((row) => row.key === key);
  return { value: rows[0]?.value ?? Number.NaN, cited: rows };
}
