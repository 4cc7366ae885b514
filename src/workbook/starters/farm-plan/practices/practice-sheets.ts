import type { SheetModel } from "../../../model/workbook-model";
import type { FarmContext } from "../farm-context";
import { practiceContext } from "./practice-context";
import { practicesSheet } from "./practices-sheet";
import { stackSheet } from "../stack/stack-sheet";
import { trialSheets } from "../trial/trial-sheet";

/** Practices, a sheet for each trial, and the set to take up. */
export function practiceSheets(context: FarmContext): SheetModel[] {
  const practices = practiceContext(context);
  return [practicesSheet(practices), ...trialSheets(practices), stackSheet(practices)];
}
