import { isMeantForChart } from "../../../src/build/samples/problems";
import { allFunctions } from "../../../src/functions";
import { isCellError } from "../../../src/functions/frame/cell";
import { calculate } from "../../../src/hosts/engine";
import { defaultChoices, starters } from "../../../src/workbook/starters";
import { makePlan } from "../../../src/workbook/starters/make-plan";

jest.setTimeout(60_000);

it.each(starters.map(({ key }, index) => [key, index] as const))(
  "a second %s in one workbook shows what the first shows, under names with a number",
  async (_key, index) => {
    const starter = starters[index];
    if (!starter) throw new Error("no starter");
    const first = makePlan(starter, defaultChoices);
    const tables = first.sheets.flatMap((sheet) => sheet.tables.map(({ name }) => name));
    const taken = {
      sheets: first.sheets.map(({ name }) => name),
      names: first.names.map(({ name }) => name),
      tables,
    };
    const second = makePlan(starter, defaultChoices, taken);
    const [one, other] = [await calculate(first, allFunctions), await calculate(second, allFunctions)];
    const differing = first.sheets.flatMap((sheet, at) =>
      sheet.cells.filter((cell) => {
        const { row, column } = cell;
        const [a, b] = [
          one.valueAt(sheet.name, row, column),
          other.valueAt(second.sheets[at]?.name ?? "", row, column),
        ];
        // Sentences that name a sheet name the numbered one.
        if (isCellError(a) && isCellError(b) && isMeantForChart(cell)) return false;
        return isCellError(b) || (typeof a === "number" && a !== b);
      }),
    );
    expect(differing).toEqual([]);
  },
);
