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
 * "Fields 2", Fields2 and interest_rate_2 are seen to belong together. The sheets of a group are told apart by the name
 * of the group, and count for themselves. Tables and defined names share one space.
 */
export function chooseNames(model: WorkbookModel, taken: TakenNames): FinalNames {
  const sheets = model.sheets.map(({ key, name }) => [key, name] as const);
  const tables = model.sheets.flatMap(({ blocks }) => blocks.flatMap(tableOf));
  const names = model.sheets.flatMap(({ blocks }) => blocks.flatMap(namesOf));
  const takenSheets = folded(taken.sheets);
  const takenNames = folded([...taken.names, ...taken.tables]);
  const sheetIn = (name: string, round: number) => sheetInRound(name, round, model.group);
  const sheetsFit = (round: number) => sheets.every(([, name]) => !takenSheets.has(fold(sheetIn(name, round))));
  const namesFit = (round: number) =>
    tables.every((name) => !takenNames.has(fold(tableInRound(name, round)))) &&
    names.every((name) => !takenNames.has(fold(nameInRound(name, round))));
  const both = (round: number) => sheetsFit(round) && namesFit(round);
  const ofSheets = firstRound(model.group === undefined ? both : sheetsFit);
  const ofNames = model.group === undefined ? ofSheets : firstRound(namesFit);
  return {
    sheets: new Map(sheets.map(([key, name]) => [key, sheetIn(name, ofSheets)])),
    tables: new Map(tables.map((name) => [name, tableInRound(name, ofNames)])),
    names: new Map(names.map((name) => [name, nameInRound(name, ofNames)])),
  };
}

function firstRound(fits: (round: number) => boolean): number {
  let round = 1;
  while (!fits(round)) round += 1;
  return round;
}

/** "Fields 2" or, in a group, "Mill Road Fields 2"; what is too long is cut from the group, else from the name. */
function sheetInRound(name: string, round: number, group = ""): string {
  const suffix = round === 1 ? "" : ` ${round}`;
  const room = longestSheetName - suffix.length;
  const before = asSheetName(asSheetName(group).slice(0, Math.max(0, room - name.length - 1)));
  return `${before} ${name}`.trimStart().slice(0, room).trimEnd() + suffix;
}

/** Without what no sheet may be called: signs that references are made of, apostrophes at the ends, half a sign. */
function asSheetName(text: string): string {
  return text.replace(/[[\]:*?/\\\s\p{C}]+/gu, " ").replace(/^['\s]+|['\s]+$/g, "");
}

/** Without an underscore: not every engine reads one in the name of a table. */
function tableInRound(name: string, round: number): string {
  return round === 1 ? name : `${name}${round}`;
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
