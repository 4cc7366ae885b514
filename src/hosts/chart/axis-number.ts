import { trueMinus } from "../../core/true-minus";

/**
 * Writes numbers on an axis by the simple part of a spreadsheet number format: text before and behind, thousands
 * commas, decimals and percent. Without a format: as short as it can be.
 */
export function axisNumber(format: string | undefined): (value: number) => string {
  const parts = /^((?:"[^"]*"|[^#0"])*)([#,0]+(?:\.(0+|#+|0+#+))?)(%?)((?:"[^"]*"|[^"])*)$/.exec(firstSection(format));
  if (!parts) return (value) => trueMinus(value.toLocaleString("en-US", { maximumFractionDigits: 6 }));
  const [, before = "", digits = "", decimals = "", percent = "", behind = ""] = parts;
  const options = {
    minimumFractionDigits: decimals.replace(/#/g, "").length,
    maximumFractionDigits: decimals.length,
    useGrouping: digits.includes(","),
  };
  return (value) => {
    const shown = Math.abs(percent ? value * 100 : value).toLocaleString("en-US", options);
    const sign = value < 0 && /[1-9]/.test(shown) ? "−" : "";
    return `${sign}${plainText(before)}${shown}${percent}${plainText(behind)}`;
  };
}

/** The part for positive numbers. */
function firstSection(format: string | undefined): string {
  return (format ?? "").split(";")[0] ?? "";
}

function plainText(text: string): string {
  return text.replace(/["\\]/g, "").replace(/_./g, "");
}
