import { readFileSync } from "node:fs";
import path from "node:path";
import { addInOfManifest } from "../../../src/build/samples/add-in-of-manifest";
import { makeSample } from "../../../src/build/samples/make-sample";
import { samplesReadme } from "../../../src/build/samples/readme";
import { starters } from "../../../src/workbook/starters";
import { OpenPackage } from "../../hosts/xlsx/open-package";

const project = path.resolve(__dirname, "../../..");
const committed = (name: string) => readFileSync(path.join(project, "sample-workbooks", name));

/** When one of these fails although the workbooks are right, run: npm run samples -- --pictures */
describe.each(starters.map((starter) => [starter.key, starter] as const))("%s.xlsx", (key, starter) => {
  it("is what the code makes, part by part", async () => {
    const addIn = addInOfManifest(readFileSync(path.join(project, "manifest.xml"), "utf8"));
    const made = new OpenPackage((await makeSample(starter, addIn)).bytes);
    const kept = new OpenPackage(committed(`${key}.xlsx`));
    expect(kept.paths).toEqual(made.paths);
    const changed = made.paths.filter((part) => kept.text(part) !== made.text(part));
    expect(changed).toEqual([]);
  }, 60_000);

  it("has every add-in function under its stored name and nothing unknown beside it", () => {
    const kept = new OpenPackage(committed(`${key}.xlsx`));
    const formulas = kept.paths
      .filter((part) => part.startsWith("xl/worksheets/sheet"))
      .flatMap((part) => [...kept.xml(part).getElementsByTagName("f")].map((one) => one.textContent ?? ""));
    expect(formulas.length).toBeGreaterThan(10);
    expect(formulas.filter((formula) => /LOAM\./i.test(formula))).toEqual([]);
    expect(formulas.filter((formula) => formula.includes("_xldudf_LOAM_")).length).toBeGreaterThan(0);
  });

  it("stores add-in functions in the form that keeps its value in a program without the add-in", () => {
    const kept = new OpenPackage(committed(`${key}.xlsx`));
    const arrays = kept.paths
      .filter((part) => part.startsWith("xl/worksheets/sheet"))
      .flatMap((part) => [...kept.xml(part).getElementsByTagName("f")])
      .filter((one) => one.getAttribute("t") === "array" && one.textContent?.includes("_xldudf_LOAM_"));
    expect(arrays.map((one) => one.textContent)).toEqual([]);
  });
});

describe("README.md of the samples", () => {
  it("is what the code makes", () => {
    expect(committed("README.md").toString("utf8")).toBe(samplesReadme(starters));
  });
});
