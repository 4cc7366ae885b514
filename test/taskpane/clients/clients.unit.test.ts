/** @jest-environment jsdom */
import { HostError } from "../../../src/hosts/port";
import { mountPane, type ClientFiles, type PaneEnvironment } from "../../../src/taskpane/pane";
import type { WorkbookPlan } from "../../../src/workbook/plan";
import { FakeHost } from "../fake-host";
import { cellsOf, clientRows, head } from "./client-rows";

jest.setTimeout(120_000);

const pause = (milliseconds = 5): Promise<void> => new Promise((done) => setTimeout(done, milliseconds));
const page = (): string => document.body.textContent ?? "";

async function until(holds: () => boolean): Promise<void> {
  for (let tries = 0; tries < 4000 && !holds(); tries++) await pause();
  if (!holds()) throw new Error(`In vain. The page says: ${page()}`);
}

function button(text: RegExp): HTMLButtonElement {
  const found = [...document.querySelectorAll("button")].find(({ textContent }) => text.test(textContent ?? ""));
  if (!found) throw new Error(`There is no button ${text}.`);
  return found;
}

function enter(id: string, value: string): void {
  const field = document.getElementById(id);
  if (!(field instanceof HTMLInputElement || field instanceof HTMLSelectElement)) throw new Error(`no field ${id}`);
  field.value = value;
  field.dispatchEvent(new Event("input", { bubbles: true }));
}

async function open(
  rows: Parameters<typeof cellsOf>[1],
  environment: Partial<PaneEnvironment> = {},
): Promise<FakeHost> {
  document.body.innerHTML = "<div id='root'></div>";
  const kind = environment.kind ?? "excel";
  const host = new FakeHost({ cells: cellsOf("Growers", rows), sheets: ["Growers"], kind });
  const root = document.getElementById("root");
  if (root) mountPane(root, host, { kind, ...environment });
  button(/^Many clients$/).click();
  await until(() => page().includes("Columns read") || page().includes("No sheet of this workbook"));
  return host;
}

/** A page that can make files; keeps what it was given. */
function filesRoom(refuse: (plan: WorkbookPlan) => boolean = () => false) {
  const plans: WorkbookPlan[] = [];
  const handed: { names: string[]; zip: string }[] = [];
  const files: ClientFiles = {
    async make(plan) {
      if (refuse(plan)) throw new HostError("The workbook is too large for this browser.", "TooLarge");
      plans.push(plan);
      return new File([plan.title], `${plan.title}.xlsx`);
    },
    async handOver(made, zip) {
      handed.push({ names: made.map(({ name }) => name), zip });
      return zip;
    },
  };
  return { plans, handed, files };
}

it("makes fifty clients in one go as sheets, each group under the client's name", async () => {
  const host = await open([head, ...clientRows(50)]);
  expect(page()).toContain("Growers: 50 clients, 100 fields.");
  enter("clients-guide", "IN-MI-OH");
  enter("clients-by", "A. Adviser");
  enter("clients-date", "2027-01-15");
  button(/^Make 50 budgets$/).click();
  await until(() => document.querySelector(".done") !== null);
  expect(page()).toContain("50 client budgets stand in this workbook.");
  expect(document.activeElement?.id).toBe("clients-outcome");
  const sheets = host.fills.flatMap(({ plan }) => plan.sheets.map(({ name }) => name));
  expect(new Set(sheets.map((name) => name.toLowerCase())).size).toBe(sheets.length);
  const reports = sheets.filter((name) => name.endsWith("Client report"));
  expect(reports).toHaveLength(50);
  expect([reports[0], reports[49]]).toEqual(["Client 1 Client report", "Client 50 Client report"]);
  const tables = host.fills.flatMap(({ plan }) => plan.sheets.flatMap((sheet) => sheet.tables.map(({ name }) => name)));
  expect(new Set(tables).size).toBe(tables.length);
  for (const { plan } of host.fills) expect(JSON.stringify(plan)).toContain("A. Adviser");
});

it("makes fifty files into one zip, names those that cannot be made, and says why", async () => {
  const room = filesRoom(({ title }) => title.startsWith("Client 7 "));
  const rows = clientRows(50);
  const [wrong] = rows.slice(4);
  if (wrong) wrong[3] = "forty";
  await open([head, ...rows], { kind: "browser", files: room.files });
  expect(page()).toContain("1 client cannot be made as the list stands:");
  enter("clients-guide", "IN-MI-OH");
  document.querySelector<HTMLInputElement>("#clients-as-files")?.click();
  enter("clients-as-files", "files");
  button(/^Make 49 budgets$/).click();
  await until(() => document.querySelector(".done") !== null);
  expect(room.handed).toHaveLength(1);
  expect(room.handed[0]?.names).toHaveLength(48);
  expect(page()).toContain("48 client budgets are in Client budgets.zip");
  const reasons = [...document.querySelectorAll(".done li")].map(({ textContent }) => textContent);
  expect(reasons).toEqual([
    'Client 3. Row 6: Acres must be a number (ac); got "forty".',
    "Client 7. The workbook is too large for this browser.",
  ]);
  // A file of its own needs no name before its sheets.
  expect(room.plans[0]?.sheets.map(({ name }) => name)).toContain("Client report");
});

it("shows how far it is, and stops after the client at hand with what was made", async () => {
  const room = filesRoom();
  await open([head, ...clientRows(50)], { kind: "browser", files: room.files });
  enter("clients-guide", "IN-MI-OH");
  enter("clients-as-files", "files");
  button(/^Make 50 budgets$/).click();
  await until(() => room.plans.length >= 3);
  expect(document.querySelector("progress")?.max).toBe(50);
  expect(page()).toMatch(/\d+ of 50 done\. Now: Client \d+/);
  button(/^Stop$/).click();
  expect(page()).toContain("Stopping after the one at hand");
  await until(() => document.querySelector(".done") !== null);
  const made = room.plans.length;
  expect(made).toBeLessThan(50);
  expect(room.handed[0]?.names).toHaveLength(made);
  expect(page()).toContain(`Stopped: ${50 - made} clients were not begun.`);
});

it("says what a host could not do for each client, and goes on", async () => {
  const host = await open([head, ...clientRows(2)]);
  enter("clients-guide", "IN-MI-OH");
  host.refusal = { of: "fill", says: "The workbook is read-only." };
  button(/^Make 2 budgets$/).click();
  await until(() => document.querySelector(".done") !== null);
  expect(page()).toContain("No client budget was made.");
  expect([...document.querySelectorAll(".done li")].map(({ textContent }) => textContent)).toEqual([
    "Client 1. The workbook is read-only.",
    "Client 2. The workbook is read-only.",
  ]);
});

it("asks for the guide where there are tests, and for a date it can read, and goes to the field", async () => {
  const host = await open([head, ...clientRows(1)]);
  enter("clients-date", "next week");
  button(/^Make 1 budget$/).click();
  await pause(20);
  expect(document.activeElement?.id).toBe("clients-guide");
  expect(page()).toContain("Choose the guide that the soil tests are to be read by.");
  expect(page()).toContain("The date is written year-month-day");
  expect(host.fills).toEqual([]);
});

it("takes away all sheets of a run after asking", async () => {
  const host = await open([head, ...clientRows(3)]);
  enter("clients-guide", "IN-MI-OH");
  button(/^Make 3 budgets$/).click();
  await until(() => document.querySelector(".done") !== null);
  expect(host.sheets.length).toBeGreaterThan(10);
  button(/^Remove what was added$/).click();
  expect(document.activeElement?.id).toBe("clients-question");
  button(/^Remove them$/).click();
  await until(() => page().includes("has been taken away again"));
  expect(host.sheets).toEqual(["Growers"]);
});

it("says what a list needs where there is none, and puts one in", async () => {
  const host = await open([["Date", "Amount"]]);
  expect(page()).toContain("under a header with at least Client, Field and Crop");
  button(/^Put an example list here$/).click();
  await until(() => host.fills.length === 1);
  expect(host.fills[0]?.plan.sheets.map(({ name }) => name)).toEqual(["Client list"]);
});

/** A page that keeps workbooks, and how often a new one was begun. */
function keptWorkbooks() {
  const add = jest.fn(async () => undefined);
  const list = async () => [{ id: "a", title: "Growers", changed: 0, isOpen: true }];
  const unused = async () => undefined;
  const openFile = async () => ({ title: "", leftOut: [] });
  return { add, workbooks: { list, add, open: unused, openFile, rename: unused, remove: unused } };
}

it("opens no other workbook while budgets are on their way into this one", async () => {
  const { add, workbooks } = keptWorkbooks();
  const host = await open([head, ...clientRows(1)], { kind: "browser", workbooks });
  button(/^Workbooks$/).click();
  await until(() => page().includes("New workbook"));
  enter("clients-guide", "IN-MI-OH");
  let release = (): void => undefined;
  host.hold = new Promise((done) => (release = done));
  button(/^Make 1 budget$/).click();
  await until(() => document.querySelector("progress") !== null);
  button(/^New workbook$/).click();
  release();
  await until(() => document.querySelector(".done") !== null);
  expect(add).not.toHaveBeenCalled();
});

it("takes nothing away from a workbook opened after the run", async () => {
  const { workbooks } = keptWorkbooks();
  await open([head, ...clientRows(1)], { kind: "browser", workbooks });
  enter("clients-guide", "IN-MI-OH");
  button(/^Make 1 budget$/).click();
  await until(() => document.querySelector(".done") !== null);
  button(/^Workbooks$/).click();
  await until(() => page().includes("New workbook"));
  button(/^New workbook$/).click();
  await until(() => page().includes("An empty workbook is open."));
  expect(page()).not.toContain("Remove what was added");
});
