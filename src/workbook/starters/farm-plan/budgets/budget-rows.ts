import { breakEvenPrice, breakEvenYield } from "../../../../functions/money/break-even";
import { removal } from "../../../../functions/nutrients/removal";
import { call } from "../../../formula/call";
import { formula, type Expression, type Term } from "../../../formula/expression";
import { lookUp, quiet, sumOfAmounts } from "../../../formula/natives";
import { place, type Reference } from "../../../formula/reference";
import type { MatrixBlock, MatrixRow } from "../../../model/block";
import { formats, type Allow } from "../../../model/cell";
import { computedRow, headingRow, typedRow, wordsRow } from "../../../model/matrix-rows";
import { costLines, cropExamples, type CostLine } from "../../../scenario/crop-examples";
import { ofCrop } from "../crop-lookup";
import type { FarmContext } from "../farm-context";
import { fieldTable, limePlan } from "../headers";
import { named } from "../names";
import { seedCostOf, seedRateOf } from "../seed/seed-plan-sheet";

type Columns = MatrixBlock["columns"];

const dollars = { unit: "$/ac", format: formats.cents } as const;
const anyAmount: Allow = { kind: "between", min: 0, max: 10_000, prompt: "Dollars per acre." };

/** A figure of the budget: its line and its crop. */
export function budgetCell(line: string, column: string): Reference {
  return place(`budget.${line}.${column}`);
}

/** A line of the budget for a crop chosen elsewhere. */
export function ofBudget(line: string, chosen: Term): Expression {
  return lookUp(chosen, place("budget.heads"), place("budget", line));
}

const at = budgetCell;
const crop = (column: string) => at("head", column);

export function incomeRows(columns: Columns): MatrixRow[] {
  const computed = (key: string, label: string, unit: string, format: string, of: (column: string) => Expression) =>
    computedRow({ key, label, unit, format }, columns, of);
  return [
    computed("acres", "Acres planned", "ac", formats.one, (column) => acresOf(crop(column))),
    computed("yield", "Yield goal", "bu/ac", formats.one, (column) => yieldOf(crop(column))),
    computed("price", "Price", "$/bu", formats.cents, (column) => ofCrop(crop(column), "price")),
    computed(
      "grain",
      "Grain",
      dollars.unit,
      dollars.format,
      (column) => formula`${at("yield", column)}*${at("price", column)}`,
    ),
    typedRow(
      {
        key: "other",
        label: "Other income",
        ...dollars,
        allow: anyAmount,
        note: "Payments, indemnity, straw or stover sold.",
      },
      columns.map(() => 0),
    ),
    computedRow(
      { key: "gross", label: "Income", ...dollars, total: true },
      columns,
      (column) => formula`${at("grain", column)}+${at("other", column)}`,
    ),
  ];
}

export function costRows(context: FarmContext, columns: Columns): MatrixRow[] {
  const typed = (lines: readonly CostLine[]) => lines.map((line) => costRow(context, line));
  return [
    headingRow("running-head", "Running costs"),
    ...inputRows(columns),
    ...typed([
      "weedControl",
      "insectsAndDisease",
      "fuel",
      "repairs",
      "insurance",
      "customHire",
      "hiredLabor",
      "scouting",
    ]),
    ...afterRows(columns),
    computedRow({ key: "running", label: "Running costs in all", ...dollars, total: true }, columns, (column) =>
      sum("seed", "interest", column),
    ),
    headingRow("standing-head", "Costs that stay whatever is planted"),
    ...typed(["machinery", "overhead", "operatorLabor", "land"]),
    computedRow({ key: "standing", label: "Standing costs in all", ...dollars, total: true }, columns, (column) =>
      sum("machinery", "land", column),
    ),
  ];
}

/** Seed, fertilizer and lime, worked out from the other sheets. */
function inputRows(columns: Columns): MatrixRow[] {
  const line = (key: string, label: string, note: string, of: (column: string) => Expression) =>
    computedRow({ key, label, ...dollars, note }, columns, of);
  return [
    line("seed", "Seed and treatment", "At the stand, germination and price on the sheet of assumptions.", (column) =>
      seedCostOf(crop(column), seedRateOf(crop(column))),
    ),
    line(
      "nitrogen",
      "Nitrogen",
      "The rate in the table of crops, at the price of a pound of N.",
      (column) => formula`${ofCrop(crop(column), "nitrogen")}*${named("nitrogenPrice")}`,
    ),
    line("phosphate", "Phosphate the grain takes", "Removal by the grain, at the price of a pound of P2O5.", (column) =>
      taken(column, "P2O5", named("phosphatePrice")),
    ),
    line("potash", "Potash the grain takes", "Removal by the grain, at the price of a pound of K2O.", (column) =>
      taken(column, "K2O", named("potashPrice")),
    ),
    line(
      "lime",
      "Lime, a year's share",
      "The bill of the lime plan over all acres and the years a liming lasts.",
      limeShare,
    ),
  ];
}

/** What comes after the field: hauling and drying by the bushel, and interest on all of it. */
function afterRows(columns: Columns): MatrixRow[] {
  return [
    computedRow(
      { key: "hauling", label: "Hauling and drying", ...dollars },
      columns,
      (column) => formula`${at("yield", column)}*${ofCrop(crop(column), "costPerBushel")}`,
    ),
    computedRow(
      { key: "interest", label: "Interest on running costs", ...dollars },
      columns,
      (column) => formula`(${sum("seed", "scouting", column)})*${named("interestRate")}*${named("interestMonths")}/12`,
    ),
  ];
}

export function totalRows(columns: Columns): MatrixRow[] {
  const loses = [{ kind: "compare", when: "below", value: 0, look: "bad" }] as const;
  return [
    computedRow(
      { key: "total", label: "All costs", ...dollars, total: true },
      columns,
      (column) => formula`${at("running", column)}+${at("standing", column)}`,
    ),
    headingRow("left-head", "What is left"),
    computedRow(
      { key: "margin", label: "Over running costs", ...dollars, rules: loses },
      columns,
      (column) => formula`${at("gross", column)}-${at("running", column)}`,
    ),
    computedRow(
      { key: "profit", label: "Over all costs", ...dollars, total: true, rules: loses },
      columns,
      (column) => formula`${at("gross", column)}-${at("total", column)}`,
    ),
  ];
}

export function answerRows(columns: Columns): MatrixRow[] {
  const perBushel = { unit: "$/bu", format: formats.cents } as const;
  const bushels = { unit: "bu/ac", format: formats.one } as const;
  return [
    headingRow("answers-head", "Per bushel and break-even"),
    computedRow({ key: "perBushel", label: "All costs, a bushel", ...perBushel }, columns, (column) =>
      quiet(formula`${at("total", column)}/${at("yield", column)}`),
    ),
    computedRow({ key: "runningPrice", label: "Price that covers running costs", ...perBushel }, columns, (column) =>
      priceToCover("running", column),
    ),
    computedRow({ key: "allPrice", label: "Price that covers all costs", ...perBushel }, columns, (column) =>
      priceToCover("total", column),
    ),
    computedRow({ key: "allYield", label: "Yield that covers all costs", ...bushels }, columns, (column) =>
      call(breakEvenYield, {
        cost: beforeHauling("total", column),
        price: at("price", column),
        otherIncome: at("other", column),
        costPerBushel: ofCrop(crop(column), "costPerBushel"),
      }),
    ),
    wordsRow({ key: "verdict", label: "In a word" }, columns, verdict),
  ];
}

function costRow({ crops }: FarmContext, line: CostLine): MatrixRow {
  const starts = crops.map(({ crop: name }) => cropExamples[name].costs[line]);
  return typedRow({ key: line, label: costLines[line], ...dollars, allow: anyAmount }, starts);
}

function acresOf(name: Term): Expression {
  return formula`SUMIF(${fieldTable.all("nextCrop")},${name},${fieldTable.all("acres")})`;
}

/** Yield goals weighted by acres; the usual yield where no field has the crop. */
function yieldOf(name: Term): Expression {
  const isCrop = formula`(${fieldTable.all("nextCrop")}=${name})`;
  const goal = fieldTable.all("yieldGoal");
  const acres = fieldTable.all("acres");
  return formula`IFERROR(SUMPRODUCT(${isCrop}*${acres}*${goal})/SUMPRODUCT(${isCrop}*(${goal}>0)*${acres}),${ofCrop(name, "yield")})`;
}

function taken(column: string, nutrient: "P2O5" | "K2O", price: Term): Expression {
  return formula`${call(removal, { crop: crop(column), yield: at("yield", column), nutrient })}*${price}`;
}

function limeShare(): Expression {
  const bill = sumOfAmounts(limePlan.all("cost"));
  return formula`IFERROR(${bill}/SUM(${fieldTable.all("acres")})/${named("limeYears")},0)`;
}

function priceToCover(costs: "running" | "total", column: string): Expression {
  return call(breakEvenPrice, {
    cost: beforeHauling(costs, column),
    yield: at("yield", column),
    otherIncome: at("other", column),
    costPerBushel: ofCrop(crop(column), "costPerBushel"),
  });
}

/** Costs that do not change with the yield. */
export function beforeHauling(costs: "running" | "total", column: string): Expression {
  return formula`${at(costs, column)}-${at("hauling", column)}`;
}

function sum(first: string, last: string, column: string): Expression {
  return formula`SUM(${at(first, column)}:${at(last, column)})`;
}

function verdict(column: string): Expression {
  return formula`IF(${at("profit", column)}>=0,"▲ covers all",IF(${at("margin", column)}>=0,"● covers running","▼ falls short"))`;
}
