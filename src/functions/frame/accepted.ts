import type { ArgumentFacts } from "./arguments";

/** What an argument accepts, in words: a range with its unit, or the list of words. */
export function accepted(argument: ArgumentFacts): string {
  if (argument.vocabulary)
    return Object.values(argument.vocabulary.words)
      .map(({ label }) => label)
      .join(", ");
  const { limit } = argument;
  if (!limit) return "any text";
  if (limit.unit === "date") return "a date";
  const unit = limit.unit ? ` ${limit.unit}` : "";
  return limit.max >= 1e9
    ? `${limit.min.toLocaleString("en-US")}${unit} or more`
    : `${limit.min.toLocaleString("en-US")} to ${limit.max.toLocaleString("en-US")}${unit}`;
}
