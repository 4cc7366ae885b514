/** One measured figure: what, how much, the limit it is held against, and how it compares in the same run. */
export interface Figure {
  readonly what: string;
  readonly value: number;
  readonly unit: string;
  readonly limit?: number;
  /** Compared with this, measured in the same run: "native formulas", "the bare formula". */
  readonly against?: { readonly what: string; readonly value: number };
}

/** Median of several runs in milliseconds; the first run warms up and does not count. */
export function median(runs: number, work: () => void): number {
  work();
  const times = Array.from({ length: runs }, () => {
    const begun = performance.now();
    work();
    return performance.now() - begun;
  }).sort((a, b) => a - b);
  return times[Math.floor(times.length / 2)] ?? Number.NaN;
}

export function print(title: string, figures: readonly Figure[]): void {
  console.log(`\n${title}`);
  console.table(
    figures.map(({ what, value, unit, limit, against }) => ({
      what,
      value: `${round(value)} ${unit}`,
      limit: limit === undefined ? "" : `${limit} ${unit}`,
      holds: limit === undefined ? "" : value <= limit ? "yes" : "NO",
      against: against ? `${against.what}: ${round(against.value)} ${unit}` : "",
      ratio: against ? round(value / against.value) : "",
    })),
  );
}

function round(value: number): string {
  return value.toLocaleString("en-US", { maximumSignificantDigits: 3 });
}
