import fc from "fast-check";
import { allFunctions } from "../../../src/functions";
import { checkPlan } from "../../../src/workbook/check/check-plan";
import { allFarmParts, cropChoice, defaultChoices, isWanted, starters } from "../../../src/workbook/starters";
import { makePlan } from "../../../src/workbook/starters/make-plan";
import type { Area, CellPlan, SheetPlan, WorkbookPlan } from "../../../src/workbook/plan";
import { anyChoices, anyStarter } from "./any-choices";

/** Every starter with 1, 10 and 60 fields, all crops and one crop, the invented farm and empty rows. */
const sized = starters.flatMap((starter) =>
  [1, 10, 60].flatMap((numberOfFields) =>
    [defaultChoices.crops, [cropChoice("soybean")]].flatMap((crops) =>
      [true, false].map((withDemo) => makePlan(starter, { ...defaultChoices, numberOfFields, crops, withDemo })),
    ),
  ),
);
/** No part of the farm plan, and each of them alone. */
const parted = [[], ...allFarmParts.map((part) => [part])].flatMap((parts) =>
  starters.slice(0, 1).map((starter) => makePlan(starter, { ...defaultChoices, parts })),
);
const plans: readonly WorkbookPlan[] = [...sized, ...parted];
const holds = (law: (plan: WorkbookPlan) => void) => plans.forEach(law);

const contains = ({ top, left, bottom, right }: Area, { row, column }: { row: number; column: number }) =>
  row >= top && row <= bottom && column >= left && column <= right;

describe("every plan of every starter", () => {
  it("holds together: no cell twice, formulas parse, everything they name exists", () => {
    holds((plan) => expect(checkPlan(plan, allFunctions)).toEqual([]));
  });

  it("makes the sheets its preview promises, in that order", () => {
    fc.assert(
      fc.property(anyStarter, anyChoices, (starter, choices) => {
        expect(makePlan(starter, choices).sheets.map(({ name }) => name)).toEqual(
          starter.sheets.filter((sheet) => isWanted(sheet, choices.parts)).map(({ name }) => name),
        );
      }),
      { numRuns: 15 },
    );
  });

  it("starts each sheet with a title and the question it answers", () => {
    holds((plan) => {
      for (const { cells } of plan.sheets) {
        expect(cells.find(({ row, column }) => row === 0 && column === 0)?.style).toBe("title");
        expect(cells.find(({ row, column }) => row === 1 && column === 0)?.style).toBe("answers");
      }
    });
  });

  it("says of every cell to fill in what belongs there: by its list or range, a note, a unit or a word beside it", () => {
    holds((plan) => {
      for (const sheet of plan.sheets) {
        for (const cell of sheet.cells.filter(isInput))
          expect([sheet.name, cell, isExplained(cell, sheet)]).toEqual([sheet.name, cell, true]);
      }
    });
  });

  it("steps around any names a workbook already has", () => {
    fc.assert(
      fc.property(anyStarter, anyChoices, fc.integer({ min: 1, max: 3 }), (starter, choices, times) => {
        const taken = { sheets: new Set<string>(), names: new Set<string>(), tables: new Set<string>() };
        for (let time = 0; time < times; time++) {
          const plan = makePlan(starter, choices, {
            sheets: [...taken.sheets],
            names: [...taken.names],
            tables: [...taken.tables],
          });
          expect(checkPlan(plan, allFunctions)).toEqual([]);
          for (const sheet of plan.sheets) {
            addNew(taken.sheets, sheet.name);
            for (const { name } of sheet.tables) addNew(taken.tables, name);
          }
          for (const { name } of plan.names) addNew(taken.names, name);
        }
      }),
      { numRuns: 15 },
    );
  });

  it("is the same plan every time for the same choices", () => {
    fc.assert(
      fc.property(anyStarter, anyChoices, (starter, choices) => {
        expect(makePlan(starter, choices)).toEqual(makePlan(starter, choices));
      }),
      { numRuns: 10 },
    );
  });

  it("prints one page wide at a size that can be read", () => {
    holds((plan) => {
      for (const { name, columnWidths, print } of plan.sheets) {
        expect(print.fit.wide).toBe(1);
        // A character of the default font takes about 0.073 in; letter paper leaves 10 in across, 7.5 in upright.
        const inches = 0.073 * columnWidths.reduce((sum, width) => sum + width, 0);
        const share = (print.orientation === "landscape" ? 10 : 7.5) / inches;
        expect([name, share >= 0.5]).toEqual([name, true]);
      }
    });
  });

  it("cuts no words: labels fit their cells, sentences fit the sheet and have free cells beside them", () => {
    holds((plan) => {
      for (const sheet of plan.sheets) {
        const cut = sheet.cells.filter((cell) => typeof cell.content === "string" && !fits(cell, cell.content, sheet));
        expect([sheet.name, cut]).toEqual([sheet.name, []]);
      }
    });
  });

  it("calls only native functions that older spreadsheets know", () => {
    const known = new Set(
      "AND AVERAGEIF COUNT COUNTIF COUNTIFS IF IFERROR INDEX ISNUMBER LEFT LEN MATCH MAX MID MIN N NA OR ROW SEARCH SUM SUMIF SUMIFS SUMPRODUCT TEXT UPPER VLOOKUP ABS".split(
        " ",
      ),
    );
    holds((plan) => {
      for (const { cells } of plan.sheets) {
        for (const { content } of cells) {
          if (typeof content !== "object") continue;
          const unquoted = content.formula.replace(/"[^"]*"/g, '""').replace(/\[[^\]]*\]/g, "");
          for (const [, name] of unquoted.matchAll(/([A-Z][A-Z0-9.]*)\(/g)) {
            expect([content.formula, known.has(name ?? "") || name?.startsWith("LOAM.")]).toEqual([
              content.formula,
              true,
            ]);
          }
        }
      }
    });
  });

  it("rests every conditional format on a number or a word, never on colour alone", () => {
    holds((plan) => {
      for (const { rules, cells } of plan.sheets) {
        for (const { area } of rules) {
          const styles = new Set(cells.filter((cell) => contains(area, cell)).map(({ style }) => style));
          for (const style of styles) expect(["computed", "computedText", "total", "input"]).toContain(style);
        }
      }
    });
  });
});

function addNew(taken: Set<string>, name: string): void {
  const folded = name.toLowerCase();
  expect(taken.has(folded)).toBe(false);
  taken.add(folded);
}

function isInput({ style }: CellPlan): boolean {
  return style === "input" || style === "inputText";
}

function isExplained(cell: CellPlan, { cells, validations, notes, tables }: SheetPlan): boolean {
  const table = tables.find(({ area }) => contains(area, cell));
  const header = table?.area.top;
  return (
    validations.some(({ area }) => contains(area, cell)) ||
    notes.some(({ row, column }) => column === cell.column && (row === header || row === cell.row)) ||
    cells.some(
      ({ row, column, style, content }) =>
        row === cell.row && column > cell.column && content !== undefined && ["unit", "says", "body"].includes(style),
    )
  );
}

/** Letters are a little narrower than the digits that widths are counted in; a title is set larger. */
function fits(cell: CellPlan, words: string, { cells, columnWidths }: SheetPlan): boolean {
  const size = { title: 18 / 11, section: 13 / 11 }[cell.style as string] ?? 1;
  const needed = words.length * size * 0.92;
  if (cell.style === "head" || cell.style === "wrap") return true;
  const isFree = (column: number) =>
    cells.every((other) => other.row !== cell.row || other.column !== column || other.content === undefined);
  let room = columnWidths[cell.column] ?? 0;
  for (let column = cell.column + 1; column < columnWidths.length && isFree(column); column++) {
    room += columnWidths[column] ?? 0;
  }
  return needed <= room;
}
