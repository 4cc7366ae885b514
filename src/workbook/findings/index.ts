import type { CallReading } from "./reading/call-reading";
import { doubleLines } from "./double-lines";
import { errorCells } from "./error-cells";
import { fewBlocks } from "./few-blocks";
import type { Finding } from "./finding";
import { foreignExtractions, guideCalls } from "./foreign-extractions";
import { implausibleFigures } from "./implausible-figures";
import { loneHerbicideGroups } from "./lone-herbicide-groups";
import { missingBuffers } from "./missing-buffer";
import { oldSoilTests, type Today } from "./old-soil-tests";
import { typedOver } from "./typed-over";
import { unknownNames } from "./unknown-names";
import type { WorkbookReading } from "./reading/workbook-reading";

export type { CallReading } from "./reading/call-reading";
export type * from "./finding";
export type { Today } from "./old-soil-tests";
export { namesCalled } from "./reading/names-called";
export { cellKey } from "./reading/workbook-reading";
export type * from "./reading/workbook-reading";

/** Functions of which the findings want to know what went in. */
export const callsToRead: ReadonlySet<string> = new Set([
  ...Object.keys(guideCalls),
  ...["PROGRAMGROUPS", "SITEOFACTION", "TRIALBLOCKS", "TRIALPAIRS"],
]);

/**
 * Looks a workbook over, ours or not: what is missing or doubtful in it, what lies at the root of other things first.
 *
 * @param calls calls of the functions in callsToRead, as far as their arguments could be read
 */
export function findingsIn(reading: WorkbookReading, calls: readonly CallReading[], today: Today): readonly Finding[] {
  return [
    ...unknownNames(reading),
    ...implausibleFigures(reading),
    ...typedOver(reading),
    ...errorCells(reading),
    ...foreignExtractions(reading, calls),
    ...missingBuffers(reading),
    ...oldSoilTests(reading, today),
    ...doubleLines(reading),
    ...loneHerbicideGroups(calls),
    ...fewBlocks(calls),
  ];
}
