import { isProse, type Text } from "../formula/expression";
import type { FinalNames } from "./choose-names";

/** A text as it reads once the sheets have their names. */
export function wordsOf(text: Text, names: FinalNames): string {
  if (!isProse(text)) return text;
  return text.prose
    .map((part) => {
      if (typeof part === "string") return part;
      const sheet = part.to === "sheetName" ? names.sheets.get(part.sheet) : undefined;
      if (sheet === undefined)
        throw new Error(`Prose points to something that is not a sheet: ${JSON.stringify(part)}`);
      return sheet;
    })
    .join("");
}
