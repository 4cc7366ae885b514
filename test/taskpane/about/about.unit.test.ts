/** @jest-environment jsdom */
import { allFunctions } from "../../../src/functions";
import { families } from "../../../src/functions/frame/declaration";
import { HostError, type HostFacts } from "../../../src/hosts/port";
import { mountPane, type Pane, type PaneEnvironment } from "../../../src/taskpane/pane";
import { FakeHost } from "../fake-host";

class OtherHost extends FakeHost {
  constructor(private readonly other: Partial<HostFacts>) {
    super({ cells: {} });
  }

  override async facts(): Promise<HostFacts> {
    return { ...(await super.facts()), ...this.other };
  }
}

let pane: Pane;

function open(environment: Partial<PaneEnvironment> = {}, host: FakeHost = new FakeHost()): Promise<void> {
  document.body.innerHTML = "<div id='root'></div>";
  const root = document.getElementById("root");
  if (root) pane = mountPane(root, host, { kind: "excel", ...environment });
  pane.open("about");
  return settled();
}

const settled = (): Promise<void> => new Promise((done) => setTimeout(done, 10));
const found = () => [...document.querySelectorAll(".about-found li")].map(({ textContent }) => textContent);
const loads = () => document.querySelector<HTMLInputElement>("#about-loads");

async function checkLoamsheet(): Promise<void> {
  [...document.querySelectorAll("button")].find(({ textContent }) => textContent === "Check Loamsheet")?.click();
  await settled();
}

describe("the page around the pane", () => {
  it("opens a part of it and moves the focus there", async () => {
    await open();
    expect(document.activeElement?.id).toBe("about-heading");
    pane.open("find");
    expect(document.activeElement?.id).toBe("find-heading");
  });
});

describe("whether Loamsheet is in order", () => {
  const all = allFunctions.length;
  const kinds = Object.keys(families).length;

  it("is told in words: the spreadsheet, the functions, an example a family, what is missing", async () => {
    await open();
    expect(found()).toEqual([]);
    await checkLoamsheet();
    expect(found()).toEqual([
      expect.stringMatching(/^A spreadsheet in memory, Loamsheet \d+\.\d+\.\d+\.$/),
      `Functions registered: ${all} of ${all}.`,
      `Examples that come out as printed, one a family: ${kinds} of ${kinds}.`,
      "Nothing that Loamsheet uses is missing here.",
    ]);
  });

  it("names functions that the spreadsheet was not given, and what it cannot do", async () => {
    const functions = allFunctions.slice(2).map(({ name }) => name);
    await open({}, new OtherHost({ functions, missing: ["It takes no notes."] }));
    await checkLoamsheet();
    const [first, second] = allFunctions;
    expect(found()).toContain(`Functions registered: ${all - 2} of ${all}.`);
    expect(found()).toContainEqual(expect.stringMatching(`^Not registered: ${first?.name}, ${second?.name}\\.`));
    expect(found()).toContain("It takes no notes.");
    expect(found()).not.toContain("Nothing that Loamsheet uses is missing here.");
  });
});

describe("loading with the workbook", () => {
  function switched(isOn: boolean) {
    const asked: boolean[] = [];
    return { asked, isOn: async () => asked.at(-1) ?? isOn, set: async (on: boolean) => void asked.push(on) };
  }

  it("is not offered where the spreadsheet does not do it", async () => {
    await open();
    expect(loads()).toBeNull();
  });

  it("shows what the workbook holds, and asks nothing of it by itself", async () => {
    const off = switched(false);
    await open({ startup: off });
    expect(loads()?.checked).toBe(false);
    expect(off.asked).toEqual([]);
    await open({ startup: switched(true) });
    expect(loads()?.checked).toBe(true);
  });

  it("goes on and off by the person's own hand", async () => {
    const startup = switched(false);
    await open({ startup });
    loads()?.click();
    await settled();
    expect([startup.asked, loads()?.checked]).toEqual([[true], true]);
    loads()?.click();
    await settled();
    expect([startup.asked, loads()?.checked]).toEqual([[true, false], false]);
  });

  it("stays as it was, with the reason, where the spreadsheet refuses", async () => {
    const refuse = async () => Promise.reject(new HostError("The workbook is read-only.", "AccessDenied"));
    await open({ startup: { isOn: async () => false, set: refuse } });
    loads()?.click();
    await settled();
    expect(loads()?.checked).toBe(false);
    expect(document.querySelector("[role=alert]")?.textContent).toBe("The workbook is read-only.");
  });
});
