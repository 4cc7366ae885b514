import { limeMethodWords } from "../../functions/words";
import { limeMethods, type LimeMethod } from "../../reference/soil";
import { blocksOf, headLike, rowName, rowsOf, type Block } from "./reading/blocks-of";
import type { MissingBuffer } from "./finding";
import { namedCell, namedNumber } from "./reading/named-cell";
import { isEmptyAt, typedNumberAt, valueAt } from "./reading/sheet-cells";
import type { WorkbookReading } from "./reading/workbook-reading";

const phHead = /^(?:soil |water )?ph\b(?!.*(?:target|wanted|goal|buffer))/i;
const bufferHead = /\bbuffer\b|\blime (?:test )?index\b/i;
const targetHead = /\bph\b.*\b(?:target|wanted|goal)\b|\b(?:target|wanted|goal)\b.*\bph\b/i;

/** As the lime plan counts it: rounding of the pH must not tip the scale. */
const rounding = 0.001;

/**
 * Fields whose typed soil pH is far enough under the wanted pH to be limed, without a buffer pH beside it. Nothing is
 * said where no wanted pH can be found, or where the lime table reads no buffer.
 */
export function missingBuffers(reading: WorkbookReading): MissingBuffer[] {
  if (readsNoBuffer(reading)) return [];
  const wanted = namedNumber(reading, "target_ph");
  const trigger = namedNumber(reading, "lime_trigger") ?? 0;
  return reading.sheets.flatMap(blocksOf).flatMap((block) => inBlock(block, wanted, trigger));
}

function inBlock(block: Block, wanted: number | undefined, trigger: number): MissingBuffer[] {
  const ph = headLike(block, phHead);
  const buffer = headLike(block, bufferHead);
  const target = headLike(block, targetHead);
  if (!ph || !buffer) return [];
  return rowsOf(block).flatMap((row): MissingBuffer[] => {
    const here = typedNumberAt(block.sheet, row, ph.column);
    const own = target === undefined ? null : valueAt(block.sheet, row, target.column);
    const targetPh = typeof own === "number" ? own : wanted;
    if (here === undefined || targetPh === undefined || !isDue(here, targetPh, trigger)) return [];
    if (!isEmptyAt(block.sheet, row, buffer.column)) return [];
    const at = { sheet: block.sheet.name, row, column: buffer.column };
    return [{ kind: "missingBuffer", at, row: rowName(block, row), ph: here, targetPh }];
  });
}

function isDue(ph: number, targetPh: number, trigger: number): boolean {
  return ph < targetPh && targetPh - ph >= trigger - rounding;
}

function readsNoBuffer(reading: WorkbookReading): boolean {
  const named = namedCell(reading, "lime_method");
  const key = typeof named === "string" ? limeMethodWords.find(named) : undefined;
  if (key === undefined) return false;
  const method: LimeMethod = limeMethods[key];
  return method.buffer === undefined;
}
