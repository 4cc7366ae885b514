import { starters, type Starter } from "../../src/workbook/starters";

export function starterNamed(key: string): Starter {
  const found = starters.find((starter) => starter.key === key);
  if (!found) throw new Error(`There is no starter ${key}.`);
  return found;
}
