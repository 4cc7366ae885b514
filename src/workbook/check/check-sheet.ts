import { areaFrom } from "../area";
import type { Area, SheetPlan } from "../plan";
import { repeated } from "./check-names";

/** One sheet: no cell twice, tables with clean headers apart from each other, and nothing outside the sheet. */
export function checkSheet(sheet: SheetPlan): string[] {
  const used = usedArea(sheet);
  const outside = [
    ...sheet.tables.map(({ area }) => area),
    ...sheet.validations.map(({ area }) => area),
    ...sheet.rules.map(({ area }) => area),
    ...sheet.notes.map((note) => areaFrom(note)),
  ].filter((area) => !isInside(area, used));
  return [
    ...repeated(sheet.cells.map(({ row, column }) => `row ${row + 1}, column ${column + 1}`)).map(
      (cell) => `${sheet.name}: ${cell} is written twice.`,
    ),
    ...outside.map((area) => `${sheet.name}: something stands outside the sheet at ${JSON.stringify(area)}.`),
    ...checkTables(sheet),
    ...checkLists(sheet),
    ...checkWidths(sheet, used),
  ];
}

function checkTables({ name, tables, cells }: SheetPlan): string[] {
  const problems = tables.flatMap((table) => {
    const texts = headersIn(cells, table.area);
    return [
      ...(texts.length === table.area.right - table.area.left + 1
        ? []
        : [`${name}: a header of ${table.name} is missing or not text.`]),
      ...repeated(texts).map((header) => `${name}: ${table.name} has two columns "${header}".`),
      ...texts.flatMap((header) => (isHeader(header) ? [] : [`${name}: "${header}" cannot head a table column.`])),
    ];
  });
  const overlaps = tables.flatMap((table, index) =>
    tables.slice(index + 1).filter((other) => overlap(table.area, other.area)),
  );
  return [...problems, ...overlaps.map((other) => `${name}: ${other.name} lies on another table.`)];
}

/** The texts in the header row of a table. */
export function headersIn(cells: SheetPlan["cells"], { top, left, right }: Area): string[] {
  return cells
    .filter(({ row, column }) => row === top && column >= left && column <= right)
    .flatMap(({ content }) => (typeof content === "string" && content !== "" ? [content] : []));
}

/** Signs that need no escape in a table reference and that every engine reads there. */
function isHeader(header: string): boolean {
  return /^[A-Za-z0-9 /$%&.-]+$/.test(header) && header.trim() === header;
}

/** A list written into a cell may have 255 signs, commas between its words included. */
function checkLists({ name, validations }: SheetPlan): string[] {
  return validations.flatMap((validation) => {
    if (validation.kind !== "list" || typeof validation.words === "string") return [];
    const { words } = validation;
    return words.join(",").length <= 255 && words.every((word) => !word.includes(","))
      ? []
      : [`${name}: a list is too long or has a comma in a word: ${words.slice(0, 3).join(", ")}…`];
  });
}

function checkWidths({ name, columnWidths }: SheetPlan, used: Area): string[] {
  return columnWidths.length > used.right && columnWidths.every((width) => width > 0 && width <= 255)
    ? []
    : [`${name}: ${columnWidths.length} column widths for ${used.right + 1} columns.`];
}

/** The rectangle from A1 that holds every cell of a sheet. */
export function usedArea({ cells }: SheetPlan): Area {
  return cells.reduce<Area>(
    (area, { row, column }) => ({
      ...area,
      bottom: Math.max(area.bottom, row),
      right: Math.max(area.right, column),
    }),
    { top: 0, left: 0, bottom: 0, right: 0 },
  );
}

export function isInside(area: Area, within: Area): boolean {
  return (
    area.top >= within.top && area.left >= within.left && area.bottom <= within.bottom && area.right <= within.right
  );
}

function overlap(one: Area, other: Area): boolean {
  return one.left <= other.right && other.left <= one.right && one.top <= other.bottom && other.top <= one.bottom;
}
