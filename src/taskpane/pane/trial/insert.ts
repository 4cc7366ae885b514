import { areaAddress, parseAddress, sheetAddress } from "../../../hosts/address";
import { areaFrom } from "../../../workbook/area";
import { HostError, type WrittenBlock, type WrittenCell } from "../../../hosts/port";
import { arrayLiteral, literal, namespace } from "../../../functions/frame/formula-text";
import { trialBlocks } from "../../../functions/trials/trial-blocks";
import { trialStripYield } from "../../../functions/trials/trial-strip-yield";
import { words } from "../../words";
import { numberIn, readNumber } from "../parts/read-number";
import { limits } from "../../../core/limits";
import { trialLimits } from "../../../core/trials/trial-limits";
import { groundOf } from "./layout";
import { costOf, factsOf, listedIn, moneyOf } from "./result";
import type { KeptTrial, Layout } from "./state";

const say = words.trial;

/** Where things stand in the block, counted from its first cell. */
const tableTop = 3;
const columns = { strip: 0, block: 1, treatment: 2, from: 3, to: 4, yield: 5, weight: 6, moisture: 7 } as const;
/** A result is as tall as its treatments and these lines, and at most this broad. */
const resultLines = 11;
const resultColumns = 10;

/** The layout with its yields and the formula of the result, from the first cell of a selection on. */
export function trialBlock(kept: KeptTrial, layout: Layout, selection: string): WrittenBlock {
  const place = parseAddress(selection);
  if (!place) throw new HostError(say.insertNowhere, "NoAddress");
  const { top, left } = place.area;
  const at: At = (row, column) => areaAddress(areaFrom({ row: top + row, column: left + column }));
  const rows = [
    [say.sheet.title(kept.form.name.trim())],
    [say.sheet.drawnBy(layout.seed)],
    headOf(kept, layout),
    ...layout.strips.map((_, index) => stripRow(kept, layout, index, at)),
    [],
    [{ formula: resultFormula(kept, layout, at) }],
    ...Array.from({ length: layout.treatments.length + resultLines - 1 }, () => []),
  ];
  const filled = rows.map((row: WrittenCell[]) => [...row, ...Array<null>(resultColumns - row.length).fill(null)]);
  const area = areaFrom({ row: top, column: left }, { rows: filled.length, columns: resultColumns });
  return { address: place.sheet === undefined ? areaAddress(area) : sheetAddress(place.sheet, area), rows: filled };
}

type At = (row: number, column: number) => string;

function headOf({ form }: KeptTrial, { design }: Layout): WrittenCell[] {
  const head = [say.strip, say.block[design], say.treatment, say.from, say.to, say.yield];
  return form.entry === "weights" ? [...head, say.weight, say.moisture] : head;
}

function stripRow(kept: KeptTrial, layout: Layout, index: number, at: At): WrittenCell[] {
  const strip = layout.strips[index];
  const typed = kept.strips[index];
  if (!strip || !typed) return [];
  const { widthFt } = groundOf(kept.form, layout.strips.length);
  const edges = widthFt === undefined ? [null, null] : [index * widthFt, (index + 1) * widthFt];
  const row = [strip.strip, strip.block, strip.treatment, ...edges];
  if (kept.form.entry === "yields") {
    return [...row, numberIn(readNumber(say.measured.yield, typed.yield, trialLimits.yield)) ?? null];
  }
  const weight = numberIn(readNumber(say.measured.weight, typed.weight, trialLimits.weight)) ?? null;
  const moisture = numberIn(readNumber(say.measured.moisture, typed.moisture, limits.moisture)) ?? null;
  return [...row, { formula: yieldFormula(kept, tableTop + index, at) }, weight, moisture];
}

/** Blank until weight and moisture are both there. */
function yieldFormula({ form, strips }: KeptTrial, row: number, at: At): string {
  const { widthFt, lengthFt } = groundOf(form, strips.length);
  const [weight, moisture] = [at(row, columns.weight), at(row, columns.moisture)];
  const facts = [weight, literal(lengthFt ?? null), literal(widthFt ?? null), moisture, literal(form.crop)];
  return `=IF(COUNT(${weight}:${moisture})=2,${namespace}.${trialStripYield.name}(${facts.join(",")}),"")`;
}

function resultFormula(kept: KeptTrial, layout: Layout, at: At): string {
  const last = tableTop + layout.strips.length - 1;
  const column = (index: number) => `${at(tableTop, index)}:${at(last, index)}`;
  const { confidence, price, costs } = factsOf(kept);
  const facts = [
    column(columns.treatment),
    column(columns.block),
    column(columns.yield),
    literal(confidence),
    literal(layout.treatments[0] ?? null),
    ...(moneyOf(price, costs)
      ? [literal(price), arrayLiteral(listedIn(layout).map((name) => [costOf(name, layout, costs)]))]
      : []),
  ];
  return `=${namespace}.${trialBlocks.name}(${facts.join(",")})`;
}
