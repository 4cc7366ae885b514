/** @jest-environment jsdom */
import { allFunctions } from "../../../src/functions";
import { exampleFormula } from "../../../src/functions/frame/formula-text";
import { mountPane } from "../../../src/taskpane/pane";
import { reportSelection } from "../../../src/taskpane/pane/working/report";
import { reportText } from "../../../src/taskpane/pane/working/report-text";
import { FakeHost } from "../fake-host";
import { button, byId } from "../on-page";

let host: FakeHost;

const settled = (): Promise<void> => new Promise((done) => setTimeout(done, 5));
const said = (): string => document.querySelector(".copy .outcome")?.textContent ?? "";

function clipboard(writeText: ((text: string) => Promise<void>) | undefined): void {
  Object.defineProperty(navigator, "clipboard", { value: writeText && { writeText }, configurable: true });
}

beforeEach(async () => {
  host = new FakeHost({
    cells: {
      "Fields!A1": { value: 200 },
      "Fields!B1": { formula: '=LOAM.REMOVAL("corn",A1,"K2O")', value: 40 },
      "Fields!B2": { value: 7 },
    },
  });
  host.selected = "Fields!B1";
  document.body.innerHTML = "<div id='root'></div>";
  mountPane(byId("root"), host, { kind: "excel" });
  button("Show the working").click();
  await settled();
});

describe("the working as text", () => {
  it("tells the answer, what went in with its unit and place, the steps and the source", async () => {
    const text = reportText(await reportSelection(host));
    const lines = text.split("\n");
    expect(lines.slice(0, 2)).toEqual(["Fields!B1 shows 40 lb/ac", 'The formula: =LOAM.REMOVAL("corn",A1,"K2O")']);
    expect(lines).toContain("  crop: corn (typed in the formula)");
    expect(lines.find((line) => line.startsWith("  yield: 200"))).toMatch(/\(Fields!A1\)$/);
    expect(text).toMatch(/Bulletin 974/);
    expect(text).toMatch(/Steps\n {2}\S/);
  });

  it("tells also whose answer the cell belongs to, and what the formula leaves aside", async () => {
    const other = new FakeHost({
      cells: {
        "Fields!A1": { value: "corn" },
        "Fields!A2": { value: "soybean" },
        "Fields!B1": { formula: '=LOAM.REMOVAL(A1:A2,60,"K2O")', value: 12 },
        "Fields!B2": { value: 69 },
        "Fields!C1": { formula: '=IF(A1="corn",LOAM.REMOVAL(A1,60,"K2O"),LOAM.PRODUCTRATE(40,50))', value: 12 },
      },
    });
    other.selected = "Fields!B2";
    expect(reportText(await reportSelection(other))).toContain(
      "\nIt belongs to the answer of the formula in Fields!B1.\n",
    );
    other.selected = "Fields!C1";
    expect(reportText(await reportSelection(other))).toContain("\nThe formula leaves PRODUCTRATE aside:");
  });

  it("holds everything that the page shows of it", async () => {
    for (const name of ["LIMENEED", "POTASHNEED", "REPLANTGAIN"]) {
      const fn = allFunctions.find((one) => one.name === name);
      host = new FakeHost({ cells: { "Fields!C1": { formula: fn ? exampleFormula(fn) : "", value: 0 } } });
      host.selected = "Fields!C1";
      document.body.innerHTML = "<div id='root'></div>";
      mountPane(byId("root"), host, { kind: "excel" });
      button("Show the working").click();
      await settled();
      const text = reportText(await reportSelection(host));
      const squeeze = (line: string): string => line.replace(/[^\p{L}\d]/gu, "");
      const copied = squeeze(text);
      const shown = [...document.querySelectorAll(".call th, .call td, .call li, .call .caution")];
      expect(shown.length).toBeGreaterThan(8);
      for (const part of shown) {
        const words = [...part.childNodes].map(({ textContent }) => squeeze(textContent ?? ""));
        for (const word of words) expect([name, word, copied.includes(word)]).toEqual([name, word, true]);
      }
    }
  });

  it.each([
    // Of the two examples, the lime need rests on rows quoted from memory and the removal on rows seen in print.
    ["LIMENEED", true],
    ["REMOVAL", false],
  ])("says for %s whether a number wants a look at the current bulletin: %s", async (name, wantsCheck) => {
    const fn = allFunctions.find((one) => one.name === name);
    const other = new FakeHost({ cells: { "Fields!C1": { formula: fn ? exampleFormula(fn) : "", value: 0 } } });
    other.selected = "Fields!C1";
    expect(reportText(await reportSelection(other)).includes("Check against the current bulletin.")).toBe(wantsCheck);
  });
});

describe("copying it", () => {
  it("puts it on the clipboard and says so", async () => {
    const write = jest.fn<Promise<void>, [string]>(async () => undefined);
    clipboard(write);
    button("Copy as text").click();
    await settled();
    expect(write.mock.calls[0]?.[0]).toContain("Fields!B1 shows 40 lb/ac");
    expect(said()).toMatch(/^Copied\./);
    expect(document.getElementById("working-text")).toBeNull();
  });

  it.each([
    ["is missing", undefined],
    ["refuses", () => Promise.reject(new Error("denied"))],
  ])("brings it in a box, marked whole, where the clipboard %s", async (_how, writeText) => {
    clipboard(writeText);
    button("Copy as text").click();
    await settled();
    const box = byId("working-text") as HTMLTextAreaElement; // the box of the text is a text area
    expect(said()).toMatch(/could not be put on the clipboard/);
    expect(document.activeElement).toBe(box);
    expect(box.selectionEnd).toBe(box.value.length);
    expect(box.value).toContain("Bulletin 974");
  });

  it("takes the box away with the next cell", async () => {
    clipboard(undefined);
    button("Copy as text").click();
    await settled();
    host.select("Fields!B2");
    await settled();
    expect(document.getElementById("working-text")).toBeNull();
    expect([...document.querySelectorAll("button")].map(({ textContent }) => textContent)).not.toContain(
      "Copy as text",
    );
  });
});
