import type { WorksheetFunction } from "../frame";
import { responseBest, responseCompare, responseFit, responseRange, responseYield } from "./response-curves";

/** Everything this family puts on the sheet, in the order of the documentation. */
export const curveFunctions: readonly WorksheetFunction[] = [
  responseFit,
  responseBest,
  responseRange,
  responseYield,
  responseCompare,
];
