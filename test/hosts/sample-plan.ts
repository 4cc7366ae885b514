import type { CellPlan, SheetPlan, WorkbookPlan } from "../../src/workbook/plan";
import { cell, formula, plan, sheet } from "./plan-parts";

/** Three invented fields with every kind of thing a plan may hold. */
export function samplePlan(): WorkbookPlan {
  return plan(
    [fieldsSheet(), pricesSheet()],
    [{ name: "corn_price", sheet: "Price list", area: { top: 2, left: 1, bottom: 2, right: 1 }, says: "corn price" }],
  );
}

const heads = ["Field", "Acres", "Yield", "Crop", "Bushels", "Income"];
const fields = [
  ["Home Quarter", 154, 205, "corn"],
  ["Sand Knob", 61, 165, "corn"],
  ["Creek Bend", 96, 54, "soybean"],
] as const;

function fieldsSheet(): SheetPlan {
  const top: CellPlan[] = [
    cell(0, 0, "What each field brings in", "title"),
    cell(1, 0, "Change the shaded cells; the rest follows.", "answers"),
    { row: 1, column: 4, content: "Prices", style: "link", link: "Price list" },
  ];
  const head = heads.map((content, column): CellPlan => ({ row: 2, column, content, style: "head" }));
  const rows = fields.flatMap(([field, acres, yieldBuPerAc, crop], index): CellPlan[] => [
    cell(3 + index, 0, field, "inputText"),
    cell(3 + index, 1, acres, "input", "#,##0"),
    cell(3 + index, 2, yieldBuPerAc, "input", "#,##0.0"),
    cell(3 + index, 3, crop, "inputText"),
    {
      row: 3 + index,
      column: 4,
      content: formula("=Fields[[#This Row],[Acres]]*Fields[[#This Row],[Yield]]"),
      style: "computed",
      format: "#,##0",
    },
    {
      row: 3 + index,
      column: 5,
      content: formula(`=E${4 + index}*IF(D${4 + index}="corn",corn_price,'Price list'!$B$4)`),
      style: "computed",
      format: "$#,##0",
    },
  ]);
  const totals: CellPlan[] = [
    cell(6, 0, "Total", "totalText"),
    cell(6, 1, formula("=SUM(B4:B6)"), "total", "#,##0"),
    ...[2, 3].map((column): CellPlan => ({ row: 6, column, style: "totalText" })),
    cell(6, 4, formula("=SUM(E4:E6)"), "total", "#,##0"),
    cell(6, 5, formula("=SUM(F4:F6)"), "total", "$#,##0"),
  ];
  const spill: CellPlan[] = [
    cell(8, 0, "Largest first", "section"),
    {
      row: 9,
      column: 0,
      content: { formula: "=SORT(B4:B6,1,-1)", spill: { rows: 3, columns: 1 } },
      style: "computed",
    },
    { row: 10, column: 0, style: "computed" },
    { row: 11, column: 0, style: "computed" },
  ];
  const corner = (left: number, top_: number, right: number, bottom: number) => ({ top: top_, left, bottom, right });
  const column = (number: number) => ({ sheet: "Fields", area: corner(number, 3, number, 5) });
  return sheet("Fields", [...top, ...head, ...rows, ...totals, ...spill], {
    tabColor: "#2c6e5a",
    columnWidths: [22, 10, 10, 12, 12, 14],
    rowHeights: { 0: 28, 2: 32 },
    freeze: { rows: 3, columns: 1 },
    tables: [{ name: "Fields", area: corner(0, 2, 5, 6), totals: true }],
    validations: [
      {
        kind: "between",
        area: corner(1, 3, 1, 5),
        min: 0,
        max: 5000,
        whole: false,
        prompt: "Acres of the field.",
        refusal: "Acres must be between 0 and 5,000.",
      },
      {
        kind: "list",
        area: corner(3, 3, 3, 5),
        words: ["corn", "soybean", "wheat"],
        prompt: "Crop of the year.",
        refusal: "Use corn, soybean or wheat.",
      },
    ],
    rules: [
      { kind: "bar", area: corner(4, 3, 4, 5), color: "#a9bed4" },
      { kind: "compare", area: corner(2, 3, 2, 5), when: "below", value: 60, look: "attention" },
      { kind: "formula", area: corner(5, 3, 5, 5), formula: "=F4>100000", look: "good" },
      { kind: "scale", area: corner(0, 9, 0, 11), low: "#f7e4e6", middle: "#ffffff", high: "#e3f0ea" },
    ],
    charts: [
      {
        kind: "column",
        title: "Income by field",
        alt: "Columns of the income of three fields.",
        categories: column(0),
        series: [{ name: "Income", values: column(5), color: "#2f4f6f" }],
        yTitle: "dollars",
        yFormat: "$#,##0",
        at: corner(1, 8, 5, 22),
      },
    ],
    notes: [{ row: 2, column: 2, text: "Bushels an acre at the usual market moisture." }],
  });
}

function pricesSheet(): SheetPlan {
  const rows: CellPlan[] = [
    cell(0, 0, "Prices to plan with", "title"),
    cell(2, 0, "Corn, $/bu", "label"),
    cell(2, 1, 4, "input", "$#,##0.00"),
    cell(3, 0, "Soybean, $/bu", "label"),
    cell(3, 1, 10, "input", "$#,##0.00"),
  ];
  return sheet("Price list", rows, { columnWidths: [22, 12] });
}
