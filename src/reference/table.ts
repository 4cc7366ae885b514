import type { SourceKey } from "./sources";

/**
 * How sure we are of a published number. V: seen in the source. M: from memory, well established; ships with
 * "check against the current bulletin". Numbers we are unsure of never enter a table: the person types them.
 */
export type Mark = "V" | "M";

/** Provenance of one row: where the number stands and how sure we are of it. */
export interface Cited {
  readonly mark: Mark;
  readonly source: SourceKey;
  /** Page, table or equation in the source, when known. */
  readonly locator?: string;
  /** A conversion or reading of ours, or a caution of the source. */
  readonly note?: string;
}

/** A published table: every number with unit, basis and citation. */
export interface ReferenceTable<Row extends Cited> {
  readonly title: string;
  /** Unit of each numeric column, by column name. */
  readonly units: Readonly<Record<string, string>>;
  /** What the numbers refer to, such as the moisture of the grain. */
  readonly basis: string;
  readonly rows: readonly Row[];
}

/** The sentence that goes with every number marked M. */
export const checkBulletin = "Check against the current bulletin.";
