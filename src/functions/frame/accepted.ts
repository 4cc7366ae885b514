import type { ArgumentFacts } from "./arguments";
import { limitEnds } from "./limit-ends";

/** What an argument accepts, in words: a range with its unit, or the list of words. */
export function accepted(argument: ArgumentFacts): string {
  if (argument.vocabulary)
    return Object.values(argument.vocabulary.words)
      .map(({ label }) => label)
      .join(", ");
  const { limit } = argument;
  if (!limit) return "any text";
  if (limit.unit === "date") return "a date";
  const { low, high, behind } = limitEnds(limit);
  return limit.max >= 1e9 ? `${low}${behind} or more` : `${low} to ${high}${behind}`;
}
