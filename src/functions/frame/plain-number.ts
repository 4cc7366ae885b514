let format: Intl.NumberFormat | undefined;

/** A number as people read it: thousands set apart, 12 digits at most. A format is slow to make, so one serves all. */
export function plainNumber(value: number): string {
  format ??= new Intl.NumberFormat("en-US", { maximumSignificantDigits: 12 });
  return format.format(value);
}
