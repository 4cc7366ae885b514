import { trueMinus } from "../../core/true-minus";

/** A number as the pane shows it: thousands parted, no more decimals than its size needs. */
export function numberText(value: number): string {
  const size = Math.abs(value);
  const decimals = size >= 1000 ? 0 : size >= 100 ? 1 : size >= 1 ? 2 : 4;
  return trueMinus(value.toLocaleString("en-US", { maximumFractionDigits: decimals }));
}

/** A value with its unit behind it: "54 lb/ac", "8 %", "high". A dollar sign alone goes in front. */
export function withUnit(value: number | string | boolean, unit: string): string {
  if (typeof value !== "number") return String(value);
  if (unit === "$") return value < 0 ? `−$${numberText(-value)}` : `$${numberText(value)}`;
  if (unit.startsWith("$/")) return `${withUnit(value, "$")}${unit.slice(1)}`;
  return unit ? `${numberText(value)} ${unit}` : numberText(value);
}

/** A value with its unit; dollars with their cents unless the value has finer parts. */
export function amountText(value: number, unit: string): string {
  const isRound = Math.abs(value * 100 - Math.round(value * 100)) < 1e-6;
  return unit.startsWith("$") && isRound ? moneyText(value, unit.slice(1)) : withUnit(value, unit);
}

/** Dollars as a bill writes them: cents below a thousand, whole dollars above. */
export function moneyText(usd: number, per = ""): string {
  const digits = Math.abs(usd) < 999.995 ? 2 : 0;
  const amount = Math.abs(usd).toLocaleString("en-US", {
    minimumFractionDigits: digits,
    maximumFractionDigits: digits,
  });
  const sign = usd < 0 && /[1-9]/.test(amount) ? "−" : "";
  return `${sign}$${amount}${per}`;
}
