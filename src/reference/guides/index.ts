import { delaware, newJersey, southCarolina } from "./atlantic-classes";
import type { Guide } from "./guide";
import { illinois } from "./il";
import { inMiOh1995 } from "./in-mi-oh-1995";
import { inMiOh2020 } from "./in-mi-oh-2020";
import { iowa } from "./ia";
import { kansas } from "./ks";
import { minnesota, minnesota2018 } from "./mn";
import { missouri } from "./mo";
import { montana } from "./mt";
import { northCarolina } from "./nc";
import { northDakota } from "./nd";
import { nebraska } from "./ne";
import { ontario } from "./on";
import { southDakota } from "./sd";
import { wisconsin } from "./wi";

export type * from "./guide";
export {
  conversionFormulas,
  testBases,
  testConversions,
  testedElements,
  type ConversionFormulaKey,
  type ConversionRow,
  type TestBasisKey,
  type TestedElementKey,
} from "./test-conversions";
export {
  approaches,
  equationKey,
  extractants,
  groups,
  reportClasses,
  testUnits,
  type ApproachKey,
  type ExtractantKey,
  type GroupKey,
  type ReportClassKey,
  type TestUnitKey,
} from "./words";

/** Recommendation systems by the postal codes of their region, with the year where there are two of a region. */
export const guides = {
  "IN-MI-OH": inMiOh2020,
  "IN-MI-OH-1995": inMiOh1995,
  IA: iowa,
  IL: illinois,
  KS: kansas,
  MN: minnesota,
  "MN-2018": minnesota2018,
  MO: missouri,
  MT: montana,
  NC: northCarolina,
  ND: northDakota,
  NE: nebraska,
  ON: ontario,
  SD: southDakota,
  WI: wisconsin,
  DE: delaware,
  NJ: newJersey,
  SC: southCarolina,
} as const satisfies Record<string, Guide>;

export type GuideKey = keyof typeof guides;

/** A guide as a sentence names it: what is not in the part we hold may still be in print. */
export function guideInWords({ label, isPartial }: Guide): string {
  return isPartial ? `${label}, as far as we hold it,` : label;
}
