import { formula } from "../../../formula/expression";
import { place } from "../../../formula/reference";
import type { ChartsBlock } from "../../../model/block";
import { formats } from "../../../model/cell";
import { remarks } from "../../../model/paragraphs";
import type { SheetModel } from "../../../model/workbook-model";
import { chartColors } from "../../chart-colors";
import { tabColors } from "../../tab-colors";
import type { FarmContext } from "../farm-context";
import { farmSheets } from "../farm-sheets";
import { potashLedger } from "../headers";
import { named } from "../names";
import { findingsBlock } from "./summary-findings";
import { ordersBlock } from "./summary-orders";
import { seasonBlock } from "./summary-season";

/** One printed page for the kitchen table, the landlord or the lender. */
export function summarySheet(context: FarmContext): SheetModel {
  return {
    key: "summary",
    name: farmSheets.summary.name,
    tabColor: tabColors.summary,
    title: formula`${named("farmName")}&", "&${named("season")}`,
    answers: "What the plan brings and costs, what the soil is doing, and what to order.",
    blocks: [
      seasonBlock(context),
      findingsBlock(context),
      ordersBlock(),
      charts(),
      remarks(
        "A plan, not a promise: yields, prices and costs are those typed on the sheets behind this page. " +
          "Needs come from the published guide named there; check against the current bulletin.",
      ),
    ],
    widths: [36, 11, 15, 15, 15, 15],
    print: { orientation: "portrait", onePage: true },
  };
}

function charts(): ChartsBlock {
  return {
    kind: "charts",
    rows: 16,
    charts: [
      {
        kind: "column",
        title: "Income and costs of an acre",
        alt: "Columns for each crop: income, running costs and all costs per acre.",
        categories: place("budget.heads"),
        series: [
          { name: "Income", values: place("budget.gross"), color: chartColors.income },
          { name: "Running costs", values: place("budget.running"), color: chartColors.running },
          { name: "All costs", values: place("budget.total"), color: chartColors.all },
        ],
        yTitle: "$/ac",
        yFormat: formats.dollars,
        columns: { first: 0, last: 1 },
      },
      {
        kind: "bar",
        title: "Potash put on less taken, a year",
        alt: "A bar for each field: pounds of K2O per acre and year put on less taken; below zero draws the soil down.",
        categories: potashLedger.all("field"),
        series: [{ name: "lb K2O/ac a year", values: potashLedger.all("perYear"), color: chartColors.soil }],
        yTitle: "lb/ac a year",
        yFormat: "0",
        columns: { first: 2, last: 5 },
      },
    ],
  };
}
