import { FormulaError } from "../../../core/fault";
import { within, type Limit } from "../../../core/limit";
import { describeFault } from "../../../functions/frame/describe-fault";
import { parseNumber } from "../../../functions/frame/parse-number";
import { sentence } from "./text";

/** What stands in a number box: nothing yet, a number, or the sentence that says what does not fit. */
export type Read = { readonly value: number } | { readonly refusal: string } | "blank";

/** Reads a number box the way the worksheet functions read a cell: $, commas, spaces and a unit behind are let pass. */
export function readNumber(name: string, text: string, limit: Limit): Read {
  if (text.trim() === "") return "blank";
  const bare = text.replace(
    /\s*(?:%|\$?\s*(?:lb|ft|bu|ac|(?:(?:\/|per)\s*)?(?:bu|bushels?|ac|acres?))(?:\s*\/\s*ac)?)\s*$/i,
    "",
  );
  const read = parseNumber(bare);
  try {
    if (!read) throw new FormulaError({ kind: "notANumber", argument: name, received: text.trim(), unit: limit.unit });
    within(name, read.value, limit);
    return { value: read.value };
  } catch (thrown) {
    if (thrown instanceof FormulaError) return { refusal: sentence(describeFault(thrown.fault)) };
    throw thrown;
  }
}

/** The number, where one can be read. */
export function numberIn(read: Read): number | undefined {
  return read !== "blank" && "value" in read ? read.value : undefined;
}

export function refusalIn(read: Read): string | undefined {
  return read !== "blank" && "refusal" in read ? read.refusal : undefined;
}
