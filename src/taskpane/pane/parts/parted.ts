/** The value of one of several like fields, "soybean:10.60": which of them, and what it holds. */
export function parted(value: string): readonly [which: string, holds: string] {
  const end = value.indexOf(":");
  return [value.slice(0, end), value.slice(end + 1)];
}
