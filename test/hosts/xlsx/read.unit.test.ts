import { calculateSample } from "../../../src/build/samples/make-sample";
import { readXlsx } from "../../../src/hosts/xlsx/read/read-xlsx";
import { typedFormula } from "../../../src/hosts/xlsx/formulas/typed-formula";
import { storedFormula } from "../../../src/hosts/xlsx/formulas/stored-formula";
import { writeXlsx } from "../../../src/hosts/xlsx/write-xlsx";
import type { CellPlan, SheetPlan, WorkbookPlan } from "../../../src/workbook/plan";
import { starters } from "../../../src/workbook/starters";
import { cell, plan, sheet } from "../plan-parts";
import { smallPlan, smallValues } from "./small-plan";

const nothing = { valueAt: () => undefined };

/** Cells without content under a spill, and looks that a file cannot tell apart, do not come back as they were. */
function bare({ cells, columnWidths, ...rest }: SheetPlan) {
  return {
    ...rest,
    columnWidths: columnWidths.map((width) => Math.round(width * 20) / 20),
    cells: Object.fromEntries(cells.map((one) => [`${one.row},${one.column}`, told(one)])),
  };
}

function told({ content, style, format, link }: CellPlan) {
  return {
    content: content === "" ? undefined : content,
    style,
    format: format === "General" ? undefined : format,
    link,
  };
}

async function reopened(original: WorkbookPlan): Promise<WorkbookPlan> {
  return (await readXlsx(await writeXlsx(original, nothing))).plan;
}

describe("a workbook read back", () => {
  it.each(starters.map((starter) => [starter.key, starter] as const))(
    "is the %s that was written",
    async (_key, starter) => {
      const { plan: original, values } = await calculateSample(starter);
      const { plan: read, leftOut } = await readXlsx(await writeXlsx(original, values));
      expect(read.title).toBe(original.title);
      expect(read.names.map(({ name, sheet: where, area }) => ({ name, where, area }))).toEqual(
        original.names.map(({ name, sheet: where, area }) => ({ name, where, area })),
      );
      read.sheets.forEach((one, index) => {
        const before = original.sheets[index];
        expect(before && bare(one)).toEqual(before && bare(before));
      });
      expect(leftOut).toEqual([]);
    },
    60_000,
  );

  it("leaves out the values that a formula had spilled, and knows how far it spilled", async () => {
    const { plan: read } = await readXlsx(await writeXlsx(smallPlan, smallValues));
    const cells = read.sheets[1]?.cells ?? [];
    const at = (row: number, column: number) => cells.find((one) => one.row === row && one.column === column);
    expect(at(7, 1)?.content).toEqual({ formula: '=LOAM.REMOVALTABLE("corn",200)', spill: { rows: 2, columns: 2 } });
    expect(at(8, 2)?.content).toBeUndefined();
  });

  it("knows which bars lie on one line", async () => {
    const { sheets } = await reopened(smallPlan);
    expect(sheets.map(({ charts }) => charts.map(({ kind, onOneLine }) => [kind, onOneLine === true]))).toEqual([
      [
        ["column", false],
        ["scatter", false],
      ],
      [
        ["line", false],
        ["bar", true],
      ],
    ]);
  });

  it("keeps text that looks like a formula text", async () => {
    const read = await reopened(plan([sheet("Mine", [cell(0, 0, "=1+1"), cell(1, 0, "- old fence")])]));
    expect(read.sheets[0]?.cells.map(({ content }) => content)).toEqual(["=1+1", "- old fence"]);
  });
});

describe("typedFormula", () => {
  it.each([
    '=LOAM.REMOVAL(Fields[[#This Row],[Crop]],A1,"_xldudf_LOAM_X(")',
    "=XLOOKUP(A1,B1:B9,C1:C9)+SUM(A1:A2)",
    "=LET(x,A1,x*2)",
    "=FILTER('Field list'!A1:A9,B1:B9>0)",
  ])("gives back %s", (typed) => {
    expect(typedFormula(storedFormula(typed))).toBe(typed);
  });
});
