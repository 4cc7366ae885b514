import { namespace } from "../../../functions/frame/formula-text";
import { formulaTokens, isCall } from "./formula-tokens";

const ownPrefix = new RegExp(`^_xldudf_${namespace}_`, "i");
const nativePrefix = /^_xlfn\.(?:_xlws\.)?/i;
const boundPrefix = /^_xlpm\./i;

/** A formula in the form a person types, from the form the file holds. */
export function typedFormula(stored: string): string {
  const tokens = formulaTokens(stored);
  const typed = tokens.map(({ kind, text }, index) => {
    if (kind !== "name") return text;
    if (!isCall(tokens, index)) return text.replace(boundPrefix, "");
    return text.replace(ownPrefix, `${namespace}.`).replace(nativePrefix, "").replace(boundPrefix, "");
  });
  return `=${typed.join("")}`;
}
