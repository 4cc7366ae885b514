import { allFunctions } from "../../src/functions";
import { calculate } from "../../src/hosts/engine";
import type { CellPlan, SheetPlan, WorkbookPlan } from "../../src/workbook/plan";
import type { Figure } from "./figure";

const rows = 1000;
const crops = ["corn", "soybean", "wheat"] as const;

/** The same removal column by our function and by native look-ups, in the same engine and the same run. */
export async function engineSpeeds(): Promise<Figure[]> {
  const ours = columnOf((row) => `=LOAM.REMOVAL(A${row},B${row},"K2O")`);
  const native = columnOf((row) => `=B${row}*INDEX($E$1:$E$3,MATCH(A${row},$D$1:$D$3,0))`);
  const times = { ours: [] as number[], native: [] as number[] };
  await calculate(ours, allFunctions);
  for (let run = 0; run < 5; run++) {
    times.native.push(await timed(native));
    times.ours.push(await timed(ours));
  }
  return [
    {
      what: `removal column of ${rows} cells, calculated`,
      value: middle(times.ours),
      unit: "ms",
      against: { what: "native look-ups", value: middle(times.native) },
    },
  ];
}

async function timed(plan: WorkbookPlan): Promise<number> {
  const begun = performance.now();
  await calculate(plan, allFunctions);
  return performance.now() - begun;
}

function middle(values: readonly number[]): number {
  return [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? Number.NaN;
}

function columnOf(formula: (row: number) => string): WorkbookPlan {
  const coefficients = [0.2, 1.15, 0.25];
  const cells: CellPlan[] = crops.flatMap((crop, row): CellPlan[] => [
    { row, column: 3, content: crop, style: "body" },
    { row, column: 4, content: coefficients[row] ?? 0, style: "body" },
  ]);
  for (let row = 0; row < rows; row++) {
    cells.push(
      { row, column: 0, content: crops[row % crops.length] ?? "corn", style: "body" },
      { row, column: 1, content: 50 + (row % 100), style: "body" },
      { row, column: 2, content: { formula: formula(row + 1) }, style: "body" },
    );
  }
  return { starter: "bench", title: "Bench", sheets: [{ ...emptySheet, cells }], names: [] };
}

export const emptySheet: SheetPlan = {
  name: "Removal",
  columnWidths: [],
  rowHeights: {},
  cells: [],
  tables: [],
  validations: [],
  rules: [],
  charts: [],
  notes: [],
  print: { orientation: "portrait", fit: { wide: 1, tall: 0 }, footer: "" },
};
