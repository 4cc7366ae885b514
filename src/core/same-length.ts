import { countInWords } from "./count-in-words";
import { refuse } from "./fault";

/**
 * Refuses two lists of a sheet that go together row by row and differ in length.
 *
 * @param one what an entry is called on the sheet
 */
export function sameLength(
  firstName: string,
  first: readonly unknown[],
  secondName: string,
  second: readonly unknown[],
  one = "cell",
): void {
  if (first.length === second.length) return;
  refuse({
    kind: "sizesDiffer",
    first: { argument: firstName, size: countInWords(first.length, one) },
    second: { argument: secondName, size: countInWords(second.length, one) },
  });
}
