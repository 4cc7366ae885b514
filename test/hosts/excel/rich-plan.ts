import type { WorkbookPlan } from "../../../src/workbook/plan";
import { cell, formula, plan, sheet } from "../plan-parts";

const fields = sheet(
  "Fields",
  [
    cell(0, 0, "Fields and what they need", "title"),
    { ...cell(1, 0, "Prices", "link"), link: "Prices list" },
    cell(3, 0, "Field", "head"),
    cell(3, 1, "Acres", "head"),
    cell(3, 2, "Grade", "head"),
    cell(3, 3, "Cost", "head"),
    ...[
      ["Creek Bend", 96, "6-24-24"],
      ["Long Eighty", 78, "0-0-60"],
    ].flatMap(([name, acres, grade], index) => [
      cell(4 + index, 0, name, "inputText"),
      cell(4 + index, 1, acres, "input", "#,##0"),
      cell(4 + index, 2, grade, "inputText"),
      cell(
        4 + index,
        3,
        formula("=Fields[[#This Row],[Acres]]*'Prices list'!$B$2*Price_factor"),
        "computed",
        "$#,##0.00",
      ),
    ]),
    cell(6, 0, "All", "totalText"),
    cell(6, 1, formula("=SUM(Fields[Acres])"), "total"),
    cell(6, 2, "without the last", "totalText"),
    cell(6, 3, undefined, "total"),
    cell(8, 0, "Stands below the table", "wrap"),
    {
      ...cell(9, 0, formula("=LOAM.UNITLIST()")),
      content: { formula: "=LOAM.UNITLIST()", spill: { rows: 3, columns: 1 } },
    },
    cell(10, 0, undefined),
    cell(11, 0, undefined),
  ],
  {
    tabColor: "#5a4636",
    columnWidths: [24, 10, 10, 12],
    rowHeights: { 0: 28 },
    freeze: { rows: 4, columns: 1 },
    tables: [{ name: "Fields", area: { top: 3, left: 0, bottom: 6, right: 3 }, totals: true }],
    validations: [
      {
        kind: "between",
        area: { top: 4, left: 1, bottom: 5, right: 1 },
        min: 0,
        max: 5000,
        whole: false,
        prompt: "Acres of the field",
        refusal: "Acres are between 0 and 5,000.",
      },
      {
        kind: "list",
        area: { top: 4, left: 2, bottom: 5, right: 2 },
        words: "'Prices list'!$A$2:$A$3",
        prompt: "",
        refusal: "Pick a grade from the list.",
      },
    ],
    rules: [
      { kind: "compare", area: { top: 4, left: 3, bottom: 5, right: 3 }, when: "above", value: 500, look: "attention" },
      { kind: "formula", area: { top: 4, left: 0, bottom: 5, right: 3 }, formula: "=$B5>90", look: "good" },
      { kind: "bar", area: { top: 4, left: 1, bottom: 5, right: 1 }, color: "#2f4f6f" },
      {
        kind: "scale",
        area: { top: 4, left: 3, bottom: 5, right: 3 },
        low: "#8a2f3d",
        middle: "#ffffff",
        high: "#2c6e5a",
        middleAt: 0,
      },
    ],
    notes: [{ row: 3, column: 2, text: "N-P2O5-K2O in percent" }],
    print: {
      orientation: "landscape",
      fit: { wide: 1, tall: 0 },
      repeatRows: { first: 3, last: 3 },
      area: { top: 0, left: 0, bottom: 11, right: 3 },
      footer: "&LTrial farm&CPage &P of &N",
    },
  },
);

const categories = { sheet: "Fields", area: { top: 4, left: 0, bottom: 5, right: 0 } };
const across = (row: number) => ({ sheet: "Fields", area: { top: row, left: 1, bottom: row, right: 3 } });
const acres = {
  name: "Acres",
  values: { sheet: "Fields", area: { top: 4, left: 1, bottom: 5, right: 1 } },
  color: "#5a4636",
};
const cost = {
  name: "Cost",
  values: { sheet: "Fields", area: { top: 4, left: 3, bottom: 5, right: 3 } },
  color: "#2f4f6f",
};

const prices = sheet(
  "Prices list",
  [
    cell(0, 0, "Grade", "head"),
    cell(0, 1, "$/ac", "head"),
    cell(1, 0, "6-24-24", "inputText"),
    cell(1, 1, 4.35, "input"),
    cell(2, 0, "0-0-60", "inputText"),
    cell(2, 1, 10.6, "input"),
  ],
  {
    validations: [
      {
        kind: "list",
        area: { top: 1, left: 0, bottom: 2, right: 0 },
        words: ["6-24-24", "0-0-60"],
        prompt: "A grade",
        refusal: "Pick one of the two.",
      },
    ],
    charts: [
      {
        kind: "bar",
        title: "Acres and cost by field",
        alt: "Two bars a field: its acres and its cost.",
        categories,
        series: [acres, cost],
        xTitle: "Field",
        yTitle: "$",
        yFormat: "$#,##0",
        at: { top: 5, left: 0, bottom: 20, right: 6 },
      },
      {
        kind: "line",
        title: "Acres",
        alt: "A line of acres.",
        categories,
        series: [acres],
        at: { top: 22, left: 0, bottom: 36, right: 6 },
      },
      {
        kind: "line",
        title: "A field across",
        alt: "Points and a dashed line.",
        categories: across(3),
        series: [
          { name: "Points", values: across(4), color: "#5a4636", look: "points" },
          { name: "Level", values: across(5), color: "#2f4f6f", look: "dashed" },
        ],
        at: { top: 38, left: 0, bottom: 52, right: 6 },
      },
    ],
  },
);

/** One of everything a plan may hold; formulas lead forward and backward between the sheets. */
export const richPlan: WorkbookPlan = plan(
  [fields, prices],
  [
    {
      name: "Price_factor",
      sheet: "Prices list",
      area: { top: 1, left: 1, bottom: 1, right: 1 },
      says: "What prices are multiplied by",
    },
  ],
);
