import { riskLimits } from "../../../../core/risk/risk-limits";
import { profitOdds, profitRange } from "../../../../functions/money/risk";
import { call } from "../../../formula/call";
import { formula, type Expression, type Term } from "../../../formula/expression";
import { place, type Reference } from "../../../formula/reference";
import type { MatrixBlock, MatrixRow } from "../../../model/block";
import { formats } from "../../../model/cell";
import { computedRow, headingRow, typedRow } from "../../../model/matrix-rows";
import { remarks } from "../../../model/paragraphs";
import type { SheetModel } from "../../../model/workbook-model";
import { outlookTerms } from "../../../scenario/practice-plans";
import { tabColors } from "../../tab-colors";
import { beforeHauling, budgetCell } from "../budgets/budget-rows";
import { cropHeads, ofCrop } from "../crop-lookup";
import type { FarmContext } from "../farm-context";
import { ofSet } from "../stack/budget-with-practices";
import { farmSheets } from "../farm-sheets";

type Columns = MatrixBlock["columns"];

/** A figure of the range of profit: its line and its crop. */
export function outlookCell(line: string, column: string): Reference {
  return place(`outlook.${line}.${column}`);
}

const at = outlookCell;

/** Rows of the table of PROFITRANGE, from 1, its heading first. */
const rangeRows = { low: 2, middle: 3, high: 4, mean: 5, worst: 10 } as const;

export function profitRangeSheet(context: FarmContext): SheetModel {
  return {
    key: "profit-range",
    name: farmSheets["profit-range"].name,
    tabColor: tabColors.answer,
    title: "Range of profit",
    answers: "How far profit of an acre may range when yield and price turn out otherwise, and the odds of a loss.",
    blocks: [
      rangeBlock(context),
      remarks(
        "Yield and price each lie on a triangle from lowest over planned to highest. Crop insurance, storage and contracts are not in it: they narrow the range. " +
          "Whether crops do badly in the same year is not asked here, so the ranges of single crops cannot be added up to one of the farm.",
        "A plan, not a promise: how far things may stray is typed above, an example until written over.",
      ),
    ],
    widths: [38, 13, ...context.crops.map(() => Math.max(16, 48 / context.crops.length))],
    print: { orientation: "portrait", onePage: true },
  };
}

function rangeBlock({ crops, parts }: FarmContext): MatrixBlock {
  const columns = cropHeads(crops);
  return {
    kind: "matrix",
    key: "outlook",
    corner: "An acre of",
    columns,
    rows: [
      ...termRows(columns),
      ...spanRows(columns),
      ...answerRows(columns),
      ...(parts.includes("practices") ? withSetRows(columns) : []),
    ],
  };
}

/** How far yields and prices may stray, in percent of the plan. */
function termRows(columns: Columns): MatrixRow[] {
  const percent = (key: keyof typeof outlookTerms, label: string, min: number, max: number, note: string) =>
    typedRow(
      {
        key,
        label,
        unit: "% of plan",
        format: formats.whole,
        note,
        allow: { kind: "between", min, max, prompt: "Percent of what the plan has." },
      },
      columns.map(() => outlookTerms[key]),
    );
  return [
    headingRow("terms-head", "How far they may stray"),
    percent("lowYieldPct", "Lowest yield", 0, 100, "The worst year you can think of; most people set it too high."),
    percent("highYieldPct", "Highest yield", 100, 300, "The best year you can think of."),
    percent("lowPricePct", "Lowest price", 0, 100, "The lowest price you can think of, as far as it is not fixed yet."),
    percent("highPricePct", "Highest price", 100, 500, "The highest price you can think of."),
    typedRow(
      {
        key: "correlation",
        label: "Price and yield move together by",
        unit: "-1 to 1",
        format: "0.00_)",
        note:
          "Below 0 where big crops meet low prices. Counties of Illinois had -0.72 to -0.31 in corn; a single farm less. " +
          "-0.2 is an example to overwrite.",
        allow: { kind: "between", ...riskLimits.correlation, prompt: "From -1 over 0, each its own way, to 1." },
      },
      columns.map(() => outlookTerms.correlation),
    ),
  ];
}

function spanRows(columns: Columns): MatrixRow[] {
  const share = (key: string, label: string, of: "yield" | "price", term: keyof typeof outlookTerms) =>
    computedRow(
      {
        key,
        label,
        ...(of === "yield" ? { unit: "bu/ac", format: formats.one } : { unit: "$/bu", format: formats.cents }),
      },
      columns,
      (column) => formula`${budgetCell(of, column)}*${at(term, column)}/100`,
    );
  return [
    share("lowYield", "Lowest yield", "yield", "lowYieldPct"),
    share("highYield", "Highest yield", "yield", "highYieldPct"),
    share("lowPrice", "Lowest price", "price", "lowPricePct"),
    share("highPrice", "Highest price", "price", "highPricePct"),
  ];
}

/** What our functions of risk ask for; a set of practices shifts the yields and adds its cost. */
function outlook(column: string, costs: "running" | "total", set?: { readonly gain: Term; readonly cost: Term }) {
  const shifted = (yields: Term) => (set ? formula`${yields}+${set.gain}` : yields);
  const cost = beforeHauling(costs, column);
  return {
    lowYield: shifted(at("lowYield", column)),
    likelyYield: shifted(budgetCell("yield", column)),
    highYield: shifted(at("highYield", column)),
    lowPrice: at("lowPrice", column),
    likelyPrice: budgetCell("price", column),
    highPrice: at("highPrice", column),
    cost: set ? formula`${cost}+${set.cost}` : cost,
    correlation: at("correlation", column),
    otherIncome: budgetCell("other", column),
    costPerBushel: ofCrop(budgetCell("head", column), "costPerBushel"),
  };
}

const dollars = { unit: "$/ac", format: formats.dollars } as const;
const chance = { unit: "of the years", format: formats.chance } as const;
const loses = [{ kind: "compare", when: "below", value: 0, look: "bad" }] as const;

function answerRows(columns: Columns): MatrixRow[] {
  const row = (key: keyof typeof rangeRows, label: string, note?: string) =>
    computedRow(
      { key, label, ...dollars, rules: loses, ...(note !== undefined && { note }) },
      columns,
      (column) => formula`INDEX(${call(profitRange, outlook(column, "total"))},${rangeRows[key]},2)`,
    );
  const odds =
    (costs: "running" | "total") =>
    (column: string): Expression =>
      call(profitOdds, outlook(column, costs));
  return [
    headingRow("answers-head", "Profit over all costs"),
    row("low", "1 year in 10 is below"),
    row("middle", "Half of the years are below"),
    row("high", "1 year in 10 is above"),
    row("mean", "Mean of all years"),
    row("worst", "Mean of the worst 1 year in 20", "What the bad years come to when they come."),
    computedRow({ key: "coversRunning", label: "Running costs are covered in", ...chance }, columns, odds("running")),
    computedRow(
      { key: "coversAll", label: "All costs are covered in", ...chance, total: true },
      columns,
      odds("total"),
    ),
  ];
}

/** The same with the practices of the stack; crops they are not for stay as they are. */
function withSetRows(columns: Columns): MatrixRow[] {
  const withSet = (column: string) =>
    outlook(column, "total", { gain: ofSet("gain", column), cost: ofSet("cost", column) });
  const row = (key: "low" | "mean", label: string) =>
    computedRow(
      { key: `${key}WithSet`, label, ...dollars, rules: loses },
      columns,
      (column) => formula`INDEX(${call(profitRange, withSet(column))},${rangeRows[key]},2)`,
    );
  return [
    headingRow("set-head", "With the practices of the stack"),
    row("low", "With them, 1 year in 10 is below"),
    row("mean", "With them, mean of all years"),
    computedRow(
      { key: "coversAllWithSet", label: "With them, all costs are covered in", ...chance, total: true },
      columns,
      (column) => call(profitOdds, withSet(column)),
    ),
  ];
}
