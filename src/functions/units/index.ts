import type { WorksheetFunction } from "../frame";
import { bushelWeight, unitConvert } from "./convert";

/** Everything this family puts on the sheet, in the order of the documentation. */
export const unitFunctions: readonly WorksheetFunction[] = [unitConvert, bushelWeight];
