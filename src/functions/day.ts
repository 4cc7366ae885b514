import { refuse } from "../core/fault";
import type { Limit } from "../core/limit";
import { parseNumber } from "./frame/parse-number";
import type { OneArgument } from "./frame";

/** Spreadsheet dates from 1990 to 2100: what falls outside is no date of a crop. */
export const dayLimit = { min: 32_874, max: 73_415, unit: "date" } as const satisfies Limit;

/** A date of the sheet, or one typed as text: 2026-04-28, 4/28/2026. Compute receives its serial number. */
export function day({ says }: { readonly says: string }): OneArgument<number> {
  return {
    shape: "one",
    says,
    unit: dayLimit.unit,
    limit: dayLimit,
    zeroIsBlank: true,
    read(cell, argument) {
      const serial = typeof cell === "number" ? cell : serialOf(String(cell));
      if (serial >= dayLimit.min && serial <= dayLimit.max) return serial;
      refuse({ kind: "refused", argument, because: `needs a date, such as 2026-04-28; got ${String(cell)}.` });
    },
  };
}

function serialOf(text: string): number {
  const iso = /^\s*(\d{4})-(\d{1,2})-(\d{1,2})\s*$/.exec(text);
  if (iso) return serialFrom(Number(iso[1]), Number(iso[2]), Number(iso[3]));
  const american = /^\s*(\d{1,2})\/(\d{1,2})\/(\d{4})\s*$/.exec(text);
  if (american) return serialFrom(Number(american[3]), Number(american[1]), Number(american[2]));
  return parseNumber(text)?.value ?? Number.NaN;
}

/** NaN for a date that no calendar has, such as April 31. */
function serialFrom(year: number, month: number, date: number): number {
  const time = new Date(Date.UTC(year, month - 1, date));
  const isReal = time.getUTCMonth() === month - 1 && time.getUTCDate() === date;
  return isReal ? Math.round((time.getTime() - Date.UTC(1899, 11, 30)) / 86_400_000) : Number.NaN;
}
