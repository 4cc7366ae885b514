import { readLedgers } from "../../../src/taskpane/pane/tables/ledgers";
import { ledgerPicture } from "../../../src/taskpane/pane/pictures/facts";
import type { Picture } from "../../../src/workbook/pictures/picture";
import { planPicture } from "../../../src/workbook/pictures/plan-picture";
import { cell, plan, sheet } from "../plan-parts";
import { excelInTest } from "./excel-in-test";
import type { MemoryWorkbook } from "./memory/memory-workbook";

const excel = excelInTest(12);

/** A ledger with figures typed into it, and the acre of a person, in Excel. */
const own = plan([
  sheet(
    "Potash ledger",
    [
      ["Field", "A year lb/ac"],
      ["Mill Road", -31.2],
      ["Creek Bend", 11.8],
    ].flatMap((row, down) => row.map((content, across) => cell(down, across, content))),
    {
      columnWidths: [20, 12],
      tables: [{ name: "PotashLedger", area: { top: 0, left: 0, bottom: 2, right: 1 }, totals: false }],
    },
  ),
  sheet(
    "Acre",
    [58, 10.6, 620].map((value, row) => cell(row, 1, value)),
    { columnWidths: [10, 10] },
  ),
]);

async function openExcel() {
  const { workbook, host } = excel.open();
  await host.fill(own, { protect: false });
  await host.show("Sheet1!A1");
  return { workbook, host, before: workbook.picture() };
}

const contents = (workbook: MemoryWorkbook, name: string) =>
  [...workbook.sheet(name).cells.byPlace.values()].map(({ content }) => content);

it("reads a ledger in Excel, puts it on a new sheet with its chart, and takes it away without a trace", async () => {
  const { workbook, host, before } = await openExcel();
  const ledgers = await readLedgers(host);
  const picture = ledgers.map(ledgerPicture)[0];
  expect(ledgers.map(({ table, balances }) => [table, balances.map(({ perYear }) => perYear)])).toEqual([
    ["PotashLedger", [-31.2, 11.8]],
  ]);
  if (!picture) throw new Error("no picture");
  const receipt = await host.fill(planPicture(picture, "January 15, 2027", await host.taken()), { protect: false });

  expect(workbook.sheets.map(({ Name }) => Name).slice(-1)).toEqual(["Potash by field"]);
  expect(workbook.active.Name).toBe("Potash by field");
  expect(contents(workbook, "Potash by field")).toEqual(
    expect.arrayContaining(["='Potash ledger'!$A$2", "='Potash ledger'!$B$2", "='Potash ledger'!$B$3"]),
  );
  expect(workbook.sheet("Potash by field").charts).toMatchObject([
    {
      Type: "BarClustered",
      Title: { Text: "Potash by field, lb/ac a year" },
      all: [{ values: "'Potash by field'!B8:B9", categories: "'Potash by field'!A8:A9" }],
    },
  ]);
  await host.remove(receipt);
  expect(workbook.picture()).toBe(before);
});

const follows = (row: number) => ({ follows: { sheet: "Acre", row, column: 1 } });
const acre = {
  yield: follows(0),
  price: follows(1),
  cost: follows(2),
  perBushel: { value: 0.12 },
  other: { value: 0 },
};

it("puts the profit grid there as a table colored around zero", async () => {
  const { workbook, host } = await openExcel();
  const grid: Picture = { kind: "grid", crop: "soybean", tried: acre, yieldStep: 4, priceStep: 0.5 };
  await host.fill(planPicture(grid, "January 15, 2027", await host.taken()), { protect: false });
  const added = workbook.sheet("Profit grid");
  expect(added.conditionalFormats).toMatchObject([
    { Type: "ColorScale", ColorScale: { Criteria: { midpoint: { type: "Number", formula: "0" } } } },
  ]);
  const calls = contents(workbook, "Profit grid").filter((content) => String(content).includes("LOAM.PROFITGRID("));
  expect(calls).toHaveLength(49);
});

it("puts what moves profit beside an earlier one, tied to the acre", async () => {
  const { workbook, host, before } = await openExcel();
  const tornado: Picture = {
    kind: "tornado",
    crop: "soybean",
    tried: acre,
    swings: [{ name: "Yield", moves: "yield", low: 48, high: 68 }],
  };
  const receipts = [];
  for (let time = 0; time < 2; time++) {
    receipts.push(await host.fill(planPicture(tornado, "January 15, 2027", await host.taken()), { protect: false }));
  }
  expect(receipts.map(({ sheets }) => sheets)).toEqual([["What moves profit"], ["What moves profit 2"]]);
  const [, second] = receipts;
  expect(contents(workbook, "What moves profit 2")).toEqual(
    expect.arrayContaining(['=IF(Acre!$B$1&""="","",Acre!$B$1)', 0.12, 48, 68]),
  );
  expect(workbook.sheet("What moves profit 2").charts).toMatchObject([
    {
      all: [
        { Name: "At the lowest", Overlap: 100 },
        { Name: "At the highest", Overlap: 100 },
      ],
      Legend: { Visible: true },
    },
  ]);
  for (const receipt of receipts.reverse()) await host.remove(receipt);
  expect(second?.sheets).toHaveLength(1);
  expect(workbook.picture()).toBe(before);
});
