/** A number as the pane shows it: thousands parted, no more decimals than its size needs. */
export function numberText(value: number): string {
  const size = Math.abs(value);
  const decimals = size >= 1000 ? 0 : size >= 100 ? 1 : size >= 1 ? 2 : 4;
  return value.toLocaleString("en-US", { maximumFractionDigits: decimals });
}

/** A value with its unit behind it: "54 lb/ac", "8 %", "high". A dollar sign alone goes in front. */
export function withUnit(value: number | string | boolean, unit: string): string {
  if (typeof value !== "number") return String(value);
  if (unit === "$") return value < 0 ? `-$${numberText(-value)}` : `$${numberText(value)}`;
  if (unit.startsWith("$/")) return `${withUnit(value, "$")}${unit.slice(1)}`;
  return unit ? `${numberText(value)} ${unit}` : numberText(value);
}
