import type { CellPlan } from "../../../src/workbook/plan";
import { choiceLimits, defaultChoices, starters } from "../../../src/workbook/starters";
import { makePlan } from "../../../src/workbook/starters/make-plan";
import { excelInTest } from "./excel-in-test";
import { MemoryWorkbook } from "./memory/memory-workbook";

const excel = excelInTest(11);

const sizes = [
  ["with the example farm", defaultChoices],
  [
    "with most fields and nothing filled in",
    { ...defaultChoices, numberOfFields: choiceLimits.fields.max, withDemo: false },
  ],
] as const;

const cases = starters.flatMap((starter) =>
  sizes.map(([size, choices]) => [starter.title, size, starter, choices] as const),
);

const contentOf = ({ content }: CellPlan) => (typeof content === "object" ? content.formula : content);

describe.each(cases)("%s %s", (_title, _size, starter, choices) => {
  const plan = makePlan(starter, choices);
  const workbook = new MemoryWorkbook();
  const before = workbook.picture();

  it("arrives in Excel cell for cell, in at most six requests of less than 5 MB", async () => {
    const { host } = excel.open(workbook);
    await host.taken();
    await host.fill(plan, { protect: true });

    const differing = plan.sheets.flatMap((sheet) =>
      sheet.cells
        .map((cell) => {
          const written = workbook.sheet(sheet.name).cells.at(cell.row, cell.column);
          return {
            place: [sheet.name, cell.row, cell.column],
            wanted: contentOf(cell) ?? "",
            got: written?.content ?? "",
          };
        })
        .filter(({ wanted, got }) => wanted !== got),
    );
    expect(differing).toEqual([]);
    for (const { name, cells } of plan.sheets) {
      const filled = [...workbook.sheet(name).cells.byPlace.values()].filter(({ content }) => content !== "");
      expect([name, filled.length]).toEqual([name, cells.filter((cell) => (contentOf(cell) ?? "") !== "").length]);
    }

    const requests = workbook.asked;
    expect(requests.length).toBeLessThanOrEqual(6);
    for (const request of requests) expect(Buffer.byteLength(JSON.stringify(request))).toBeLessThan(5_000_000);
  });

  it("goes again without a trace", async () => {
    await excel.open(workbook).host.remove({
      starter: plan.starter,
      sheets: plan.sheets.map(({ name }) => name),
      names: plan.names.map(({ name }) => name),
    });
    expect(workbook.picture()).toBe(before);
  });
});
