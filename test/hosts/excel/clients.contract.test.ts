import { makeSheets } from "../../../src/taskpane/pane/clients/make-clients";
import { readClientList } from "../../../src/workbook/starters/client-list";
import { clientRows, head } from "../../taskpane/clients/client-rows";
import { excelInTest } from "./excel-in-test";

const excel = excelInTest(12);

const choices = { guide: "IN-MI-OH", preparedBy: "A. Adviser", preparedOn: 46_000, note: "Read twice.", asGroup: true };

it("reads a list in Excel, makes the sheets of twelve clients, and takes them away without a trace", async () => {
  const { workbook, host } = excel.open();
  const sheet = workbook.Worksheets.Add("Growers");
  const rows = [head, ...clientRows(12)];
  sheet.GetRange(`A1:J${rows.length}`).Formulas = rows.map((row) => row.map((value) => value ?? ""));
  const before = workbook.picture();

  const { sheets } = await host.readSheets();
  const list = sheets.map(readClientList).find((found) => found !== undefined);
  expect(list?.clients.map(({ name, problems }) => [name, problems])).toEqual(
    Array.from({ length: 12 }, (_, index) => [`Client ${index + 1}`, []]),
  );

  const steps: number[] = [];
  const made = await makeSheets(host, list?.clients ?? [], choices, {
    step: (done) => void steps.push(done),
    isStopped: () => false,
  });
  expect([made.made, made.notMade, made.notBegun]).toEqual([12, [], 0]);
  expect(steps).toEqual([0, 5, 10]);
  const cells = (name: string) => [...workbook.sheet(name).cells.byPlace.values()].map(({ content }) => content);
  expect(cells("Client 12 Client")).toEqual(expect.arrayContaining(["Client 12", "A. Adviser", 46_000, "Read twice."]));
  expect(cells("Client 12 Fields today")).toEqual(expect.arrayContaining(["North", "South", 80, 52]));

  const requests = workbook.asked;
  for (const request of requests) expect(Buffer.byteLength(JSON.stringify(request))).toBeLessThan(5_000_000);

  await host.remove({
    starter: "client-budget",
    sheets: made.receipts.flatMap((receipt) => receipt.sheets),
    names: made.receipts.flatMap((receipt) => receipt.names),
  });
  expect(workbook.picture()).toBe(before);
});
