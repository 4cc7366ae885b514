import { readFileSync } from "node:fs";
import path from "node:path";
import { addInOfManifest } from "../../../src/build/samples/add-in-of-manifest";
import { problemsOf, waitingCells } from "../../../src/build/samples/problems";
import { samplesReadme } from "../../../src/build/samples/readme";
import { CalculatedCells } from "../../../src/hosts/calculated-workbook";
import { starters } from "../../../src/workbook/starters";
import { smallPlan, smallValues } from "../../hosts/xlsx/small-plan";
import { retyped } from "../../workbook/retyped";

function valuesWith(row: number, column: number, value: Parameters<CalculatedCells["set"]>[3]): CalculatedCells {
  const values = new CalculatedCells();
  for (const sheet of smallPlan.sheets) {
    for (let at = 0; at < 12; at++) {
      for (let across = 0; across < 8; across++) {
        const known = smallValues.valueAt(sheet.name, at, across);
        if (known !== undefined) values.set(sheet.name, at, across, known);
      }
    }
  }
  values.set("Answers", row, column, value);
  return values;
}

describe("problemsOf", () => {
  it("has nothing to say when a cell of ours waits for an input", () => {
    expect(problemsOf(smallPlan, valuesWith(5, 1, { code: "#N/A", message: "waiting for soilTest" }))).toEqual([]);
  });
  it("can list the cells that wait", () => {
    const values = valuesWith(5, 1, { code: "#N/A", message: "waiting for soilTest" });
    expect(waitingCells(smallPlan, values)).toEqual(["Answers!B6 waiting for soilTest"]);
    expect(waitingCells(smallPlan, valuesWith(5, 1, { code: "#N/A", message: "no published value" }))).toEqual([]);
  });
  it("names a cell that shows an error, with our sentence", () => {
    const values = valuesWith(5, 1, { code: "#N/A", message: "no published value" });
    expect(problemsOf(smallPlan, values)).toEqual([
      'Answers!B6 shows #N/A (no published value): =LOAM.TESTRATING("K2O",C6,"IA")',
    ]);
  });
  it("names a spilled cell that shows an error", () => {
    const values = valuesWith(8, 2, { code: "#VALUE!" });
    values.set("Answers", 5, 1, "low");
    expect(problemsOf(smallPlan, values)).toEqual(['Answers!C9 shows #VALUE!: =LOAM.REMOVALTABLE("corn",200)']);
  });
  it("lets a cell leave its point out of a chart, and no other error pass there", () => {
    const content = { formula: "=IF(B3>0,B3,NA())" };
    const plan = retyped(smallPlan, "Answers", { row: 5, column: 1 }, content);
    expect(problemsOf(plan, valuesWith(5, 1, { code: "#N/A" }))).toEqual([]);
    expect(problemsOf(plan, valuesWith(5, 1, { code: "#REF!" }))).toHaveLength(1);
  });
  it("names a formula that shows nothing", () => {
    const problems = problemsOf(smallPlan, new CalculatedCells());
    expect(problems).toContain("Answers!B5 shows nothing: =B3>2000");
    expect(problems).toHaveLength(
      smallPlan.sheets.flatMap(({ cells }) => cells.filter(({ content }) => typeof content === "object")).length,
    );
  });
});

describe("addInOfManifest", () => {
  it("finds the id and version of the project's own manifest", () => {
    const manifest = readFileSync(path.resolve(__dirname, "../../../manifest.xml"), "utf8");
    const { id, version } = addInOfManifest(manifest);
    expect(id).toMatch(/^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$/);
    expect(version).toMatch(/^\d+(\.\d+){3}$/);
  });
  it("says which element is missing", () => {
    expect(() => addInOfManifest("<OfficeApp><Id>x</Id></OfficeApp>")).toThrow("manifest.xml has no <Version>.");
  });
});

describe("the page about the samples", () => {
  it("leads to every workbook and its picture", () => {
    const page = samplesReadme(starters);
    for (const { key, title } of starters) {
      expect(page).toContain(`## ${title}: [${key}.xlsx](${key}.xlsx)`);
      expect(page).toContain(`(${key}.png)`);
    }
  });
});
