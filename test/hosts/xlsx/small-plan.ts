import { CalculatedCells } from "../../../src/hosts/calculated-workbook";
import type { SheetPlan, WorkbookPlan } from "../../../src/workbook/plan";
import { cell } from "../plan-parts";

/** A small invented plan with one of everything the writer knows, and what its formulas would show. */
export const fieldsName = "Field list";
const rule = { kind: "compare", when: "below", value: 0, look: "bad" } as const;

const typed = [
  ["North eighty", "corn", 78.5, 205],
  ["=cmd|' /C calc'!A0", "soybean", 61.2, 62],
  ["Mill & Road", "corn", 118, 198],
] as const;

const removal = '=LOAM.REMOVAL(Fields[[#This Row],[Crop]],Fields[[#This Row],[Yield]],"K2O")';
const share = "=Fields[[#This Row],[Removal]]*Fields[[#This Row],[Acres]]";

const fields: SheetPlan = {
  name: fieldsName,
  tabColor: "#5a4636",
  columnWidths: [24, 12, 10, 10, 12, 14, 12, 14],
  rowHeights: { 0: 27, 3: 32 },
  cells: [
    cell(0, 0, "Fields and what they lose", "title"),
    cell(1, 0, "Which field draws potash down fastest?", "answers"),
    { ...cell(1, 4, "To the answers", "link"), link: "Answers" },
    ...["Field", "Crop", "Acres", "Yield", "Removal", "Pounds"].map((text, column) => cell(3, column, text, "head")),
    ...typed.flatMap(([field, crop, acres, bushels], index) => [
      cell(4 + index, 0, field, "inputText"),
      cell(4 + index, 1, crop, "inputText"),
      cell(4 + index, 2, acres, "input", "#,##0.0"),
      cell(4 + index, 3, bushels, "input", "#,##0"),
      cell(4 + index, 4, { formula: removal }, "computed", "#,##0.0"),
      cell(4 + index, 5, { formula: share }, "computed", "#,##0"),
    ]),
    cell(7, 0, "Total", "totalText"),
    cell(7, 1, undefined, "total"),
    cell(7, 2, { formula: "=SUBTOTAL(109,Fields[Acres])" }, "total", "#,##0.0"),
    cell(7, 3, undefined, "total"),
    cell(7, 4, undefined, "total"),
    cell(7, 5, { formula: "=SUBTOTAL(109,Fields[Pounds])" }, "total", "#,##0"),
  ],
  freeze: { rows: 4, columns: 1 },
  tables: [{ name: "Fields", area: { top: 3, left: 0, bottom: 7, right: 5 }, totals: true }],
  validations: [
    {
      kind: "list",
      area: { top: 4, left: 1, bottom: 6, right: 1 },
      words: "='Answers'!$A$10:$A$11",
      prompt: "Pick the crop.",
      refusal: "Choose a crop from the list.",
    },
    {
      kind: "between",
      area: { top: 4, left: 2, bottom: 6, right: 2 },
      min: 0,
      max: 100000,
      whole: false,
      prompt: "Acres planted.",
      refusal: "Acres are between 0 and 100,000.",
    },
  ],
  rules: [
    { ...rule, area: { top: 4, left: 4, bottom: 6, right: 4 } },
    { kind: "formula", area: { top: 4, left: 0, bottom: 6, right: 0 }, formula: '=IFNA($B5,"")="corn"', look: "good" },
    { kind: "bar", area: { top: 4, left: 2, bottom: 6, right: 2 }, color: "#7fb77e" },
    {
      kind: "scale",
      area: { top: 4, left: 3, bottom: 6, right: 3 },
      low: "#f7e4e6",
      middle: "#ffffff",
      high: "#e3f0ea",
      middleAt: 100,
    },
  ],
  charts: [
    {
      kind: "column",
      title: "Pounds of K2O that leave",
      alt: "A column for each field: pounds of K2O that leave with the crop.",
      categories: { sheet: fieldsName, area: { top: 4, left: 0, bottom: 6, right: 0 } },
      series: [
        {
          name: "Pounds",
          values: { sheet: fieldsName, area: { top: 4, left: 5, bottom: 6, right: 5 } },
          color: "#5a4636",
        },
      ],
      xTitle: "Field",
      yTitle: "lb K2O",
      yFormat: "#,##0",
      at: { top: 9, left: 0, bottom: 24, right: 3 },
    },
    {
      kind: "scatter",
      title: "Acres and yield",
      alt: "Each field as a point: acres across, yield up.",
      categories: { sheet: fieldsName, area: { top: 4, left: 2, bottom: 6, right: 2 } },
      series: [
        {
          name: "Yield",
          values: { sheet: fieldsName, area: { top: 4, left: 3, bottom: 6, right: 3 } },
          color: "#2f4f6f",
        },
      ],
      xTitle: "Acres",
      yTitle: "bu/ac",
      at: { top: 9, left: 4, bottom: 24, right: 7 },
    },
  ],
  notes: [{ row: 3, column: 4, text: "Pounds that leave with the grain, at the published content." }],
  print: {
    orientation: "landscape",
    fit: { wide: 1, tall: 0 },
    repeatRows: { first: 3, last: 3 },
    area: { top: 0, left: 0, bottom: 24, right: 7 },
    footer: "&LLoamsheet&RPage &P of &N",
  },
};

const answers: SheetPlan = {
  name: "Answers",
  columnWidths: [34, 14, 14],
  rowHeights: {},
  cells: [
    cell(0, 0, "Answers", "title"),
    cell(2, 0, "Potash removed from all fields", "label"),
    cell(2, 1, { formula: '=SUM(LOAM.REMOVAL(Crops,Yields,"K2O")*Fields[Acres])' }, "total", "#,##0"),
    cell(3, 0, "Heaviest field", "label"),
    cell(3, 1, { formula: "=XLOOKUP(MAX(Fields[Pounds]),Fields[Pounds],Fields[Field])" }, "computedText"),
    cell(4, 0, "More than one ton", "label"),
    cell(4, 1, { formula: "=B3>2000" }, "computed"),
    cell(5, 0, "Waiting for a test", "label"),
    cell(5, 1, { formula: '=LOAM.TESTRATING("K2O",C6,"IA")' }, "computedText"),
    cell(7, 0, "Removal, each field", "section"),
    cell(7, 1, { formula: '=LOAM.REMOVALTABLE("corn",200)', spill: { rows: 2, columns: 2 } }, "computed"),
    cell(7, 2, undefined, "computed"),
    cell(8, 1, undefined, "computed"),
    cell(8, 2, undefined, "computed"),
    cell(9, 0, "corn", "body"),
    cell(10, 0, "soybean", "body"),
  ],
  tables: [],
  validations: [
    {
      kind: "list",
      area: { top: 2, left: 2, bottom: 2, right: 2 },
      words: ["yes", "no"],
      prompt: "",
      refusal: "yes or no",
    },
  ],
  rules: [],
  charts: [
    {
      kind: "line",
      title: "A line",
      alt: "Points and a dotted line.",
      categories: { sheet: fieldsName, area: { top: 4, left: 0, bottom: 6, right: 0 } },
      series: [4, 3].map((column) => ({
        name: `Series ${column}`,
        values: { sheet: fieldsName, area: { top: 4, left: column, bottom: 6, right: column } },
        color: column === 4 ? "#a8501f" : "#2c6e5a",
        look: column === 4 ? "points" : "dotted",
      })),
      at: { top: 12, left: 0, bottom: 26, right: 1 },
    },
    {
      kind: "bar",
      title: "Bars",
      alt: "A bar for each field.",
      categories: { sheet: fieldsName, area: { top: 4, left: 0, bottom: 6, right: 0 } },
      series: [
        {
          name: "Acres",
          values: { sheet: fieldsName, area: { top: 4, left: 2, bottom: 6, right: 2 } },
          color: "#2f4f6f",
        },
      ],
      yTitle: "ac",
      onOneLine: true,
      at: { top: 28, left: 0, bottom: 40, right: 1 },
    },
  ],
  notes: [],
  print: { orientation: "portrait", fit: { wide: 1, tall: 1 }, footer: "" },
};

export const smallPlan: WorkbookPlan = {
  starter: "small",
  title: "Small plan",
  sheets: [fields, answers],
  names: [
    { name: "Crops", sheet: fieldsName, area: { top: 4, left: 1, bottom: 6, right: 1 }, says: "Crop of each field" },
    { name: "Yields", sheet: fieldsName, area: { top: 4, left: 3, bottom: 6, right: 3 }, says: "Yield, bu/ac" },
    { name: "TotalPotash", sheet: "Answers", area: { top: 2, left: 1, bottom: 2, right: 1 }, says: "lb K2O" },
  ],
};

/** Values as a calculation would give them: numbers, text, a truth value, an error, a spilled block. */
export const smallValues = new CalculatedCells();
[32.8, 71.3, 31.68].forEach((pounds, index) => smallValues.set(fieldsName, 4 + index, 4, pounds));
[2574.8, 4363.56, 3738.24].forEach((pounds, index) => smallValues.set(fieldsName, 4 + index, 5, pounds));
smallValues.set(fieldsName, 7, 2, 257.7);
smallValues.set(fieldsName, 7, 5, 10676.6);
smallValues.set("Answers", 2, 1, 10676.6);
smallValues.set("Answers", 3, 1, "=cmd|' /C calc'!A0");
smallValues.set("Answers", 4, 1, true);
smallValues.set("Answers", 5, 1, { code: "#N/A", message: "soilTest is still blank." });
smallValues.set("Answers", 7, 1, "Nutrient");
smallValues.set("Answers", 7, 2, "lb/ac");
smallValues.set("Answers", 8, 1, "N");
smallValues.set("Answers", 8, 2, 134);
