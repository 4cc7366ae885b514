import { longestSheetName } from "../names/choose-names";
import type { WorkbookPlan } from "../plan";

/** Sheet, table and defined names: form and uniqueness, without regard to case. */
export function checkNames({ sheets, names }: WorkbookPlan): string[] {
  const tables = sheets.flatMap((sheet) => sheet.tables.map(({ name }) => name));
  const defined = names.map(({ name }) => name);
  return [
    ...repeated(sheets.map(({ name }) => name)).map((name) => `Two sheets are called "${name}".`),
    ...sheets.flatMap(({ name }) => (isSheetName(name) ? [] : [`"${name}" cannot name a sheet.`])),
    ...repeated([...tables, ...defined]).map((name) => `"${name}" names two things.`),
    ...[...tables, ...defined].flatMap((name) => (isDefinedName(name) ? [] : [`"${name}" cannot be a name.`])),
    ...names.flatMap(({ name, sheet }) =>
      sheets.some((each) => each.name === sheet) ? [] : [`${name} points to a sheet that is not there: ${sheet}.`],
    ),
  ];
}

function isSheetName(name: string): boolean {
  return name.length > 0 && name.length <= longestSheetName && !/[:\\/?*[\]]|^'|'$/.test(name);
}

/** Letters, digits and underscores, and nothing that reads as a cell (A1, R1C1). */
function isDefinedName(name: string): boolean {
  return /^[A-Za-z_][A-Za-z0-9_]*$/.test(name) && !/^([A-Za-z]{1,3}\d+|[Rr]\d*[Cc]\d*|[RrCc])$/.test(name);
}

/** Values that occur more than once, each listed once. */
export function repeated(values: readonly string[]): string[] {
  const seen = new Set<string>();
  const twice = new Set<string>();
  for (const value of values.map((each) => each.toLowerCase())) {
    if (seen.has(value)) twice.add(value);
    seen.add(value);
  }
  return [...twice];
}
