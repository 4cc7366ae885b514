import {
  groups,
  reportClasses,
  testUnits,
  type GroupKey,
  type ReportClassKey,
  type TestUnitKey,
} from "../../reference/guides";
import { vocabulary } from "../frame";

/** Words that only functions read against a guide take. */
export const groupWords = vocabulary<GroupKey>("group", groups);
export const reportClassWords = vocabulary<ReportClassKey>("report class", reportClasses);
export const testUnitWords = vocabulary<TestUnitKey>("test unit", testUnits);
