/** @jest-environment jsdom */
import { mountPane, type KeptWorkbooks, type PaneEnvironment } from "../../../src/taskpane/pane";
import { words } from "../../../src/taskpane/words";
import { FakeHost } from "../fake-host";
import { button } from "../on-page";

const settled = (): Promise<void> => new Promise((done) => setTimeout(done, 60));
/** Making the plan takes longer while the machine is busy. */
async function until(holds: () => boolean): Promise<void> {
  for (let tries = 0; tries < 200 && !holds(); tries++) await settled();
}

const page = (): string => document.body.textContent ?? "";

/** A page that keeps workbooks and can show the example, and notes what was asked of it. */
function room(isUntouched: boolean) {
  const opened: string[] = [];
  const workbooks: KeptWorkbooks = {
    list: async () => [],
    open: async () => undefined,
    add: async () => void opened.push("empty"),
    openFile: async ({ name }) => {
      opened.push(name);
      return { title: name, leftOut: [] };
    },
    rename: async () => undefined,
    remove: async () => undefined,
  };
  const example = {
    isUntouched: () => isUntouched,
    open: async ({ title }: { title: string }) => void opened.push(title),
  };
  return { opened, environment: { kind: "browser", workbooks, example } satisfies PaneEnvironment };
}

function mount(environment: PaneEnvironment): FakeHost {
  document.body.innerHTML = "<div id='root'></div>";
  const host = new FakeHost({ cells: {}, kind: environment.kind });
  const root = document.getElementById("root");
  if (root) mountPane(root, host, environment);
  return host;
}

it("opens on a first visit and fills the example in once the page can be worked with", async () => {
  const { opened, environment } = room(true);
  let ready = (): void => undefined;
  mount({ ...environment, firstVisit: new Promise<void>((done) => (ready = done)) });
  expect(document.querySelector("h2")?.textContent).toBe("Overview");
  await settled();
  expect(opened).toEqual([]);
  ready();
  await until(() => opened.length > 0);
  expect(opened).toEqual(["Windmill Hollow Farm farm plan"]);
});

it("never puts the example over what the person has begun to type", async () => {
  const { opened, environment } = room(false);
  mount({ ...environment, firstVisit: Promise.resolve() });
  await settled();
  expect(opened).toEqual([]);
  expect(button("Show the example farm")).toBeDefined();
});

it("opens to the form where a workbook is kept, with the overview one click away", async () => {
  const { opened, environment } = room(false);
  mount(environment);
  await settled();
  expect(document.querySelector("h2")?.textContent).toBe("Start a workbook");
  button("Overview").click();
  await settled();
  expect(document.activeElement?.textContent).toBe("Overview");
  expect(page()).toContain("There is no farm plan in this workbook yet.");
  expect(page()).toContain("stays on this machine");
  expect(opened).toEqual([]);
});

it("makes it mine: an empty workbook, and the form without the invented farm's name and figures", async () => {
  const { opened, environment } = room(true);
  mount(environment);
  button("Overview").click();
  await settled();
  button("Make it mine").click();
  await settled();
  expect(opened).toEqual(["empty"]);
  expect(document.activeElement?.textContent).toBe("Start a workbook");
  expect(document.querySelector<HTMLInputElement>("#start-farm")?.value).toBe("");
  expect(document.querySelector<HTMLInputElement>("#start-figures-empty")?.checked).toBe(true);
});

it("opens a file from the overview", async () => {
  const { opened, environment } = room(true);
  mount(environment);
  button("Overview").click();
  await settled();
  const field = document.querySelector<HTMLInputElement>("#overview-file");
  if (!field) throw new Error("There is no place for a file.");
  Object.defineProperty(field, "files", { value: [new File(["…"], "mill-road.xlsx")] });
  field.dispatchEvent(new Event("input", { bubbles: true }));
  await settled();
  expect(opened).toEqual(["mill-road.xlsx"]);
});

it("in Excel offers what Excel can do: no example, no workbooks of its own", async () => {
  mount({ kind: "excel" });
  button("Overview").click();
  await settled();
  expect([...document.querySelectorAll(".overview button")].map(({ textContent }) => textContent)).toEqual([
    "Start a workbook",
  ]);
  expect(page()).toContain("What you type stays in your workbook.");
});

it("speaks of the plan where nobody has named the farm", () => {
  expect(words.overview.own("Mill Road Farm")).toMatch(/^Mill Road Farm: what its plan says/);
  expect(words.overview.own(" ")).toMatch(/^What the plan says/);
});
