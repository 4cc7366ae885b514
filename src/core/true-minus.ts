/** A number that people read, in words or on a picture, has a true minus sign; a cell's format keeps the hyphen. */
export function trueMinus(written: string): string {
  return written.replace(/^-(?=[\d.$])/, "−");
}
