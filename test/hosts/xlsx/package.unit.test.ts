import { writeXlsx } from "../../../src/hosts/xlsx/write-xlsx";
import { OpenPackage } from "./open-package";
import { smallPlan, smallValues } from "./small-plan";

const addIn = { id: "0f3a2b1c-1111-4222-8333-444455556666", version: "1.2.0.0" };
const sheet1 = "xl/worksheets/sheet1.xml";
const sheet2 = "xl/worksheets/sheet2.xml";

let file: OpenPackage;
beforeAll(async () => {
  file = new OpenPackage(await writeXlsx(smallPlan, smallValues, { addIn }));
});

describe("the package", () => {
  it("holds well-formed XML only", () => {
    for (const part of file.paths) expect(() => file.xml(part)).not.toThrow();
  });

  it("gives every part a content type", () => {
    const types = file.xml("[Content_Types].xml");
    const named = new Set([...types.getElementsByTagName("Override")].map((one) => one.getAttribute("PartName")));
    const endings = new Set([...types.getElementsByTagName("Default")].map((one) => one.getAttribute("Extension")));
    for (const part of file.paths.filter((one) => one !== "[Content_Types].xml")) {
      expect({ part, typed: named.has(`/${part}`) || endings.has(part.split(".").at(-1) ?? "") }).toEqual({
        part,
        typed: true,
      });
    }
    for (const name of named) expect(file.paths).toContain(name?.slice(1));
  });

  it("leads every relationship to a part, and every r:id to a relationship", () => {
    for (const part of file.paths.filter((one) => !one.endsWith(".rels"))) {
      const targets = file.relationships(part);
      for (const target of targets.values()) expect(file.paths).toContain(target);
      for (const [, id] of file.text(part).matchAll(/r:(?:id|embed)="([^"]*)"/g)) {
        expect({ part, ids: [...targets.keys()] }).toEqual({ part, ids: expect.arrayContaining([id]) as unknown });
      }
    }
  });

  /** Order of children of a worksheet: ISO/IEC 29500-1, CT_Worksheet. */
  it("keeps the children of a worksheet in the order of the schema", () => {
    const order = `sheetPr dimension sheetViews sheetFormatPr cols sheetData sheetCalcPr sheetProtection protectedRanges
      scenarios autoFilter sortState dataConsolidate customSheetViews mergeCells phoneticPr conditionalFormatting
      dataValidations hyperlinks printOptions pageMargins pageSetup headerFooter rowBreaks colBreaks customProperties
      cellWatches ignoredErrors smartTags drawing legacyDrawing legacyDrawingHF drawingHF picture oleObjects controls
      webPublishItems tableParts extLst`.split(/\s+/);
    for (const part of [sheet1, sheet2]) {
      const places = [...file.xml(part).documentElement.children].map((child) => order.indexOf(child.localName));
      expect(places).not.toContain(-1);
      expect(places).toEqual([...places].sort((a, b) => a - b));
    }
  });

  it("does not ask for a calculation on opening, which would drop the add-in's cached values", () => {
    expect(file.text("xl/workbook.xml")).not.toContain("fullCalcOnLoad");
    expect(file.text("xl/workbook.xml")).toContain('<calcPr calcId="191029"/>');
  });
});

describe("cells", () => {
  it("store an add-in function plainly with what it showed, so that it stays in sight without the add-in", () => {
    expect(file.cell(sheet1, "E5")).toMatch(
      /^<c r="E5" s="\d+"><f>_xldudf_LOAM_REMOVAL\(Fields\[\[#This Row\],\[Crop\]\],Fields\[\[#This Row\],\[Yield\]\],"K2O"\)<\/f><v>32\.8<\/v><\/c>$/,
    );
  });
  it("store an add-in function inside a native one the same way", () => {
    expect(file.cell(sheet2, "B3")).toContain(
      '<f t="array" ref="B3">SUM(_xldudf_LOAM_REMOVAL(Crops,Yields,"K2O")*Fields[Acres])</f><v>10676.6</v>',
    );
  });
  it("store a native formula plainly", () => {
    expect(file.cell(sheet1, "F5")).toMatch(
      /^<c r="F5" s="\d+"><f>Fields\[\[#This Row\],\[Removal\]\]\*Fields\[\[#This Row\],\[Acres\]\]<\/f><v>2574\.8<\/v><\/c>$/,
    );
  });
  it("keep cached text, truth values and errors as what they are", () => {
    expect(file.cell(sheet2, "B4")).toMatch(/ t="str"><f>_xlfn\.XLOOKUP\(.*<v>=cmd\|' \/C calc'!A0<\/v><\/c>$/);
    expect(file.cell(sheet2, "B5")).toMatch(/ t="b"><f>B3&gt;2000<\/f><v>1<\/v><\/c>$/);
    expect(file.cell(sheet2, "B6")).toMatch(/ t="e"><f>_xldudf_LOAM_TESTRATING.*<\/f><v>#N\/A<\/v><\/c>$/);
  });
  it("hold a spilled block as one formula and plain values", () => {
    expect(file.cell(sheet2, "B8")).toContain('<f t="array" ref="B8:C9">_xldudf_LOAM_REMOVALTABLE("corn",200)</f>');
    expect(file.cell(sheet2, "C9")).toMatch(/^<c r="C9" s="\d+"><v>134<\/v><\/c>$/);
    expect(file.cell(sheet2, "B9")).toMatch(/^<c r="B9" t="s" s="\d+"><v>\d+<\/v><\/c>$/);
  });
  it("name dynamic arrays in the metadata that cm points at", () => {
    const metadata = file.xml("xl/metadata.xml");
    expect(metadata.getElementsByTagName("metadataType")[0]?.getAttribute("name")).toBe("XLDAPR");
    expect(metadata.getElementsByTagName("xda:dynamicArrayProperties")[0]?.getAttribute("fDynamic")).toBe("1");
  });
  it("keep a name that a person began with = as text, in a cell that stays text", () => {
    const cell = file.cell(sheet1, "A6");
    expect(cell).toMatch(/^<c r="A6" t="s" s="\d+"><v>\d+<\/v><\/c>$/);
    const style = Number(/ s="(\d+)"/.exec(cell)?.[1]);
    const styles = file.xml("xl/styles.xml");
    const formats = [...(styles.querySelector("cellXfs")?.children ?? [])];
    const formatId = formats[style]?.getAttribute("numFmtId");
    expect(styles.querySelector(`numFmt[numFmtId="${formatId}"]`)?.getAttribute("formatCode")).toBe("@");
  });
});

describe("a sheet", () => {
  it("leads from a cell to the head of another sheet", () => {
    const link = file.xml(sheet1).getElementsByTagName("hyperlink")[0];
    expect([link?.getAttribute("ref"), link?.getAttribute("location")]).toEqual(["E2", "Answers!A1"]);
  });
  it("shows no grid lines, like the printed page", () => {
    expect(file.xml(sheet1).getElementsByTagName("sheetView")[0]?.getAttribute("showGridLines")).toBe("0");
  });
  it("has a box for its note that is large enough", () => {
    const anchor = file.xml("xl/drawings/vmlDrawing1.vml").getElementsByTagName("x:Anchor")[0]?.textContent;
    // 260 pixels from column F: F is 14 digits wide (103 px), G 12 (89 px), so 68 pixels into H. Two lines of 16
    // pixels and 14 around them from row 4, which is 32 points (43 px) high: 3 pixels into row 5.
    expect(anchor).toBe("5,15,3,2,7,68,4,3");
  });
});

describe("a table", () => {
  it("knows the formula of a column, so that a new row gets it", () => {
    const table = file.xml("xl/tables/table1.xml");
    const columns = [...table.getElementsByTagName("tableColumn")];
    const inside = (index: number) => columns[index]?.getElementsByTagName("calculatedColumnFormula")[0];
    expect(inside(4)?.textContent).toBe(
      '_xldudf_LOAM_REMOVAL(Fields[[#This Row],[Crop]],Fields[[#This Row],[Yield]],"K2O")',
    );
    expect(inside(4)?.getAttribute("array")).toBeNull();
    expect(inside(5)?.textContent).toBe("Fields[[#This Row],[Removal]]*Fields[[#This Row],[Acres]]");
    expect(inside(5)?.getAttribute("array")).toBeNull();
    expect(inside(2)).toBeUndefined();
  });
  it("knows what its totals row holds", () => {
    const [field, , acres] = file.xml("xl/tables/table1.xml").getElementsByTagName("tableColumn");
    expect(field?.getAttribute("totalsRowLabel")).toBe("Total");
    expect(acres?.getAttribute("totalsRowFunction")).toBe("custom");
    expect(acres?.getElementsByTagName("totalsRowFormula")[0]?.textContent).toBe("SUBTOTAL(109,Fields[Acres])");
  });
});

describe("charts", () => {
  it("keep the points they draw, leaving out errors", () => {
    const points = [...file.xml("xl/charts/chart1.xml").getElementsByTagName("c:numCache")].map((cache) =>
      [...cache.getElementsByTagName("c:v")].map((value) => Number(value.textContent)),
    );
    expect(points).toEqual([[2574.8, 4363.56, 3738.24]]);
    const names = [...file.xml("xl/charts/chart1.xml").getElementsByTagName("c:strCache")][0];
    expect(names?.textContent).toBe("North eighty=cmd|' /C calc'!A0Mill & Road");
  });
  it("scatter points without a line between them", () => {
    const series = file.xml("xl/charts/chart2.xml").getElementsByTagName("c:ser")[0];
    const line = series?.getElementsByTagName("c:spPr")[0]?.getElementsByTagName("a:ln")[0];
    expect(line?.innerHTML).toBe('<a:noFill xmlns:a="http://schemas.openxmlformats.org/drawingml/2006/main"/>');
  });
  it("draw points alone, and a level line dotted and without markers", () => {
    const [points, level] = [...file.xml("xl/charts/chart3.xml").getElementsByTagName("c:ser")];
    expect(points?.getElementsByTagName("a:ln")[0]?.getElementsByTagName("a:noFill")).toHaveLength(1);
    expect(points?.getElementsByTagName("c:symbol")[0]?.getAttribute("val")).toBe("circle");
    expect(level?.getElementsByTagName("a:prstDash")[0]?.getAttribute("val")).toBe("sysDot");
    expect(level?.getElementsByTagName("c:symbol")[0]?.getAttribute("val")).toBe("none");
  });
  it("lay bars on one line only where the plan says so", () => {
    const overlaps = (number: number) =>
      [...file.xml(`xl/charts/chart${number}.xml`).getElementsByTagName("c:overlap")].map((one) =>
        one.getAttribute("val"),
      );
    expect([overlaps(1), overlaps(4)]).toEqual([[], ["100"]]);
  });
  it("draw no 0 where a line has no number", () => {
    const blanks = file.xml("xl/charts/chart3.xml").getElementsByTagName("c:dispBlanksAs")[0];
    expect(blanks?.getAttribute("val")).toBe("span");
  });
  it("say what they show", () => {
    const frames = [...file.xml("xl/drawings/drawing1.xml").getElementsByTagName("xdr:cNvPr")];
    expect(frames.map((frame) => frame.getAttribute("descr"))).toEqual(
      smallPlan.sheets[0]?.charts.map(({ alt }) => alt),
    );
  });
});

describe("conditional formats", () => {
  it("give data bars the younger half, linked by id", () => {
    const sheet = file.xml(sheet1);
    const id = sheet.getElementsByTagName("x14:id")[0]?.textContent;
    const rule = sheet.getElementsByTagName("x14:cfRule")[0];
    expect(id).toMatch(/^\{[0-9A-F-]{36}\}$/);
    expect(rule?.getAttribute("id")).toBe(id);
    expect(sheet.getElementsByTagName("xm:sqref")[0]?.textContent).toBe("C5:C7");
  });
  it("refuse an add-in function, which would never calculate there", async () => {
    const [first, ...rest] = smallPlan.sheets;
    if (!first) throw new Error("no sheet");
    const area = { top: 4, left: 0, bottom: 4, right: 0 };
    const rules = [{ kind: "formula", area, formula: "=LOAM.X(A1)>1", look: "bad" }] as const;
    const plan = { ...smallPlan, sheets: [{ ...first, rules }, ...rest] };
    await expect(writeXlsx(plan, smallValues)).rejects.toThrow("do not work in conditional formats");
  });
});

describe("the web extension", () => {
  it("names the add-in and the functions the workbook calls", () => {
    const extension = file.xml("xl/webextensions/webextension1.xml");
    const reference = extension.getElementsByTagName("we:reference")[0];
    expect([reference?.getAttribute("id"), reference?.getAttribute("version")]).toEqual([addIn.id, addIn.version]);
    const ids = [...extension.getElementsByTagName("we:customFunctionIds")].map((one) => one.textContent);
    expect(ids).toEqual(["_xldudf_LOAM_REMOVAL", "_xldudf_LOAM_REMOVALTABLE", "_xldudf_LOAM_TESTRATING"]);
  });
  it("opens the pane only when asked to", async () => {
    const opens = "Office.AutoShowTaskpaneWithDocument";
    expect(file.text("xl/webextensions/webextension1.xml")).not.toContain(opens);
    const asked = await writeXlsx(smallPlan, smallValues, { addIn: { ...addIn, opensPane: true } });
    expect(new OpenPackage(asked).text("xl/webextensions/webextension1.xml")).toContain(opens);
  });
  it("is left out when no add-in is named", async () => {
    const plain = new OpenPackage(await writeXlsx(smallPlan, smallValues));
    expect(plain.paths.filter((part) => part.includes("webextension"))).toEqual([]);
  });
});

describe("the bytes", () => {
  it("are the same whenever they are written", async () => {
    const first = await writeXlsx(smallPlan, smallValues, { addIn });
    jest.useFakeTimers({ now: new Date("2031-05-06T07:08:09Z"), doNotFake: ["nextTick", "setImmediate"] });
    const second = await writeXlsx(smallPlan, smallValues, { addIn });
    jest.useRealTimers();
    expect(Buffer.from(second).equals(Buffer.from(first))).toBe(true);
  });
  it("name midnight of 1 January 1980 in every zone, the first moment a zip file can", async () => {
    const bytes = Buffer.from(await writeXlsx(smallPlan, smallValues));
    // Local file header: time at byte 10, date at byte 12 as (year - 1980) x 512 + month x 32 + day.
    expect([bytes.readUInt16LE(10), bytes.readUInt16LE(12)]).toEqual([0, 0 * 512 + 1 * 32 + 1]);
  });
});

describe("protection", () => {
  it("is off unless asked for, and then without a password", async () => {
    expect(file.text(sheet1)).not.toContain("sheetProtection");
    const locked = new OpenPackage(await writeXlsx(smallPlan, smallValues, { protect: true }));
    const protection = locked.xml(sheet1).getElementsByTagName("sheetProtection")[0];
    expect(protection?.getAttribute("sheet")).toBe("1");
    expect(protection?.getAttribute("password")).toBeNull();
  });
});
