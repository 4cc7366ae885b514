import { dryResidue, removalRows } from "../../reference/nutrients";
import type { SourceKey } from "../../reference/sources";
import { choice, optional } from "../frame";
import { removalSetWords } from "../words";

/** Every publication with a removal number, once. */
export const removalSources: readonly SourceKey[] = [
  ...new Set([...removalRows, ...dryResidue.rows].map(({ source }) => source)),
];

export const planning = "A planning figure: published sets differ and a field's own grain analysis is better.";

export const removalSet = optional(
  choice(removalSetWords, { says: "published set of removal numbers" }),
  null,
  "the usual set for that crop",
);
