import { allFunctions } from "../../../../functions";
import type { RawArgument } from "../../../../functions/frame/cell";
import type { WorksheetFunction } from "../../../../functions/frame/declaration";
import { explain } from "../../../../functions/frame/explain";
import { namespace } from "../../../../functions/frame/formula-text";
import type { SheetPlan } from "../../../../workbook/plan";
import { defaultChoices, starters } from "../../../../workbook/starters";
import type { makePlan as makePlanLater } from "../../../../workbook/starters/make-plan";
import type { DeepWords } from "./search-index";

type MakePlan = typeof makePlanLater;

export type DeepWordsByName = ReadonlyMap<string, DeepWords>;

/**
 * What stands behind the functions: the steps of their examples, and the headings of the starters' columns that they
 * fill. It takes a moment to work out, so it goes piece by piece; between two pieces the page can do other things.
 */
function* deepWords(functions: readonly WorksheetFunction[], makePlan: MakePlan): Generator<void, DeepWordsByName> {
  const columns = new Map<string, Set<string>>();
  for (const starter of starters) {
    for (const sheet of makePlan(starter, defaultChoices).sheets) gatherColumns(sheet, columns);
    yield;
  }
  const found = new Map<string, DeepWords>();
  for (const fn of functions) {
    found.set(fn.name, { steps: stepsOf(fn), columns: [...(columns.get(fn.name) ?? [])] });
    yield;
  }
  return found;
}

/** A pause in typing before the pieces begin, and the breath between two of them. */
const pauseMs = 600;
const breathMs = 4;

let gathered: Promise<DeepWordsByName> | undefined;

/** Gathered once for the page. */
export function gatheredWords(): Promise<DeepWordsByName> {
  gathered ??= import("../../../../workbook/starters/make-plan").then(({ makePlan }) => gatherPieces(makePlan));
  return gathered;
}

function gatherPieces(makePlan: MakePlan): Promise<DeepWordsByName> {
  return new Promise((done) => {
    const pieces = deepWords(allFunctions, makePlan);
    const next = (): void => {
      const piece = pieces.next();
      if (piece.done) done(piece.value);
      else setTimeout(next, breathMs);
    };
    setTimeout(next, pauseMs);
  });
}

function stepsOf(fn: WorksheetFunction): readonly string[] {
  const explained = explain(fn, fn.example.call as readonly RawArgument[]); // an example holds cells and ranges of cells
  return "working" in explained ? explained.working.map(({ label }) => label) : [];
}

/** Headings of table columns, by the functions that the first row below them calls. */
function gatherColumns(sheet: SheetPlan, columns: Map<string, Set<string>>): void {
  const call = new RegExp(`${namespace}\\.([A-Z0-9]+)\\(`, "g");
  for (const { area } of sheet.tables) {
    const inside = sheet.cells.filter(({ column }) => column >= area.left && column <= area.right);
    const heading = new Map(inside.filter(({ row }) => row === area.top).map((cell) => [cell.column, cell.content]));
    for (const { row, column, content } of inside) {
      const text = heading.get(column);
      if (row !== area.top + 1 || typeof content !== "object" || typeof text !== "string") continue;
      for (const [, name = ""] of content.formula.matchAll(call)) {
        columns.set(name, (columns.get(name) ?? new Set()).add(text));
      }
    }
  }
}
