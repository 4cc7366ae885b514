import { formula, type Expression, type Term } from "../../formula/expression";
import { capitalOf, shown } from "../../formula/natives";
import { nameOf, place } from "../../formula/reference";
import type { ChartsBlock, EntriesBlock, RowsBlock } from "../../model/block";
import { formats } from "../../model/cell";
import { computedEntry, wordsEntry } from "../../model/entries";
import { remarks } from "../../model/paragraphs";
import { sentencesBlock } from "../../model/rows";
import type { SheetModel } from "../../model/workbook-model";
import { chartColors } from "../chart-colors";
import { tabColors } from "../tab-colors";
import { clientNames } from "./client-sheet";
import type { ClientContext } from "./client-context";
import { clientTests, comparison, proposals } from "./client-headers";
import { clientSheets } from "./client-sheets";

const named = (key: keyof typeof clientNames) => nameOf(clientNames[key]);

/** The page a consultant leaves on the table. */
export function reportSheet({ soil }: ClientContext): SheetModel {
  return {
    key: "report",
    name: clientSheets.report.name,
    tabColor: tabColors.summary,
    title: formula`${named("client")}&", "&${named("season")}`,
    answers: "What changes, what it brings, and what to test first.",
    blocks: [
      headBlock(),
      totalsBlock(),
      findingsBlock(soil !== undefined),
      charts(),
      remarks(
        "Gains and costs are those typed on the sheets behind this page, examples until written over. Labels, local rules and licensed practice come before any of it.",
      ),
    ],
    widths: [34, 22, 12, 14, 14],
    print: { orientation: "portrait", onePage: true },
  };
}

function headBlock(): EntriesBlock {
  const date = formula`IF(${named("preparedOn")}="","",TEXT(${named("preparedOn")},"mmmm d, yyyy"))`;
  return {
    kind: "entries",
    key: "head",
    entries: [
      wordsEntry({ key: "by", label: "Prepared by" }, formula`${named("preparedBy")}&""`),
      wordsEntry({ key: "on", label: "Date" }, date),
    ],
  };
}

function totalsBlock(): EntriesBlock {
  const acres = comparison.whole("acres");
  const line = (key: string, label: string, value: Expression) =>
    computedEntry({ key, label, unit: "$", format: formats.dollars }, value);
  return {
    kind: "entries",
    key: "totals",
    title: "All fields",
    entries: [
      computedEntry({ key: "acres", label: "Acres", unit: "ac", format: formats.one }, formula`${acres}+0`),
      line("now", "Profit as farmed now", formula`${comparison.whole("totalNow")}+0`),
      line("then", "Profit with the changes agreed", formula`${comparison.whole("totalThen")}+0`),
      line("more", "The changes add", formula`${place("totals.then")}-${place("totals.now")}`),
      computedEntry(
        { key: "perAcre", label: "Over all acres", unit: "$/ac", format: formats.cents },
        formula`IF(${acres}>0,${place("totals.more")}/${acres},"")`,
      ),
    ],
  };
}

function findingsBlock(hasSoilTests: boolean): RowsBlock {
  const soil = hasSoilTests ? [soilSentence()] : [];
  const sentences = [best(), counted(), dearest(), ...soil, formula`${named("note")}&""`];
  return sentencesBlock("What matters", sentences);
}

/** "▲ Potash before soybean in Mill Road nets most: $5 an acre, $1,200 in all." */
function best(): Expression {
  const net = proposals.all("net");
  const top = (column: "change" | "field" | "total") =>
    formula`INDEX(${proposals.all(column)},MATCH(MAX(${net}),${net},0))`;
  const name = formula`${capitalOf(top("change"))}&" in "&${top("field")}`;
  const amount = dollars(formula`MAX(${net})`);
  const found = formula`"▲ "&${name}&" nets most: "&${amount}&" an acre, "&${dollars(top("total"))}&" in all."`;
  return formula`IF(COUNT(${net})=0,"● Waits for proposed changes.",IF(MAX(${net})>0,IFERROR(${found},""),"● No change pays at its likely gain."))`;
}

function counted(): Expression {
  const words = proposals.all("words");
  const many = (sign: string) => formula`COUNTIF(${words},${`${sign} *`})`;
  return formula`IF(COUNT(${proposals.all("net")})=0,"","● "&${many("▲")}&" of "&COUNT(${proposals.all("net")})&" changes pay even at the low gain, "&COUNTIF(${words},"● pays*")&" at the likely gain only (test those), "&${many("▼")}&" do not pay.")`;
}

/** "▼ Tile in Creek Bend needs 8.8 bu/ac to pay; 7.0 is likely." */
function dearest(): Expression {
  const net = proposals.all("net");
  const low = (column: "change" | "field" | "breakEven" | "likely") =>
    formula`INDEX(${proposals.all(column)},MATCH(MIN(${net}),${net},0))`;
  const name = formula`${capitalOf(low("change"))}&" in "&${low("field")}`;
  const found = formula`"▼ "&${name}&" needs "&${shown(low("breakEven"), "0.0")}&" bu/ac to pay; "&${shown(low("likely"), "0.0")}&" is likely."`;
  return formula`IF(COUNT(${net})=0,"",IF(MIN(${net})<0,IFERROR(${found},""),"▲ Every change pays at its likely gain."))`;
}

/** "● By the soil tests 3 of 5 fields call for lime, 4 for phosphate and 5 for potash." */
function soilSentence(): Expression {
  const above = (column: "lime" | "phosphate" | "potash") => formula`COUNTIF(${clientTests.all(column)},">0")`;
  const tested = formula`COUNT(${clientTests.block("ph", "potassium")})`;
  const fields = formula`COUNTIF(${clientTests.all("field")},"?*")`;
  const found = formula`"● By the soil tests "&${above("lime")}&" of "&${fields}&" fields call for lime, "&${above("phosphate")}&" for phosphate and "&${above("potash")}&" for potash."`;
  return formula`IF(${tested}=0,"● Waits for soil tests.",${found})`;
}

function dollars(value: Term): Expression {
  return formula`"$"&${shown(value, "#,##0")}`;
}

function charts(): ChartsBlock {
  return {
    kind: "charts",
    rows: 18,
    charts: [
      {
        kind: "bar",
        title: "Gain that is likely, and gain that pays",
        alt: "Two bars for each change: bushels per acre that are likely, and bushels per acre that pay for it.",
        categories: proposals.all("change"),
        series: [
          { name: "Likely gain", values: proposals.all("likely"), color: chartColors.income },
          { name: "Gain that pays", values: proposals.all("breakEven"), color: chartColors.all },
        ],
        yTitle: "bu/ac",
        yFormat: "0",
        columns: { first: 0, last: 4 },
      },
    ],
  };
}
