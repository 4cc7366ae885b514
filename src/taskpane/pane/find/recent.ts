import { allFunctions } from "../../../functions";

const most = 6;

/** The functions opened lately with one more at their head, each once. */
export function withRecent(recent: readonly string[], name: string): readonly string[] {
  return [name, ...recent.filter((other) => other !== name)].slice(0, most);
}

/** What was remembered, as far as it still names functions. */
export function recentFrom(remembered: unknown): readonly string[] {
  if (!Array.isArray(remembered)) return [];
  const known = new Set(allFunctions.map(({ name }) => name));
  return remembered.filter((name): name is string => typeof name === "string" && known.has(name)).slice(0, most);
}
