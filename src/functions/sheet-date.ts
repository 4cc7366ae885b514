import { refuseArgument } from "../core/fault";
import { serialOf, sheetDateLimit } from "../core/units/sheet-date";
import { quantity, type OneArgument } from "./frame";
import { parseNumber } from "./frame/parse-number";

/** A date of the sheet, or one typed as text: 2026-04-28, 4/28/2026 (month first). Compute gets its serial number. */
export function sheetDate(says: { readonly says: string }): OneArgument<number> {
  return {
    ...quantity(sheetDateLimit, says),
    zeroIsBlank: true,
    read(cell, argument) {
      const serial = typeof cell === "number" ? cell : serialFrom(String(cell));
      if (serial !== undefined && serial >= sheetDateLimit.min && serial <= sheetDateLimit.max) return serial;
      refuseArgument(argument, `needs a date, such as 2026-04-28; got "${String(cell)}".`);
    },
  };
}

function serialFrom(text: string): number | undefined {
  const iso = /^\s*(\d{4})-(\d{1,2})-(\d{1,2})\s*$/.exec(text);
  if (iso) return serialOf(Number(iso[1]), Number(iso[2]), Number(iso[3]));
  const american = /^\s*(\d{1,2})\/(\d{1,2})\/(\d{4})\s*$/.exec(text);
  if (american) return serialOf(Number(american[3]), Number(american[1]), Number(american[2]));
  return parseNumber(text)?.value;
}
