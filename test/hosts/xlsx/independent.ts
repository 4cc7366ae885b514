import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import path from "node:path";
import { ValueType, Workbook, type Cell } from "exceljs";
import { calculateSample } from "../../../src/build/samples/make-sample";
import { findOffice, Office } from "../../../src/build/samples/office";
import { isCellError } from "../../../src/functions/frame/cell";
import type { CalculatedValue, CalculatedWorkbook } from "../../../src/hosts/calculated-workbook";
import { cellAddress } from "../../../src/hosts/address";
import { isFormula } from "../../../src/hosts/xlsx/cells";
import { formulaTokens, isCall } from "../../../src/hosts/xlsx/formulas/formula-tokens";
import { writeXlsx } from "../../../src/hosts/xlsx/write-xlsx";
import type { WorkbookPlan } from "../../../src/workbook/plan";
import { starters } from "../../../src/workbook/starters";
import { frozenPlan } from "./frozen-plan";

/**
 * Has another spreadsheet program work out the native formulas of every sample and compares. Run by hand:
 * npx tsx test/hosts/xlsx/independent.ts
 *
 * Cells of ours, and functions that LibreOffice does not know, keep their value. Everything else is written with a
 * wrong value beside its formula, so that agreement can only come from calculating it.
 */
const unknownToOffice = new Set(
  `LET LAMBDA XLOOKUP XMATCH FILTER SORT SORTBY UNIQUE SEQUENCE RANDARRAY VSTACK HSTACK TAKE DROP CHOOSECOLS CHOOSEROWS
  TOCOL TOROW EXPAND WRAPROWS WRAPCOLS MAP BYROW BYCOL SCAN REDUCE MAKEARRAY TEXTSPLIT TEXTBEFORE TEXTAFTER`.split(
    /\s+/,
  ),
);
/** Quantiles of the t distribution differ by 6e-10 between engines. */
const relativeTolerance = 1e-8;

async function main(): Promise<number> {
  const program = findOffice();
  if (!program) throw new Error("LibreOffice is not installed.");
  let differences = 0;
  for (const starter of starters) {
    const { plan, values } = await calculateSample(starter);
    const native = frozenPlan(plan, values, staysAsItIs);
    const found = await recalculated(program, starter.key, await writeXlsx(native, spoiled(native, values)));
    const { compared, wrong } = compare(native, values, found);
    console.log(`${starter.title}: ${compared} native formulas worked out again, ${wrong.length} differ`);
    wrong.forEach((line) => console.log(`  ${line}`));
    differences += wrong.length;
  }
  return differences;
}

function staysAsItIs(formula: string): boolean {
  const tokens = formulaTokens(formula.slice(1));
  return tokens.some(
    ({ text }, index) => isCall(tokens, index) && (/^LOAM\./i.test(text) || unknownToOffice.has(text.toUpperCase())),
  );
}

function spoiled(plan: WorkbookPlan, values: CalculatedWorkbook): CalculatedWorkbook {
  const formulas = new Set(
    plan.sheets.flatMap(({ name, cells }) =>
      cells.filter(({ content }) => isFormula(content)).map(({ row, column }) => `${name}!${row},${column}`),
    ),
  );
  return {
    valueAt(sheet, row, column) {
      const value = values.valueAt(sheet, row, column);
      return formulas.has(`${sheet}!${row},${column}`) ? wrongValue(value) : value;
    },
  };
}

function wrongValue(value: CalculatedValue | undefined): CalculatedValue {
  if (typeof value === "number") return value + 12345;
  if (typeof value === "boolean") return !value;
  return typeof value === "string" ? `${value}, not calculated` : 54321;
}

async function recalculated(program: string, name: string, bytes: Uint8Array): Promise<Workbook> {
  const office = new Office(program, { recalculates: true });
  try {
    const file = path.join(office.folder, `${name}.xlsx`);
    const out = path.join(office.folder, "out");
    mkdirSync(out);
    writeFileSync(file, bytes);
    const book = new Workbook();
    const saved = readFileSync(office.convert(file, "xlsx", out));
    await book.xlsx.load(saved as unknown as ArrayBuffer); // exceljs declares an older Buffer
    return book;
  } finally {
    office.close();
  }
}

function compare(
  plan: WorkbookPlan,
  values: CalculatedWorkbook,
  found: Workbook,
): { compared: number; wrong: string[] } {
  const wrong: string[] = [];
  let compared = 0;
  for (const { name, cells } of plan.sheets) {
    for (const { row, column, content } of cells) {
      if (!isFormula(content)) continue;
      compared += 1;
      const ours = plain(values.valueAt(name, row, column));
      const theirs = plain(resultOf(found.getWorksheet(name)?.getCell(row + 1, column + 1)));
      if (same(ours, theirs)) continue;
      const [here, there] = [JSON.stringify(ours), JSON.stringify(theirs)];
      wrong.push(`${name}!${cellAddress({ row, column })} ${here}, LibreOffice ${there}: ${content.formula}`);
    }
  }
  return { compared, wrong };
}

/** The value of a formula cell leaves out a result of 0; its result does not. */
function resultOf(cell: Cell | undefined): unknown {
  return cell?.type === ValueType.Formula ? cell.result : cell?.value;
}

function plain(value: unknown): number | string | boolean {
  if (isCellError(value)) return value.code;
  if (typeof value === "object" && value !== null && "error" in value) return String(value.error);
  if (typeof value === "number" || typeof value === "boolean") return value;
  return typeof value === "string" ? value : "";
}

function same(ours: number | string | boolean, theirs: number | string | boolean): boolean {
  if (typeof ours !== "number" || typeof theirs !== "number") return ours === theirs;
  return Math.abs(ours - theirs) <= relativeTolerance * Math.max(1, Math.abs(ours));
}

main().then(
  (differences) => process.exit(differences === 0 ? 0 : 1),
  (problem: unknown) => {
    console.error(problem);
    process.exit(1);
  },
);
