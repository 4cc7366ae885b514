import type { Block } from "../model/block";
import type { WorkbookModel } from "../model/workbook-model";
import type { TakenNames } from "../taken-names";

/** What everything of a model is called in this workbook, by its key in the model. */
export interface FinalNames {
  readonly sheets: ReadonlyMap<string, string>;
  readonly tables: ReadonlyMap<string, string>;
  readonly names: ReadonlyMap<string, string>;
}

export const longestSheetName = 31;

/**
 * Gives every sheet, table and name its final form. When any wished name is taken, all get the same number, so that
 * "Fields 2", Fields_2 and interest_rate_2 are seen to belong together. Tables and defined names share one space.
 */
export function chooseNames(model: WorkbookModel, taken: TakenNames): FinalNames {
  const wished = {
    sheets: model.sheets.map(({ key, name }) => [key, name] as const),
    tables: model.sheets.flatMap(({ blocks }) => blocks.flatMap(tableOf)),
    names: model.sheets.flatMap(({ blocks }) => blocks.flatMap(namesOf)),
  };
  const takenSheets = folded(taken.sheets);
  const takenNames = folded([...taken.names, ...taken.tables]);
  let round = 1;
  while (
    wished.sheets.some(([, name]) => takenSheets.has(fold(sheetInRound(name, round)))) ||
    [...wished.tables, ...wished.names].some((name) => takenNames.has(fold(nameInRound(name, round))))
  ) {
    round += 1;
  }
  return {
    sheets: new Map(wished.sheets.map(([key, name]) => [key, sheetInRound(name, round)])),
    tables: new Map(wished.tables.map((name) => [name, nameInRound(name, round)])),
    names: new Map(wished.names.map((name) => [name, nameInRound(name, round)])),
  };
}

function sheetInRound(name: string, round: number): string {
  if (round === 1) return name;
  const suffix = ` ${round}`;
  return name.slice(0, longestSheetName - suffix.length).trimEnd() + suffix;
}

function nameInRound(name: string, round: number): string {
  return round === 1 ? name : `${name}_${round}`;
}

function tableOf(block: Block): string[] {
  return block.kind === "table" ? [block.table] : [];
}

function namesOf(block: Block): string[] {
  if (block.kind === "entries") return block.entries.flatMap(({ name }) => (name === undefined ? [] : [name]));
  if (block.kind !== "rows") return [];
  return block.rows.flat().flatMap((cell) => (cell?.named === undefined ? [] : [cell.named.name]));
}

function folded(names: readonly string[]): Set<string> {
  return new Set(names.map(fold));
}

function fold(name: string): string {
  return name.toLowerCase();
}
