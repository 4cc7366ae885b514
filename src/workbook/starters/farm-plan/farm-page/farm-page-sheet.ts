import { formula } from "../../../formula/expression";
import { place } from "../../../formula/reference";
import type { ChartsBlock, EntriesBlock } from "../../../model/block";
import { typedEntry } from "../../../model/entries";
import { remarks } from "../../../model/paragraphs";
import { sentencesBlock } from "../../../model/rows";
import type { SheetModel } from "../../../model/workbook-model";
import { chartColors } from "../../chart-colors";
import { inventedFarm } from "../../start-words";
import { tabColors } from "../../tab-colors";
import type { FarmContext } from "../farm-context";
import { named } from "../names";
import { soilSentences } from "../summary/summary-findings";
import { farmSheets } from "../farm-sheets";
import { farmPageSeason } from "./farm-page-season";
import { practicesInWords } from "./practices-in-words";

/** One upright page to lay before a landlord or a lender. */
export function farmPageSheet(context: FarmContext): SheetModel {
  return {
    key: "farm-page",
    name: farmSheets["farm-page"].name,
    tabColor: tabColors.summary,
    title: formula`${named("farmName")}&": plan for "&${named("season")}`,
    answers: "What is planned, what it brings and costs, how far that may range, and why.",
    blocks: [
      forWhom(),
      farmPageSeason(context),
      sentencesBlock("The soil", soilSentences()),
      ...(context.parts.includes("practices") ? [practicesInWords()] : []),
      chart(),
      remarks(
        "Yields, prices and costs are the farm's own plan. Needs of the soil come from the published guide named in the workbook; check against the current bulletin. " +
          "Removal, lime and seed come from published extension tables, ranges of profit from lowest, planned and highest yields and prices, chances of practices from stated beliefs and strip trials.",
        "A planning aid, not advice on a loan, lease or tax, and no promise. Labels, local nutrient rules and licensed practice come before any practice named here.",
        ...(context.withDemo ? [inventedFarm] : []),
      ),
    ],
    widths: [42, 14, ...context.crops.map(() => 15), 16, ...(context.crops.length < 3 ? [24] : [])],
    print: { orientation: "portrait", onePage: true },
  };
}

function forWhom(): EntriesBlock {
  return {
    kind: "entries",
    key: "farm-page-head",
    entries: [typedEntry({ key: "for", label: "For", says: "Landlord or lender, and the date." }, null)],
  };
}

function chart(): ChartsBlock {
  const line = (key: string, name: string, color: string) => ({ name, values: place(`outlook.${key}`), color });
  return {
    kind: "charts",
    rows: 12,
    charts: [
      {
        kind: "column",
        title: "Profit of an acre: a bad year, a middling one, a good one",
        alt: "Three columns for each crop: profit per acre that 1 year in 10 is below, half of the years are below, and 1 year in 10 is above.",
        categories: place("outlook.heads"),
        series: [
          line("low", "1 year in 10 below", chartColors.all),
          line("middle", "half of the years below", chartColors.running),
          line("high", "1 year in 10 above", chartColors.income),
        ],
        yTitle: "$/ac",
        yFormat: "$#,##0;-$#,##0",
        columns: { first: 0, last: 4 },
      },
    ],
  };
}
