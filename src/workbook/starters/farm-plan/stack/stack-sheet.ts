import { breakEvenPrice, breakEvenYield } from "../../../../functions/money/break-even";
import { call } from "../../../formula/call";
import { formula, type Expression, type Term } from "../../../formula/expression";
import { place, type Reference } from "../../../formula/reference";
import type { MatrixBlock, MatrixRow, RowsBlock } from "../../../model/block";
import { formats } from "../../../model/cell";
import { computedCells, computedRow } from "../../../model/matrix-rows";
import { remarks } from "../../../model/paragraphs";
import type { SheetModel } from "../../../model/workbook-model";
import { tabColors } from "../../tab-colors";
import { ofBudget } from "../budgets/budget-rows";
import { ofCrop } from "../crop-lookup";
import type { PracticeContext } from "../practices/practice-context";
import { farmSheets } from "../farm-sheets";
import { term } from "../practices/practice-terms-block";
import { pickCell, pickColumns, whenOffered } from "./stack-pick";
import { setLine, stackSetBlock } from "./stack-set-block";
import { stackTableBlock } from "./stack-table";
import { stackInteractions, stackTermsBlock } from "./stack-terms-block";

/** Which practices to take up together, and what that does to the crop's budget. */
export function stackSheet(context: PracticeContext): SheetModel {
  return {
    key: "stack",
    name: farmSheets.stack.name,
    tabColor: tabColors.answer,
    title: "Stack of practices",
    answers: "Which practices to take up together within a budget, what they net, and what could go otherwise.",
    blocks: [
      stackTermsBlock(context),
      stackTableBlock(context),
      stackSetBlock(context),
      interactionBlock(context),
      sameSetBlock(),
      withSetBlock(),
      remarks(
        "The set is searched through and proved best for the figures given. Costs and gains are spread over all acres of the crop, so a practice on one field counts for its share. " +
          "What the crop budget pays for already is not offered again. Gains from separate trials add up only if a trial showed it; winners picked from many are over-estimated.",
      ),
    ],
    print: { orientation: "landscape", onePage: true },
  };
}

const interactions = stackInteractions.map((label) => ({ key: label, head: label }));

/** The best set for each way that gains may come together, side by side. */
function interactionBlock({ rows }: PracticeContext): MatrixBlock {
  const line = (key: string, label: string, unit: string, format: string, column: number) =>
    computedRow({ key, label, unit, format }, interactions, (interaction) =>
      whenOffered(pickCell(interaction, rows + 2, column)),
    );
  return {
    kind: "matrix",
    key: "stack-ways",
    title: "The best set, if gains come together otherwise",
    corner: "",
    columns: interactions,
    rows: [
      line("picked", "Practices picked", "", formats.whole, pickColumns.pick),
      line("cost", "Cost", "$/ac", formats.cents, pickColumns.cost),
      line("gain", "Expected gain", "bu/ac", formats.signedOne, pickColumns.gain),
      line("net", "Expected net", "$/ac", formats.cents, pickColumns.adds),
    ],
  };
}

/** Two sets that cost the same to the cent are taken to be the same set. */
function sameSetBlock(): RowsBlock {
  const costs = place("stack-ways.cost");
  const words = formula`IF(MAX(${costs})-MIN(${costs})<0.005,"● The same set is best either way.","▼ The set changes: test on strips whether the gains add up before taking all of it up.")`;
  return { kind: "rows", rows: [[{ content: formula`IF(COUNT(${costs})=0,"",${words})`, style: "body" }]] };
}

const budgeted = (line: string) => ofBudget(line, term("crop"));
const withSet = (line: string, column: "now" | "then"): Reference => place(`with-set.${line}.${column}`);

/** The crop's budget as it stands, and with the set on top of it. */
function withSetBlock(): MatrixBlock {
  const perBushel = ofCrop(term("crop"), "costPerBushel");
  const gain = formula`SUM(${setLine("gain")})`;
  const cost = formula`SUM(${setLine("cost")})`;
  const dollars = { unit: "$/ac", format: formats.cents };
  const row = (facts: Omit<MatrixRow, "cells">, now: Term, then: Term): MatrixRow => {
    const change = formula`${withSet(facts.key, "then")}-${withSet(facts.key, "now")}`;
    return { ...facts, cells: computedCells(now, then, change) };
  };
  const now = (line: string) => withSet(line, "now");
  return {
    kind: "matrix",
    key: "with-set",
    title: "An acre of the crop, without and with the set",
    corner: "",
    columns: [
      { key: "now", head: "As budgeted" },
      { key: "then", head: "With the set" },
      { key: "change", head: "Change" },
    ],
    rows: [
      row(
        { key: "yield", label: "Yield", unit: "bu/ac", format: formats.one },
        budgeted("yield"),
        formula`${now("yield")}+${gain}`,
      ),
      row(
        { key: "income", label: "Income", ...dollars },
        budgeted("gross"),
        formula`${now("income")}+${gain}*${ofCrop(term("crop"), "price")}`,
      ),
      row(
        {
          key: "costs",
          label: "All costs",
          ...dollars,
          note: "With hauling and drying of the gain; interest on the set's cost is not in it.",
        },
        budgeted("total"),
        formula`${now("costs")}+${cost}+${gain}*${perBushel}`,
      ),
      row(
        { key: "profit", label: "Left over all costs", ...dollars, total: true },
        formula`${now("income")}-${now("costs")}`,
        formula`${withSet("income", "then")}-${withSet("costs", "then")}`,
      ),
      ...breakEvenRows(row, cost, perBushel),
    ],
  };
}

function breakEvenRows(
  row: (facts: Omit<MatrixRow, "cells">, now: Term, then: Term) => MatrixRow,
  cost: Expression,
  perBushel: Expression,
): MatrixRow[] {
  const fixed = formula`${budgeted("total")}-${budgeted("hauling")}`;
  const shared = { otherIncome: budgeted("other"), costPerBushel: perBushel };
  const price = (column: "now" | "then", more: Term) =>
    call(breakEvenPrice, { ...shared, cost: formula`${fixed}+${more}`, yield: withSet("yield", column) });
  const yieldFor = (more: Term) =>
    call(breakEvenYield, { ...shared, cost: formula`${fixed}+${more}`, price: ofCrop(term("crop"), "price") });
  return [
    row(
      { key: "price", label: "Price that covers all costs", unit: "$/bu", format: formats.cents },
      price("now", 0),
      price("then", cost),
    ),
    row(
      { key: "cover", label: "Yield that covers all costs", unit: "bu/ac", format: formats.one },
      yieldFor(0),
      yieldFor(cost),
    ),
  ];
}
