import { isRecord } from "../../../hosts/is-record";

/** Reading what was remembered: it may be of an older form, or damaged. */
export function recordOf(value: unknown): Readonly<Record<string, unknown>> {
  return isRecord(value) ? value : {};
}

/** The entries of a remembered list; none where it is no list. */
export function listIn(value: unknown): readonly unknown[] {
  return Array.isArray(value) ? value : [];
}

export function textIn(record: Readonly<Record<string, unknown>>, key: string): string | undefined {
  const value = record[key];
  return typeof value === "string" ? value : undefined;
}
