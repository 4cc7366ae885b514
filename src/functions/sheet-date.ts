import { refuse } from "../core/fault";
import { serialOf, sheetDateLimit } from "../core/units/sheet-date";
import { quantity, type OneArgument } from "./frame";

/** A spreadsheet date; a text such as 2027-05-01 or 5/1/2027 (month first) is taken too. */
export function sheetDate(says: { readonly says: string }): OneArgument<number> {
  return {
    ...quantity(sheetDateLimit, says),
    read(cell, argument) {
      const serial = typeof cell === "number" ? cell : dateFrom(String(cell));
      if (serial === undefined || !(serial >= sheetDateLimit.min && serial <= sheetDateLimit.max)) {
        refuse({
          kind: "refused",
          argument,
          because: `${String(cell)} is no date here: enter one such as 5/1/2027, from 1950 on.`,
        });
      }
      return serial;
    },
  };
}

function dateFrom(text: string): number | undefined {
  const iso = /^\s*(\d{4})-(\d{1,2})-(\d{1,2})\s*$/.exec(text);
  if (iso) return serialOf(Number(iso[1]), Number(iso[2]), Number(iso[3]));
  const american = /^\s*(\d{1,2})\/(\d{1,2})\/(\d{4})\s*$/.exec(text);
  return american ? serialOf(Number(american[3]), Number(american[1]), Number(american[2])) : undefined;
}
