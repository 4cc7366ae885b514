import { excelHost } from "../../../src/hosts/excel/excel-host";
import { HostError } from "../../../src/hosts/port";
import { cell, plan, sheet } from "../small-plan";
import { answerRequests, isCleaningUp, loadOffice, makeGlobal, type GenuineOffice } from "./genuine-office";
import { MemoryWorkbook } from "./memory/memory-workbook";
import { richPlan } from "./rich-plan";

let office: GenuineOffice;

beforeAll(async () => {
  office = await loadOffice();
  makeGlobal(office);
});
afterAll(() => office.close());

/** A workbook with something of its own in it, and Excel open on it. */
function openWorkbook() {
  const workbook = new MemoryWorkbook();
  answerRequests(office, workbook.answer);
  const own = workbook.sheet("Sheet1");
  own.GetRange("A1:B2").Formulas = [
    ["Mine", 1],
    ["=B1*2", true],
  ];
  workbook.Names.Add("My_name", own.GetRange("B1"), "");
  return { workbook, host: excelHost() };
}

async function failureOf(work: Promise<unknown>): Promise<HostError> {
  const thrown: unknown = await work.then(
    () => new Error("nothing was thrown"),
    (reason: unknown) => reason,
  );
  expect(thrown).toBeInstanceOf(HostError);
  return thrown as HostError; // just checked
}

/** Every request of a fill, at its first action, its last one and some between. */
async function placesToFail(): Promise<{ request: number; action: number }[]> {
  const { workbook, host } = openWorkbook();
  await host.fill(richPlan, { protect: true });
  return workbook.requests
    .filter((body) => !isCleaningUp(body))
    .flatMap(({ Actions: { length } }, request) =>
      [0, 1, 2, 3, 4, 5].map((part) => ({ request, action: Math.floor((part * (length - 1)) / 5) })),
    );
}

describe("a fill that fails", () => {
  it("leaves the workbook as it was, wherever it fails, and works when tried again", async () => {
    const places = await placesToFail();
    expect(new Set(places.map(({ request }) => request)).size).toBeGreaterThanOrEqual(4);
    for (const place of places) {
      const { workbook, host } = openWorkbook();
      const before = workbook.picture();
      workbook.failAt = place;
      const failure = await failureOf(host.fill(richPlan, { protect: true }));
      expect([place, failure.message]).toEqual([place, expect.stringMatching(/^Excel could not do that .*\.$/)]);
      expect([place, workbook.picture()]).toEqual([place, before]);

      await host.fill(richPlan, { protect: true });
      expect(workbook.sheets.map(({ Name }) => Name)).toEqual(["Sheet1", "Fields", "Prices list"]);
    }
  });

  it("says that the workbook is as it was before", async () => {
    const { workbook, host } = openWorkbook();
    workbook.failAt = { request: 2, action: 3 };
    expect((await failureOf(host.fill(richPlan, { protect: false }))).message).toBe(
      "Excel could not do that (GeneralException). Try again. The workbook is as it was before.",
    );
  });

  it("names the sheets to delete by hand when Excel refuses to take them back", async () => {
    const { workbook, host } = openWorkbook();
    workbook.failAt = { request: 2, action: 3 };
    const answer = workbook.answer;
    answerRequests(office, (body) => {
      const writing = workbook.requests.length < 3;
      return writing
        ? answer(body)
        : { Results: [], Error: { Code: "ServiceNotAvailable", Message: "", Location: "" } };
    });
    expect((await failureOf(host.fill(richPlan, { protect: false }))).message).toMatch(
      /Some of the new sheets may have stayed: delete Fields, Prices list before you try again\.$/,
    );
  });
});

describe("a plan whose names are taken", () => {
  const cases = [
    ["a sheet", (book: MemoryWorkbook) => book.Worksheets.Add("FIELDS"), /already has a sheet called Fields/],
    [
      "a name",
      (book: MemoryWorkbook) => book.Names.Add("price_factor", book.active.GetRange("A9"), ""),
      /a name called Price_factor/,
    ],
    [
      "a table",
      (book: MemoryWorkbook) => (book.active.Tables.Add("F1:G3", true).Name = "Fields"),
      /a table called Fields/,
    ],
  ] as const;

  it.each(cases)("is refused before anything is written: %s", async (_what, take, sentence) => {
    const { workbook, host } = openWorkbook();
    take(workbook);
    const before = workbook.picture();
    expect((await failureOf(host.fill(richPlan, { protect: false }))).message).toMatch(sentence);
    expect(workbook.picture()).toBe(before);
    expect(workbook.requests.filter((body) => !isCleaningUp(body))).toHaveLength(1);
  });

  it("is seen beforehand", async () => {
    const { workbook, host } = openWorkbook();
    workbook.active.Tables.Add("F1:G3", true).Name = "Spray_log";
    expect(await host.taken()).toEqual({ sheets: ["Sheet1"], names: ["My_name"], tables: ["Spray_log"] });
  });
});

describe("taking a fill away again", () => {
  it("removes its sheets and names and nothing else", async () => {
    const { workbook, host } = openWorkbook();
    const before = workbook.picture();
    const receipt = await host.fill(richPlan, { protect: true });
    await host.remove(receipt);
    expect(workbook.picture()).toBe(before);
  });

  it("passes over what is no longer there", async () => {
    const { workbook, host } = openWorkbook();
    const receipt = await host.fill(richPlan, { protect: false });
    workbook.sheet("Fields").Delete();
    workbook.Names.GetItem("Price_factor").Delete();
    await host.remove(receipt);
    expect(workbook.sheets.map(({ Name }) => Name)).toEqual(["Sheet1"]);
  });

  it("leaves one empty sheet when there is no other", async () => {
    const { workbook, host } = openWorkbook();
    const receipt = await host.fill(plan([sheet("Only", [cell(0, 0, 1)])]), { protect: false });
    workbook.sheet("Sheet1").Delete();
    await host.remove(receipt);
    expect(workbook.sheets).toHaveLength(1);
    expect(workbook.sheets[0]?.cells.byPlace.size).toBe(0);
    expect(workbook.hasSheet("Only")).toBe(false);
  });
});
