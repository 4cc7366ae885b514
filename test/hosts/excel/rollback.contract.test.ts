import { HostError } from "../../../src/hosts/port";
import { makeSheets } from "../../../src/taskpane/pane/clients/make-clients";
import { readClientList } from "../../../src/workbook/starters/client-list";
import { clientRows, head } from "../../taskpane/clients/client-rows";
import { cell, plan, sheet } from "../plan-parts";
import { excelInTest } from "./excel-in-test";
import type { MemoryWorkbook } from "./memory/memory-workbook";
import { isCleaningUp } from "./memory/request-processor";
import { richPlan } from "./rich-plan";

jest.setTimeout(180_000);

const excel = excelInTest();

/** A workbook with something of its own in it, and Excel open on it. */
function openWorkbook() {
  const { workbook, host } = excel.open();
  const own = workbook.sheet("Sheet1");
  own.GetRange("A1:B2").Formulas = [
    ["Mine", 1],
    ["=B1*2", true],
  ];
  workbook.Names.Add("My_name", own.GetRange("B1"), "");
  return { workbook, host };
}

async function failureOf(work: Promise<unknown>): Promise<HostError> {
  const thrown: unknown = await work.then(
    () => new Error("nothing was thrown"),
    (reason: unknown) => reason,
  );
  expect(thrown).toBeInstanceOf(HostError);
  return thrown as HostError; // just checked
}

interface Place {
  readonly request: number;
  /** The request fails before this action; after its last one Excel does all of it and its answer is lost. */
  readonly action: number;
}

/** Every request of a piece of work, at its first action, at some between, and after its last one. */
async function placesToFail(opened: Opened, work: (opened: Opened) => Promise<unknown>, parts = 5): Promise<Place[]> {
  const { requests } = opened.workbook;
  const before = requests.length;
  await work(opened);
  return requests.slice(before).flatMap((body, index) =>
    isCleaningUp(body)
      ? []
      : Array.from({ length: parts + 1 }, (_, part) => ({
          request: before + index,
          action: Math.floor((part * body.Actions.length) / parts),
        })),
  );
}

type Opened = ReturnType<typeof openWorkbook>;

describe("a fill that fails", () => {
  it("leaves the workbook as it was, wherever it fails, and works when tried again", async () => {
    const places = await placesToFail(openWorkbook(), ({ host }) => host.fill(richPlan, { protect: true }));
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
    excel.answer((body) => {
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

describe("a write that fails", () => {
  const blocks = [
    { address: "Sheet1!B1", rows: [[205]] },
    {
      address: "Sheet1!A4:B5",
      rows: [
        ["Strip", "6-24-24"],
        [1, { formula: "=B1*3" }],
      ],
    },
    { address: "Sheet1!D9", rows: [[null]] },
  ];
  /** Typed text that looks like a date or a formula has to come back as that text. */
  const withTexts = () => {
    const opened = openWorkbook();
    opened.workbook.sheet("Sheet1").GetRange("A4:D4").Formulas = [["'6-24-24", "'=not a formula", "", ""]];
    opened.workbook.sheet("Sheet1").GetRange("D9").Formulas = [["'1/2"]];
    return opened;
  };

  it("leaves every cell as it was, wherever it fails, and works when tried again", async () => {
    const write = ({ host }: Opened) => host.write(blocks, "formulas");
    const places = await placesToFail(withTexts(), write);
    expect(new Set(places.map(({ request }) => request)).size).toBe(2);
    for (const place of places) {
      const opened = withTexts();
      const before = contents(opened.workbook);
      opened.workbook.failAt = place;
      const { message } = await failureOf(write(opened));
      expect([place, message]).toEqual([place, expect.stringMatching(/^Excel could not do that .*\.$/)]);
      expect([place, contents(opened.workbook)]).toEqual([place, before]);

      await write(opened);
      expect(opened.workbook.sheet("Sheet1").GetRange("A4:B5").Formulas).toEqual([
        ["Strip", "6-24-24"],
        [1, "=B1*3"],
      ]);
    }
  });

  it("says that nothing was written", async () => {
    const { workbook, host } = withTexts();
    workbook.failAt = { request: 1, action: 4 };
    expect((await failureOf(host.write(blocks, "formulas"))).message).toBe(
      "Excel could not do that (GeneralException). Try again. Nothing was written.",
    );
  });

  it("says where to look when Excel takes nothing back", async () => {
    const { workbook, host } = withTexts();
    workbook.failAt = { request: 1, action: 4 };
    const { answer } = workbook;
    excel.answer((body) =>
      workbook.requests.length < 2
        ? answer(body)
        : { Results: [], Error: { Code: "ServiceNotAvailable", Message: "", Location: "" } },
    );
    expect((await failureOf(host.write(blocks, "formulas"))).message).toMatch(
      /Look at Sheet1!B1, Sheet1!A4:B5, Sheet1!D9: new values may stand there\.$/,
    );
  });
});

/** What the cells hold; a cell that was emptied is as good as one never filled. */
function contents({ sheets }: MemoryWorkbook): unknown[] {
  return sheets.map(({ Name, cells }) => [
    Name,
    [...cells.byPlace].filter(([, { content }]) => content !== "").sort(([a], [b]) => a.localeCompare(b)),
  ]);
}

describe("a removal that fails", () => {
  it("says so, and takes the rest away when tried again, wherever it failed", async () => {
    const filled = async () => {
      const opened = openWorkbook();
      const before = opened.workbook.picture();
      return { ...opened, before, receipt: await opened.host.fill(richPlan, { protect: true }) };
    };
    const first = await filled();
    const places = await placesToFail(first, ({ host }) => host.remove(first.receipt));
    expect(new Set(places.map(({ request }) => request)).size).toBe(2);
    for (const place of places) {
      const { workbook, host, before, receipt } = await filled();
      workbook.failAt = place;
      const { message } = await failureOf(host.remove(receipt));
      const deleting = place.request > Math.min(...places.map(({ request }) => request));
      expect([place, message.includes("take them away once more")]).toEqual([place, deleting]);
      await host.remove(receipt);
      expect([place, workbook.picture()]).toEqual([place, before]);
    }
  });
});

describe("budgets for a list of clients, when one request fails", () => {
  const choices = { guide: "IN-MI-OH", preparedBy: "", preparedOn: null, note: "", asGroup: true };
  const report = { step: () => undefined, isStopped: () => false };
  const rows = [head, ...clientRows(6)];
  const list = readClientList({
    name: "Growers",
    top: 0,
    left: 0,
    formulas: rows.map((row) => row.map((value) => value ?? "")),
    values: rows,
    tables: [],
    messages: new Map(),
  });

  it("names the clients not made, holds nothing of theirs, and makes them when tried again", async () => {
    const clients = list?.clients ?? [];
    expect(clients).toHaveLength(6);
    const make = ({ host }: Opened) => makeSheets(host, clients, choices, report);
    const places = await placesToFail(openWorkbook(), make, 1);
    expect(places.length).toBeGreaterThanOrEqual(16);
    for (const place of places) {
      const opened = openWorkbook();
      opened.workbook.failAt = place;
      // The first request looks at the names in use, before anything is begun.
      const made = await make(opened).catch((thrown: unknown) => {
        expect([place.request, thrown]).toEqual([0, expect.any(HostError)]);
        return { receipts: [], notMade: clients.map(({ name }) => ({ name, why: [String(thrown)] })) };
      });
      expect([place, made.notMade.length]).toEqual([place, expect.any(Number)]);
      expect(made.notMade.length).toBeGreaterThan(0);
      for (const { why } of made.notMade) expect(why).toEqual([expect.stringMatching(/Excel could not do that/)]);
      const sheets = made.receipts.flatMap((receipt) => receipt.sheets);
      expect([place, opened.workbook.sheets.map(({ Name }) => Name)]).toEqual([place, ["Sheet1", ...sheets]]);

      const names = made.notMade.map(({ name }) => name);
      const again = await makeSheets(
        opened.host,
        clients.filter(({ name }) => names.includes(name)),
        choices,
        report,
      );
      expect([place, again.made, again.notMade]).toEqual([place, names.length, []]);
    }
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
    expect(workbook.asked).toHaveLength(1);
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
