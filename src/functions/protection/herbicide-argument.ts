import { siteLimit, type NamedHerbicide } from "../../core/protection/site-of-action";
import { choice, quantity, type OneArgument } from "../frame";
import { herbicideWords } from "./protection-words";

const says = { says: "common name of the active ingredient, or the group number on its label" };
const number = quantity(siteLimit, says);
const word = choice(herbicideWords, says);

/** "Group 9", "WSSA 9" and "#9" are the number alone. */
const labelNumber = /^(?:hrac|wssa)?\s*(?:group|grp)?\s*#?\s*(\d{1,3})$/i;

/** An active ingredient by its common name, or a group number as a label prints it. */
export const herbicide: OneArgument<NamedHerbicide> = {
  ...word,
  read(cell, argument) {
    if (typeof cell === "number") return { siteNumber: number.read(cell, argument) };
    const digits = labelNumber.exec(String(cell).trim())?.[1];
    if (digits !== undefined) return { siteNumber: number.read(Number(digits), argument) };
    return { active: word.read(cell, argument) };
  },
};
