import type { SheetModel } from "../../../model/workbook-model";
import type { FarmContext } from "../farm-context";
import { decisionContext } from "./decision-context";
import { practicesSheet } from "./practices-sheet";
import { stackSheet } from "./stack-sheet";
import { trialSheets } from "./trial-sheet";

/** Practices, a sheet for each trial, and the set to take up. */
export function practiceSheets(context: FarmContext): SheetModel[] {
  const decisions = decisionContext(context);
  return [practicesSheet(decisions), ...trialSheets(decisions), stackSheet(decisions)];
}
