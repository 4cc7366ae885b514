/** @jest-environment jsdom */
import { allFunctions } from "../../src/functions";
import { exampleFormula } from "../../src/functions/frame/formula-text";
import { HostError } from "../../src/hosts/port";
import { mountPane, type KeptWorkbooks, type PaneEnvironment, type PreferenceStorage } from "../../src/taskpane/pane";
import { FakeHost } from "./fake-host";
import { button, byId, input, storageIn, type } from "./on-page";

let host: FakeHost;

function mount(environment: Partial<PaneEnvironment> = {}): void {
  document.body.innerHTML = "<div id='root'></div>";
  mountPane(byId("root"), host, { kind: "excel", ...environment });
}

function leave(id: string): void {
  input(id).dispatchEvent(new Event("focusout", { bubbles: true }));
}

/** Lets everything that was begun come to its end. */
const settled = (): Promise<void> => new Promise((done) => setTimeout(done, 5));

const page = (): string => document.body.textContent ?? "";

beforeEach(() => {
  host = new FakeHost();
  mount();
});

describe("Start a workbook", () => {
  function guideBox(): HTMLSelectElement {
    const found = byId("start-guide");
    if (!(found instanceof HTMLSelectElement)) throw new Error("start-guide is not a list.");
    return found;
  }

  function chooseGuide(): void {
    const box = guideBox();
    box.value = "IN-MI-OH";
    box.dispatchEvent(new Event("input", { bubbles: true }));
  }

  async function fill(): Promise<void> {
    chooseGuide();
    button("Fill the workbook").click();
    await settled();
  }

  it("has no guide chosen at first", () => {
    expect(guideBox().value).toBe("");
  });

  it("lists what does not fit, moves the focus there, and leads to the field", () => {
    type("start-price-corn", "lots");
    button("Fill the workbook").click();
    const summary = byId("start-summary");
    expect(document.activeElement).toBe(summary);
    expect([...summary.querySelectorAll("a")].map(({ textContent }) => textContent)).toEqual([
      "Choose the guide that your soil tests are to be read by.",
      'Price of corn must be a number ($/bu); got "lots".',
    ]);
    summary.querySelectorAll("a")[1]?.click();
    expect(document.activeElement).toBe(input("start-price-corn"));
    expect(host.fills).toEqual([]);
  });

  it("ties the sentence to its field on leaving it and takes it away once it fits", () => {
    type("start-price-corn", "450");
    expect(input("start-price-corn").hasAttribute("aria-invalid")).toBe(false);
    leave("start-price-corn");
    const described = input("start-price-corn").getAttribute("aria-describedby")?.split(" ") ?? [];
    expect(described.map((id) => byId(id).textContent).join(" ")).toMatch(/between 0.01 and 100 \$\/bu; got 450/);
    const aloud = document.querySelector(".refusals-aloud");
    expect(aloud?.getAttribute("role")).toBe("status");
    expect(aloud?.textContent).toMatch(/^Price of corn must be between/);
    type("start-price-corn", "4.50");
    expect(input("start-price-corn").hasAttribute("aria-invalid")).toBe(false);
    expect(aloud?.textContent).toBe("");
  });

  it("fills the workbook with what was chosen and tells what was added", async () => {
    type("start-price-corn", "$4.80");
    input("start-protect").click();
    await fill();
    const [made] = host.fills;
    expect(made?.options.protect).toBe(true);
    expect(made?.plan.starter).toBe("farm-plan");
    expect(JSON.stringify(made?.plan)).toContain("4.8");
    expect(document.activeElement?.id).toBe("start-done");
    for (const { name } of made?.plan.sheets ?? []) expect(byId("start-done").textContent).toContain(name);
  });

  it("does not protect unless asked to", async () => {
    await fill();
    expect(host.fills[0]?.options.protect).toBe(false);
  });

  it("shows how far it is and takes no second order meanwhile", async () => {
    let release = (): void => undefined;
    host.hold = new Promise((done) => (release = done));
    chooseGuide();
    button("Fill the workbook").click();
    await settled();
    expect(document.querySelector("progress")?.value).toBe(0.4);
    expect(document.querySelector(".progress")?.textContent).toMatch(/^Writing \w/);
    button("Fill the workbook").click();
    release();
    await settled();
    expect(host.fills).toHaveLength(1);
    expect(document.querySelector("progress")).toBeNull();
  });

  it("tells what the host could not do and keeps everything typed", async () => {
    type("start-farm", "North Flat");
    host.refusal = { of: "fill", says: "The workbook is read-only. Save a copy of it first." };
    await fill();
    expect(document.activeElement?.textContent).toBe("The workbook is read-only. Save a copy of it first.");
    expect(input("start-farm").value).toBe("North Flat");
    expect(guideBox().value).toBe("IN-MI-OH");
  });

  it("asks before it takes away what was added, and says what goes", async () => {
    await fill();
    button("Remove what was added").click();
    const names = host.fills[0]?.plan.sheets.map(({ name }) => name).join(", ");
    expect(document.activeElement?.textContent).toContain(`takes away the sheets ${names}`);
    button("Keep them").click();
    await settled();
    expect(host.sheets.length).toBeGreaterThan(1);
    button("Remove what was added").click();
    button("Remove them").click();
    await settled();
    expect(host.sheets).toEqual(["Sheet1"]);
    expect(page()).toContain("What was added has been taken away again.");
    expect(page()).not.toContain("Remove what was added");
  });

  it("can still take it away when a first try was refused", async () => {
    await fill();
    host.refusal = { of: "remove", says: "Finish editing the cell first." };
    button("Remove what was added").click();
    button("Remove them").click();
    await settled();
    expect(page()).toContain("Finish editing the cell first.");
    host.refusal = undefined;
    button("Remove what was added").click();
    button("Remove them").click();
    await settled();
    expect(host.sheets).toEqual(["Sheet1"]);
  });

  it("leaves out the sheets that are unticked, in the preview and in what is written", async () => {
    const previewed = () => [...document.querySelectorAll(".preview strong")].map(({ textContent }) => textContent);
    expect(previewed()).toContain("Harvest check");
    input("start-part-harvest").click();
    expect(previewed()).not.toContain("Harvest check");
    await fill();
    expect(host.fills[0]?.plan.sheets.map(({ name }) => name)).toEqual(previewed());
    input("start-part-harvest").click();
    expect(previewed()).toContain("Harvest check");
    input("start-starter-client-budget").click();
    expect(document.getElementById("start-part-harvest")).toBeNull();
  });

  it("asks for the number of fields only with empty rows, and drops the invented farm's name then", () => {
    expect(document.getElementById("start-fields")).toBeNull();
    input("start-figures-empty").click();
    expect(input("start-fields").value).toBe("10");
    expect(input("start-farm").value).toBe("");
  });

  it("keeps what was typed while other parts of the pane are open", () => {
    type("start-farm", "Twin Oaks");
    button("Sources").click();
    button("Start a workbook").click();
    expect(input("start-farm").value).toBe("Twin Oaks");
  });
});

describe("Find a function", () => {
  beforeEach(() => button("Find a function").click());

  it("moves the focus to its heading and marks where one is", () => {
    expect(document.activeElement).toBe(byId("find-heading"));
    expect(button("Find a function").getAttribute("aria-current")).toBe("page");
  });

  it("shows one part per family, closed, and opens it", () => {
    const [first] = document.querySelectorAll<HTMLButtonElement>(".family-head button");
    expect(first?.getAttribute("aria-expanded")).toBe("false");
    first?.click();
    expect(first?.getAttribute("aria-expanded")).toBe("true");
    expect(byId("find-REMOVAL").textContent).toContain("REMOVAL");
  });

  it("says how many functions answer a question", () => {
    type("find-query", "removal");
    expect(document.querySelector(".count")?.textContent).toMatch(/^\d+ functions? found\.$/);
    type("find-query", "zeppelin");
    expect(document.querySelector(".count")?.textContent).toBe("No function found.");
  });

  it.each(allFunctions.map((fn) => [fn.name, fn] as const))("makes the page of %s from its declaration", (name, fn) => {
    type("find-query", name);
    byId(`find-${name}`).click();
    expect(document.activeElement?.textContent).toBe(name);
    for (const text of [
      fn.summary,
      exampleFormula(fn),
      fn.example.because,
      ...Object.keys(fn.args),
      ...(fn.cautions ?? []),
    ]) {
      expect(page()).toContain(text);
    }
  });

  it("goes back to the row one came from, the question still there", () => {
    type("find-query", "removal");
    byId("find-REMOVAL").click();
    button("‹ All functions").click();
    expect(document.activeElement).toBe(byId("find-REMOVAL"));
    expect(input("find-query").value).toBe("removal");
  });
});

describe("Show the working", () => {
  beforeEach(() => {
    host = new FakeHost({
      cells: {
        "Fields!A1": { value: 200 },
        "Fields!B1": { formula: '=LOAM.REMOVAL("corn",A1,"K2O")', value: 40 },
        "Fields!B2": { value: 7 },
      },
    });
    host.selected = "Fields!B1";
    mount();
  });

  it("reads the selected cell on opening: the answer first, then what went in, steps and source", async () => {
    button("Show the working").click();
    await settled();
    expect(document.querySelector(".big-number")?.textContent).toBe("40 lb/ac");
    const headings = [...document.querySelectorAll("main h3")].map(({ textContent }) => textContent);
    expect(headings).toEqual(["REMOVAL", "What went in", "Steps", "Where the numbers stand"]);
    expect(page()).toContain("Bulletin 974");
  });

  it("follows the selection while it is open", async () => {
    button("Show the working").click();
    await settled();
    host.select("Fields!B2");
    await settled();
    expect(page()).toContain("This value was typed in");
  });

  it("leaves the workbook alone while another part is open", async () => {
    host.readSelection = () => Promise.reject(new Error("was read"));
    host.select("Fields!B2");
    await settled();
    expect(page()).not.toContain("was read");
  });

  it("shows the newest cell when an older reading comes late", async () => {
    button("Show the working").click();
    await settled();
    const slow = host.readSelection.bind(host);
    const first = slow();
    host.readSelection = async () => {
      await new Promise((done) => setTimeout(done, 20));
      return first;
    };
    button("Read the selected cell").click();
    host.readSelection = slow;
    host.select("Fields!B2");
    await new Promise((done) => setTimeout(done, 40));
    expect(page()).toContain("Fields!B2 shows");
  });
});

describe("Sources and About", () => {
  it("lists every publication a function names, once, with the functions that rest on it", () => {
    button("Sources").click();
    const named = new Set(allFunctions.flatMap(({ sources }) => sources));
    expect(document.querySelectorAll(".bibliography > li")).toHaveLength(named.size);
    button("REMOVAL").click();
    expect(document.activeElement?.textContent).toBe("REMOVAL");
  });

  it("tells where the figures stay", () => {
    button("About").click();
    expect(page()).toContain("Your figures stay in your workbook.");
  });
});

describe("what the pane remembers", () => {
  function shelf(): PreferenceStorage & { readonly kept: Map<string, string> } {
    const kept = new Map<string, string>();
    return { kept, ...storageIn(kept) };
  }

  it("brings what was typed back at the next visit, under the given prefix", () => {
    const storage = shelf();
    const environment = { storage: () => storage, storagePrefix: "part-" };
    mount(environment);
    type("start-farm", "Mill Road");
    expect([...storage.kept.keys()]).toEqual(["part-loamsheet.pane"]);
    mount(environment);
    expect(input("start-farm").value).toBe("Mill Road");
  });

  it("forgets when asked to", () => {
    const storage = shelf();
    mount({ storage: () => storage });
    type("start-farm", "Mill Road");
    button("About").click();
    button("Empty all of it and forget it").click();
    expect(storage.kept.size).toBe(0);
    button("Start a workbook").click();
    expect(input("start-farm").value).toBe("Windmill Hollow Farm");
  });

  it.each<[string, () => PreferenceStorage]>([
    [
      "refuses",
      () => {
        throw new Error("denied");
      },
    ],
    ["holds something else", () => ({ ...shelf(), getItem: () => "{not json" })],
  ])("works without a memory when the storage %s", (_how, storage) => {
    mount({ storage });
    type("start-farm", "Mill Road");
    expect(input("start-farm").value).toBe("Mill Road");
  });
});

describe("the browser page's workbook", () => {
  it("offers nothing that the page does not", () => {
    expect(page()).not.toContain("Save as .xlsx");
  });

  it("tells the name of the saved file", async () => {
    mount({ kind: "browser", saveFile: async () => "farm.xlsx" });
    button("Save as .xlsx").click();
    await settled();
    expect(page()).toContain("farm.xlsx is saved");
  });

  describe("with several kept", () => {
    const kept = () => {
      const entries = [
        { id: "a", title: "Windmill Hollow", changed: 0, isOpen: true },
        { id: "b", title: "Mill Road", changed: 0, isOpen: false },
      ];
      return {
        list: jest.fn(async () => entries),
        open: jest.fn<Promise<void>, [string]>(async () => undefined),
        add: jest.fn(async () => undefined),
        rename: jest.fn<Promise<void>, [string]>(async () => undefined),
        remove: jest.fn<Promise<void>, [string]>(async () => undefined),
        openFile: jest.fn<Promise<{ title: string; leftOut: string[] }>, [File]>(async () => ({
          title: "Mill Road",
          leftOut: ["pictures"],
        })),
      };
    };
    async function openList(workbooks: KeptWorkbooks): Promise<void> {
      mount({ kind: "browser", workbooks });
      button("Workbooks").click();
      await settled();
    }

    it("lists them, says which is open, and closes the list with Escape", async () => {
      await openList(kept());
      expect(page()).toContain("Windmill Hollow");
      expect(page()).toContain("open now");
      expect(document.activeElement).toBe(byId("shelf-heading"));
      byId("shelf-heading").dispatchEvent(new KeyboardEvent("keydown", { key: "Escape", bubbles: true }));
      expect(page()).not.toContain("Mill Road");
      expect(document.activeElement).toBe(byId("strip-shelf"));
    });

    it("opens another, begins a new one and renames the open one", async () => {
      const workbooks = kept();
      await openList(workbooks);
      button("Open").click();
      await settled();
      expect(workbooks.open).toHaveBeenCalledWith("b");
      expect(page()).toContain("Mill Road is open.");
      button("New workbook").click();
      await settled();
      expect(workbooks.add).toHaveBeenCalledTimes(1);
      button("Rename").click();
      await settled();
      expect(workbooks.rename).not.toHaveBeenCalled();
      type("shelf-title", "  Home farm ");
      button("Rename").click();
      await settled();
      expect(workbooks.rename).toHaveBeenCalledWith("Home farm");
    });

    it("asks before it removes one, and Escape keeps it", async () => {
      const workbooks = kept();
      await openList(workbooks);
      button("Remove").click();
      byId("shelf-question").dispatchEvent(new KeyboardEvent("keydown", { key: "Escape", bubbles: true }));
      expect(page()).not.toContain("Remove it");
      button("Remove").click();
      expect(workbooks.remove).not.toHaveBeenCalled();
      button("Remove it").click();
      await settled();
      expect(workbooks.remove).toHaveBeenCalledWith("b");
    });

    it("opens a file and says what of it has no place", async () => {
      const workbooks = kept();
      await openList(workbooks);
      const file = new File(["…"], "mill-road.xlsx");
      Object.defineProperty(input("shelf-file"), "files", { value: [file] });
      input("shelf-file").dispatchEvent(new Event("input", { bubbles: true }));
      await settled();
      expect(workbooks.openFile).toHaveBeenCalledWith(file);
      expect(page()).toContain("Mill Road is open. This page has no place for its pictures");
    });

    it("says why when one cannot be opened", async () => {
      const workbooks = kept();
      workbooks.open.mockRejectedValue(new HostError("This workbook is no longer kept in this browser.", "NotKept"));
      await openList(workbooks);
      button("Open").click();
      await settled();
      expect(page()).toContain("no longer kept in this browser");
    });
  });

  it("says so at the top when something unforeseen happens, and loses nothing", async () => {
    mount({ kind: "browser", saveFile: () => Promise.reject(new Error("disk on fire")) });
    type("start-farm", "Mill Road");
    button("Save as .xlsx").click();
    await settled();
    expect(document.activeElement?.textContent).toContain("disk on fire");
    expect(input("start-farm").value).toBe("Mill Road");
  });
});
