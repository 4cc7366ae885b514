import { publishedAnalysis } from "../../core/materials/published-analysis";
import { materialLimits } from "../../core/materials/material-limits";
import { refuse, refuseArgument, waitFor } from "../../core/fault";
import type { NutrientKey } from "../../reference/nutrients";
import type { Cited } from "../../reference/table";
import { percent, refuseWord, type ManyArgument, type Matrix } from "../frame";
import { nutrientWords } from "../words";
import { isEmpty, isWord, labelledCells, type LabelledCell } from "./labelled-cells";
import { materialWords } from "./material-words";
import { nutrientOf, usualOrder } from "./mix-needs";

/** One row of analyses. */
export interface AnalysedMaterial {
  readonly name: string;
  readonly analysisPct: readonly number[];
  /** Nothing stands in the row but perhaps a name. */
  readonly isBlank: boolean;
  readonly isNamed: boolean;
  readonly cited: Cited | null;
}

/** Analyses as the sheet gives them. */
export interface MixAnalyses {
  /** Nutrient of each column; null: not headed. */
  readonly headings: readonly NutrientKey[] | null;
  readonly materials: readonly AnalysedMaterial[];
}

/** A table of analyses: a row per material, a column per nutrient, names beside and headings above if wanted. */
export function mixAnalyses(): ManyArgument<MixAnalyses> {
  const cells = labelledCells(percent(materialLimits.analysisInTable, { says: "analysis", smallIsUsual: true }), {
    says: "a row per material and a column per nutrient; a first row of nutrient names and a first column of material names may stand with them. A column of names alone, such as urea, DAP, potash, takes the published analyses",
  });
  return { ...cells, readMany: (raw, argument) => readAnalyses(cells.readMany(raw, argument), argument) };
}

function readAnalyses(cells: Matrix<LabelledCell>, argument: string): MixAnalyses {
  if (cells.every((row) => row.every(isEmpty))) waitFor(argument);
  if (isNamesOnly(cells)) return publishedAnalyses(cells.flat(), argument);
  const isHeaded = hasHeading(cells);
  const body = isHeaded ? cells.slice(1) : cells;
  const corner = cells[0]?.[0];
  const isCornerNutrient = isWord(corner) && nutrientWords.find(corner) !== undefined;
  const hasNames = body.some(([first]) => isWord(first)) || (isHeaded && !isCornerNutrient);
  const from = hasNames ? 1 : 0;
  const headings = isHeaded ? (cells[0] ?? []).slice(from).map((cell) => nutrientOf(cell, argument)) : null;
  refuseTwice(headings, argument);
  const materials = body.map((row, index) => materialOf(row, from, index, argument));
  refuseShares(materials, argument);
  return { headings, materials };
}

/** Words and blanks in a single line that names materials, not nutrients. */
function isNamesOnly(cells: Matrix<LabelledCell>): boolean {
  const all = cells.flat();
  return (cells.length === 1 || cells[0]?.length === 1) && all.every((cell) => isEmpty(cell) || isWord(cell));
}

function hasHeading(cells: Matrix<LabelledCell>): boolean {
  const [first = []] = cells;
  return first.length === 1 ? isWord(first[0]) : first.slice(1).some(isWord);
}

function materialOf(row: readonly LabelledCell[], from: 0 | 1, index: number, argument: string): AnalysedMaterial {
  const numbers = row.slice(from);
  const name = from === 1 && !isEmpty(row[0]) ? String(row[0]) : null;
  return {
    name: name ?? `Material ${index + 1}`,
    analysisPct: numbers.map((cell) => pctOf(cell, argument)),
    isBlank: numbers.every(isEmpty),
    isNamed: name !== null,
    cited: null,
  };
}

function pctOf(cell: LabelledCell, argument: string): number {
  if (isWord(cell)) refuse({ kind: "notANumber", argument, received: cell, unit: "%" });
  return typeof cell === "number" ? cell : 0;
}

function publishedAnalyses(names: readonly LabelledCell[], argument: string): MixAnalyses {
  return {
    headings: usualOrder,
    materials: names.map((cell, index) => {
      const name = isWord(cell) ? cell : `Material ${index + 1}`;
      const none = { name, analysisPct: usualOrder.map(() => 0), isBlank: true, isNamed: false, cited: null };
      if (!isWord(cell)) return none;
      const row = publishedAnalysis(materialKeyOf(cell, argument), argument);
      const analysisPct = usualOrder.map((nutrient) => row.pct[nutrient] ?? 0);
      return { name, analysisPct, isBlank: false, isNamed: true, cited: row };
    }),
  };
}

function materialKeyOf(received: string, argument: string) {
  return materialWords.find(received) ?? refuseWord(materialWords, received, argument);
}

function refuseTwice(headings: readonly NutrientKey[] | null, argument: string): void {
  const twice = headings?.find((name, index) => headings.indexOf(name) !== index);
  if (twice) refuseArgument(argument, `${twice} heads two columns.`);
}

/** Shares typed for percentages: a list where nothing reaches 1 % is a slip, a single small number is not. */
function refuseShares(materials: readonly AnalysedMaterial[], argument: string): void {
  const greatest = materials.flatMap(({ analysisPct }) => analysisPct).reduce((most, pct) => Math.max(most, pct), 0);
  if (greatest === 0 || greatest >= 1) return;
  refuse({ kind: "percentSlip", argument, received: greatest, meant: Number((greatest * 100).toPrecision(12)) });
}
