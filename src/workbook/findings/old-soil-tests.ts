import { blocksOf, headLike, rowName, rowsOf, type Block } from "./reading/blocks-of";
import type { OldSoilTest } from "./finding";
import { sampledIn, yearOf, type When } from "./sampled-when";
import { valueAt } from "./reading/sheet-cells";
import type { WorkbookReading } from "./reading/workbook-reading";

const sampledHead = /\bsampled\b|\b(?:sample|sampling|test|lab|report)\w* (?:date|year)\b|^(?:date|year)\b/i;
const soilHead = /\bph\b|\b(?:p|k|zn|s) ppm\b|\b(?:soil[- ]test|mehlich|bray|olsen|potassium|phosphorus)\b/i;

/** Years after which a soil test no longer says much: guides ask for a sample every 2 to 4 years. */
const oldestYears = 4;

const daysPerYear = 365.25;

/** The day it is read: the year, and the days since the spreadsheet's day 0 (30 December 1899). */
export interface Today {
  readonly year: number;
  readonly serial: number;
}

/** Soil tests taken more than four years ago, by a column that says when. */
export function oldSoilTests(reading: WorkbookReading, today: Today): OldSoilTest[] {
  return reading.sheets.flatMap(blocksOf).flatMap((block) => inBlock(block, today));
}

function inBlock(block: Block, today: Today): OldSoilTest[] {
  const sampled = headLike(block, sampledHead);
  const readings = block.heads.filter(({ text }) => soilHead.test(text) && !sampledHead.test(text));
  if (!sampled || readings.length === 0) return [];
  return rowsOf(block).flatMap((row): OldSoilTest[] => {
    const isTested = readings.some(({ column }) => typeof valueAt(block.sheet, row, column) === "number");
    const when = isTested ? sampledIn(valueAt(block.sheet, row, sampled.column)) : undefined;
    if (when === undefined || !isOld(when, today)) return [];
    const at = { sheet: block.sheet.name, row, column: sampled.column };
    return [{ kind: "oldSoilTest", at, row: rowName(block, row), year: yearOf(when) }];
  });
}

function isOld(when: When, today: Today): boolean {
  if ("year" in when) return today.year - when.year > oldestYears;
  return today.serial - when.serial > oldestYears * daysPerYear;
}
