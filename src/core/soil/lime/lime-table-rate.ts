import type { LimeForm } from "../../../reference/soil";

type LimeTable = Extract<LimeForm, { kind: "table" }>;

/**
 * Reads a printed lime table by buffer pH and target, in the table's unit.
 *
 * Between rows a straight line is drawn where the guide asks for it; otherwise the buffer pH is read to the nearest
 * printed row. The caller has checked that the buffer pH lies inside the table or under its last row.
 */
export function limeTableRate(table: LimeTable, bufferPh: number, targetPh: number): number {
  const column = 1 + table.targets.indexOf(targetPh);
  const rates = table.rows.map((row) => ({ bufferPh: row[0], rate: row[column] ?? Number.NaN }));
  const lowest = rates[rates.length - 1];
  if (!lowest) return Number.NaN;
  const readAt = table.between === "nearest" ? Math.round(bufferPh * 10) / 10 : bufferPh;
  if (table.belowTable !== undefined && readAt < lowest.bufferPh) return table.belowTable;
  return straightBetween(rates, readAt);
}

/** Rows run from the highest buffer pH down. */
function straightBetween(rates: readonly { bufferPh: number; rate: number }[], bufferPh: number): number {
  for (let index = 0; index + 1 < rates.length; index++) {
    const above = rates[index];
    const below = rates[index + 1];
    if (!above || !below || bufferPh < below.bufferPh) continue;
    const part = (above.bufferPh - bufferPh) / (above.bufferPh - below.bufferPh);
    return above.rate + part * (below.rate - above.rate);
  }
  return rates[rates.length - 1]?.rate ?? Number.NaN;
}
