import type { Limit } from "../limit";
import { crops, type CropKey } from "../../reference/crops";
import {
  dryResidue,
  nutrientKeys,
  removalRows,
  type DryResidueRow,
  type NutrientKey,
  type RemovalRow,
  type RemovalSetKey,
  type SinglePart,
} from "../../reference/nutrients";
import type { Cited, Mark } from "../../reference/table";
import { dryResidueLbPerBu } from "./dry-residue";

/** One published number, with the spread of all published numbers for the same thing. */
export interface Coefficient {
  readonly nutrient: NutrientKey;
  readonly lbPerUnit: number;
  readonly unit: string;
  readonly moisturePct: number | null;
  readonly row: RemovalRow;
  /** The row's citation with the mark of this very number. */
  readonly cited: Cited;
  /** Lowest and highest published number, on this number's basis. */
  readonly low: number;
  readonly high: number;
  readonly publishedSets: number;
}

/** What a crop's part publishes: by set, and the usual choice for each nutrient. */
export interface PartRecord {
  readonly unit: string;
  readonly moisturePct: number | null;
  readonly yieldLimit: Limit;
  readonly usual: Partial<Record<NutrientKey, Coefficient>>;
  readonly sets: Partial<Record<RemovalSetKey, Partial<Record<NutrientKey, Coefficient>>>>;
  /** Numbers that one set prints per bushel of grain, for residue. */
  readonly perGrain: Partial<Record<RemovalSetKey, Partial<Record<NutrientKey, Coefficient>>>>;
}

export interface CropRecord {
  readonly mainPart: SinglePart;
  readonly parts: Partial<Record<SinglePart, PartRecord>>;
  /** The residue whose weight follows from the grain yield. */
  readonly residue?: { readonly row: DryResidueRow; readonly dryLbPerBu: number };
}

/** Tons no part of a crop reaches; slips above are refused. */
const ceilingTons: Partial<Record<SinglePart, number>> = {
  straw: 10,
  stover: 16,
  silage: 60,
  hay: 25,
  top: 60,
  vines: 10,
  wholePlant: 20,
};

/** Rows that serve a second crop: silage corn is corn, and straw rows are printed for wheat of either season. */
const sharedRows: readonly { from: CropKey; part: SinglePart; to: CropKey }[] = [
  { from: "corn", part: "silage", to: "cornSilage" },
  { from: "wheat", part: "straw", to: "springWheat" },
];

let index: Readonly<Partial<Record<CropKey, CropRecord>>> | undefined;

/** Look-up by crop, then part, then set and nutrient; built at the first call, after which one costs a few reads. */
export function removalIndex(): Readonly<Partial<Record<CropKey, CropRecord>>> {
  return (index ??= buildIndex());
}

function buildIndex(): Partial<Record<CropKey, CropRecord>> {
  const built: Partial<Record<CropKey, CropRecord>> = {};
  const all = [...removalRows, ...sharedRows.flatMap(shared)];
  for (const crop of new Set(all.map((row) => row.crop))) {
    const rows = all.filter((row) => row.crop === crop);
    const usualRows = rows.filter((row) => row.usual);
    const mainPart = (usualRows[0] ?? rows[0])?.part ?? "grain";
    const parts: Partial<Record<SinglePart, PartRecord>> = {};
    for (const part of new Set(rows.map((row) => row.part))) {
      const record = partRecord(
        crop,
        rows.filter((row) => row.part === part),
        part === mainPart,
      );
      parts[part] = record;
      // What one trade calls straw another calls stover: each crop publishes one of the two, both words find it.
      if (part === "straw") parts.stover = record;
      if (part === "stover") parts.straw = record;
    }
    const row = dryResidue.rows.find((each) => each.crop === crop);
    built[crop] = { mainPart, parts, ...(row && { residue: { row, dryLbPerBu: dryResidueLbPerBu(row) } }) };
  }
  return built;
}

function shared({ from, part, to }: { from: CropKey; part: SinglePart; to: CropKey }): RemovalRow[] {
  return removalRows.filter((row) => row.crop === from && row.part === part).map((row) => ({ ...row, crop: to }));
}

function partRecord(crop: CropKey, rows: readonly RemovalRow[], isMain: boolean): PartRecord {
  const perUnit = rows.filter((row) => row.unit !== "bu of grain");
  const usualRow = perUnit.find((row) => row.usual) ?? perUnit[0];
  const unit = usualRow?.unit ?? crops[crop].yieldUnit;
  const moisturePct = usualRow?.moisturePct ?? null;
  const max = isMain ? crops[crop].yieldCeiling : (ceilingTons[usualRow?.part ?? "grain"] ?? crops[crop].yieldCeiling);
  return {
    unit,
    moisturePct,
    yieldLimit: { min: 0, max, unit: `${unit}/ac` },
    usual: usualNumbers(perUnit, usualRow),
    sets: bySet(perUnit),
    perGrain: bySet(rows.filter((row) => row.unit === "bu of grain")),
  };
}

/** The usual row's numbers; what it does not print comes from the North Carolina table, the widest one. */
function usualNumbers(
  rows: readonly RemovalRow[],
  usualRow: RemovalRow | undefined,
): Partial<Record<NutrientKey, Coefficient>> {
  const numbers: Partial<Record<NutrientKey, Coefficient>> = {};
  if (!usualRow) return numbers;
  const wide = rows.find((row) => row.set === "northCarolina" && canCompare(row, usualRow));
  for (const nutrient of nutrientKeys) {
    const from = usualRow.lb[nutrient] === undefined ? wide : usualRow;
    const found = from && coefficient(from, nutrient, rows);
    if (found) numbers[nutrient] = found;
  }
  return numbers;
}

function bySet(rows: readonly RemovalRow[]): PartRecord["sets"] {
  const sets: Partial<Record<RemovalSetKey, Partial<Record<NutrientKey, Coefficient>>>> = {};
  for (const row of rows) {
    const numbers: Partial<Record<NutrientKey, Coefficient>> = {};
    for (const nutrient of nutrientKeys) {
      const found = coefficient(row, nutrient, rows);
      if (found) numbers[nutrient] = found;
    }
    sets[row.set] = numbers;
  }
  return sets;
}

function coefficient(row: RemovalRow, nutrient: NutrientKey, rows: readonly RemovalRow[]): Coefficient | undefined {
  const lbPerUnit = row.lb[nutrient];
  if (lbPerUnit === undefined) return undefined;
  const published = rows.flatMap((other) => {
    const lb = other.lb[nutrient];
    return lb === undefined || !canCompare(other, row) ? [] : [(lb * dryShare(row)) / dryShare(other)];
  });
  return {
    nutrient,
    lbPerUnit,
    unit: row.unit,
    moisturePct: row.moisturePct,
    row,
    cited: { mark: markOf(row, nutrient), source: row.source, ...(row.note && { note: row.note }) },
    low: Math.min(...published),
    high: Math.max(...published),
    publishedSets: published.length,
  };
}

/** Numbers compare when they are per the same unit and both or neither say their moisture. */
function canCompare(a: RemovalRow, b: RemovalRow): boolean {
  return a.unit === b.unit && (a.moisturePct === null) === (b.moisturePct === null);
}

function dryShare(row: RemovalRow): number {
  return row.moisturePct === null ? 1 : (100 - row.moisturePct) / 100;
}

function markOf(row: RemovalRow, nutrient: NutrientKey): Mark {
  if (row.fromMemory?.includes(nutrient)) return "M";
  return row.seen?.includes(nutrient) ? "V" : row.mark;
}
