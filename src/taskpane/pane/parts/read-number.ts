import { FormulaError } from "../../../core/fault";
import { within, type Limit } from "../../../core/limit";
import { describeFault } from "../../../functions/frame/describe-fault";
import { parseNumber } from "../../../functions/frame/parse-number";
import { sentence } from "./text";

/** What stands in a number box: nothing yet, a number, or the sentence that says what does not fit. */
export type Read = { readonly value: number } | { readonly refusal: string } | "blank";

/**
 * Reads a number box the way the worksheet functions read a cell: $, commas, spaces and the box's own unit behind are
 * let pass; a percent sign only where percents are asked for.
 */
export function readNumber(name: string, text: string, limit: Limit): Read {
  if (text.trim() === "") return "blank";
  const read = parseNumber(text.replace(unitBehind(limit.unit), ""));
  try {
    if (!read || (read.percent && !limit.unit.includes("%"))) {
      throw new FormulaError({ kind: "notANumber", argument: name, received: text.trim(), unit: limit.unit });
    }
    within(name, read.value, limit);
    return { value: read.value };
  } catch (thrown) {
    if (thrown instanceof FormulaError) return { refusal: sentence(describeFault(thrown.fault)) };
    throw thrown;
  }
}

const spellings: Readonly<Record<string, string>> = {
  bu: "bu|bushels?",
  ac: "ac|acres?",
  lb: "lbs?|pounds?",
  ft: "ft|feet|foot",
};

/** The words of a unit as people type them behind a number: "bu/ac", "bushels per acre", "$/bu". */
function unitBehind(unit: string): RegExp {
  const words = (unit.match(/[a-z]+/gi) ?? []).map((word) => spellings[word] ?? word).join("|");
  return words === "" ? /$^/ : new RegExp(`\\s*\\$?\\s*(?:(?:/|per(?![a-z]))?\\s*(?:${words})(?![a-z])\\s*)+$`, "i");
}

/** The number, where one can be read. */
export function numberIn(read: Read): number | undefined {
  return read !== "blank" && "value" in read ? read.value : undefined;
}

export function refusalIn(read: Read): string | undefined {
  return read !== "blank" && "refusal" in read ? read.refusal : undefined;
}
