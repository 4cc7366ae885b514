import { allFunctions } from "../../src/functions";
import { calculate } from "../../src/hosts/engine";
import { readXlsx } from "../../src/hosts/xlsx/read/read-xlsx";
import { writeXlsx } from "../../src/hosts/xlsx/write-xlsx";
import type { CellPlan, WorkbookPlan } from "../../src/workbook/plan";
import { columnLetters } from "../../src/workbook/write/address";
import { planOf } from "../workbook/starters/shown-sheet";
import { emptySheet } from "./engine";
import { farmInPage } from "./farm-in-page";
import { print, type Figure } from "./figure";

/**
 * A consultant's loads, in the headless engine. Run by hand: npx tsx test/bench/load.ts [fields]
 *
 * The same column is worked out by our functions in one spilling formula, by our functions cell by cell, and by native
 * formulas cell by cell, in the same engine and the same run.
 */
const computedColumns = 40;
const crops = ["corn", "soybean", "wheat"] as const;
const nutrients = ["N", "P2O5", "K2O", "S"] as const;
const coefficients = "{0.63,0.35,0.2,0.08;3.25,0.75,1.15,0.18;1.1,0.49,0.25,0.1}";

async function run(fields: number): Promise<void> {
  const spilled = consultantPlan(fields, "spill");
  const [calculated, values] = await timed(() => calculate(spilled, allFunctions));
  const [written, bytes] = await timed(() => writeXlsx(spilled, values));
  const [read] = await timed(() => readXlsx(bytes));
  const few = Math.min(fields, 500);
  const [ours] = await timed(() => calculate(consultantPlan(few, "cells"), allFunctions));
  const [native] = await timed(() => calculate(consultantPlan(few, "native"), allFunctions));
  const what = `${fields} fields × ${computedColumns} computed columns`;
  print(`Load: ${what}`, [
    { what: "calculated, one spilling formula a column", value: calculated, unit: "ms" },
    { what: "written as .xlsx", value: written, unit: "ms" },
    { what: "size of the file", value: bytes.length / 1024, unit: "KB" },
    { what: "read back", value: read, unit: "ms" },
    {
      what: `${few} fields cell by cell, our functions`,
      value: ours,
      unit: "ms",
      against: { what: "native look-ups", value: native },
    },
    { what: "memory of the process", value: process.memoryUsage.rss() / 2 ** 20, unit: "MB" },
  ]);
  print("Load: ledger of 500 fields over 10 years", await ledgers(500, 10));
  print("Load: the farm plan by number of fields, headless", await farmPlans([10, 60, 300]));
  print("Load: the farm plan of 300 fields in the page (of the build in dist)", await farmInPage(300));
  // The engine keeps timers of its own running.
  process.exit(0);
}

async function timed<Result>(work: () => Promise<Result>): Promise<[number, Result]> {
  const begun = performance.now();
  const result = await work();
  return [performance.now() - begun, result];
}

async function farmPlans(sizes: readonly number[]): Promise<Figure[]> {
  const figures: Figure[] = [];
  for (const fields of sizes) {
    const plan = planOf("farm-plan", { numberOfFields: fields });
    const [took] = await timed(() => calculate(plan, allFunctions));
    figures.push({ what: `${fields} fields, made and calculated`, value: took, unit: "ms" });
  }
  return figures;
}

type Kind = "spill" | "cells" | "native";

/** Crop and yield of each field, and removals beside them, at rising yields from column to column. */
function consultantPlan(fields: number, kind: Kind): WorkbookPlan {
  const cells: CellPlan[] = [];
  for (let row = 0; row < fields; row++) {
    cells.push(
      { row, column: 0, content: crops[row % crops.length] ?? "corn", style: "body" },
      { row, column: 1, content: 50 + (row % 50), style: "body" },
    );
  }
  for (let index = 0; index < computedColumns; index++) cells.push(...columnCells(kind, fields, index));
  return { starter: "load", title: "Load", sheets: [{ ...emptySheet, cells }], names: [] };
}

function columnCells(kind: Kind, fields: number, index: number): CellPlan[] {
  const column = index + 2;
  const place = index % nutrients.length;
  const nutrient = `"${nutrients[place]}"`;
  const add = Math.floor(index / nutrients.length);
  if (kind === "spill") {
    const formula = `=LOAM.REMOVAL(A1:A${fields},B1:B${fields}+${add},${nutrient})`;
    return [{ row: 0, column, content: { formula, spill: { rows: fields, columns: 1 } }, style: "computed" }];
  }
  return Array.from({ length: fields }, (_, row): CellPlan => {
    const [crop, amount] = [`$${columnLetters(0)}${row + 1}`, `$${columnLetters(1)}${row + 1}+${add}`];
    const native = `=(${amount})*INDEX(${coefficients},MATCH(${crop},{"corn";"soybean";"wheat"},0),${place + 1})`;
    const formula = kind === "cells" ? `=LOAM.REMOVAL(${crop},${amount},${nutrient})` : native;
    return { row, column, content: { formula }, style: "computed" };
  });
}

/** Potash tests drawn down year by year: the test of last year, less what a year's crop takes. */
async function ledgers(fields: number, years: number): Promise<Figure[]> {
  const [ours] = await timed(() => calculate(ledgerPlan(fields, years, "cells"), allFunctions));
  const [native] = await timed(() => calculate(ledgerPlan(fields, years, "native"), allFunctions));
  return [{ what: "calculated", value: ours, unit: "ms", against: { what: "native formulas", value: native } }];
}

function ledgerPlan(fields: number, years: number, kind: Kind): WorkbookPlan {
  const cells: CellPlan[] = [];
  for (let row = 0; row < fields; row++) {
    const [crop, grown] = [`$A${row + 1}`, `$B${row + 1}`];
    const native = `${grown}*INDEX({0.2;1.15;0.25},MATCH(${crop},{"corn";"soybean";"wheat"},0))`;
    cells.push(
      { row, column: 0, content: crops[row % crops.length] ?? "corn", style: "body" },
      { row, column: 1, content: 50 + (row % 50), style: "body" },
      { row, column: 2, content: 120 + (row % 80), style: "body" },
    );
    for (let year = 1; year <= years; year++) {
      const before = `${columnLetters(year + 1)}${row + 1}`;
      const drift = `=LOAM.TESTDRIFT(${before},-LOAM.REMOVAL(${crop},${grown},"K2O"),"K2O")`;
      const formula = kind === "native" ? `=MAX(40,${before}-${native}/8)` : drift;
      cells.push({ row, column: year + 2, content: { formula }, style: "computed" });
    }
  }
  return { starter: "load", title: "Ledger", sheets: [{ ...emptySheet, cells }], names: [] };
}

void run(Number(process.argv[2] ?? 5000));
