/**
 * A number as people type it into a text cell: "1,200", "$4.35", " 205 ", "(12)" or "−12", "15 %".
 * Returns the number and whether a percent sign stood behind it, or nothing when it is not a number.
 */
export function parseNumber(text: string): { readonly value: number; readonly percent: boolean } | undefined {
  const bare = text.replace(/[\s$\u00a0]/g, "").replace(/^(\(?)\u2212/, "$1-");
  const match = /^(\()?([+-]?(?:\d{1,3}(?:,\d{3})+|\d+)?(?:\.\d*)?(?:e[+-]?\d+)?)(%)?(\))?$/i.exec(bare);
  const digits = match?.[2]?.replace(/,/g, "");
  if (!match || !digits) return undefined;
  if ((match[1] === undefined) !== (match[4] === undefined)) return undefined;
  const value = Number(digits);
  if (!Number.isFinite(value)) return undefined;
  return { value: match[1] ? -value : value, percent: match[3] !== undefined };
}
