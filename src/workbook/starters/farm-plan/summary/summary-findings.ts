import { capitalized } from "../../../../core/capitalized";
import { formula, type Expression, type Term } from "../../../formula/expression";
import { capitalOf, shown } from "../../../formula/natives";
import { place } from "../../../formula/reference";
import type { RowsBlock } from "../../../model/block";
import { sentencesBlock } from "../../../model/rows";
import { budgetCell } from "../budgets/budget-rows";
import { cropHeads } from "../crop-lookup";
import type { FarmContext } from "../farm-context";
import { limePlan, phosphateLedger, potashLedger } from "../headers";
import { evenWithinLbPerAc } from "../soil/ledger-sheet";

/** The findings that matter, each a sentence that follows the sheets behind it. */
export function findingsBlock({ crops }: FarmContext): RowsBlock {
  const heads = cropHeads(crops);
  const [potash, phosphate, lime] = soilSentences();
  const sentences = [
    potash,
    phosphate,
    ...(crops.some(({ crop }) => crop === "soybean") ? [leftForSoybean()] : []),
    lime,
    ...heads.map(({ key }) => budgetSentence(key)),
    bestCrop(),
  ];
  return sentencesBlock("What matters", sentences);
}

/** Where the soil tests are going, nutrient by nutrient, and which fields call for lime. */
export function soilSentences(): readonly [Expression, Expression, Expression] {
  return [drawdown(potashLedger, "potash"), drawdown(phosphateLedger, "phosphate"), limeSentence()];
}

/** "▼ Mill Road is drawing potash down by 31 lb/ac a year; 7 of 10 fields draw down." */
function drawdown(ledger: typeof potashLedger | typeof phosphateLedger, trade: string): Expression {
  const perYear = ledger.all("perYear");
  const worst = formula`INDEX(${ledger.all("field")},MATCH(MIN(${perYear}),${perYear},0))`;
  const limit = `<-${evenWithinLbPerAc}`;
  const many = formula`COUNTIF(${perYear},${limit})&" of "&COUNT(${perYear})&" fields draw down."`;
  const found = formula`"▼ "&${worst}&${` is drawing ${trade} down by `}&${shown(formula`-MIN(${perYear})`, "0")}&" lb/ac a year; "&${many}`;
  const none = formula`${`● No field is drawing ${trade} down by more than ${evenWithinLbPerAc} lb/ac a year.`}`;
  const waiting = `● ${capitalized(trade)}: waits for fields, yields and what was put on.`;
  return formula`IF(COUNT(${perYear})=0,${waiting},IF(MIN(${perYear})<-${evenWithinLbPerAc},${found},${none}))`;
}

function leftForSoybean(): Expression {
  const average = (column: "left" | "nextTakes") =>
    shown(formula`AVERAGEIF(${potashLedger.all("nextCrop")},"soybean",${potashLedger.all(column)})`, "0");
  return formula`IFERROR("● Before soybean, the last crop leaves "&${average("left")}&" lb/ac of the potash put on; soybean takes "&${average("nextTakes")}&".","● Potash for soybean: waits for a field with soybean next.")`;
}

function limeSentence(): Expression {
  const rate = limePlan.all("rate");
  const most = formula`INDEX(${limePlan.all("field")},MATCH(MAX(${rate}),${rate},0))`;
  const bill = formula`${shown(limePlan.whole("tons"), "#,##0")}&" tons in all, $"&${shown(limePlan.whole("cost"), "#,##0")}`;
  const found = formula`"● "&COUNTIF(${rate},">0")&" of "&COUNT(${rate})&" fields call for lime, "&${most}&" the most: "&${bill}&"."`;
  return formula`IF(COUNT(${rate})=0,"● Lime: waits for soil tests.",IF(MAX(${rate})>0,${found},"● No field calls for lime."))`;
}

/** "● Soybean covers all costs at $10.73 or 59.2 bu/ac; the plan has $10.60 and 58.5." */
function budgetSentence(column: string): Expression {
  const cell = (line: string) => budgetCell(line, column);
  const sign = formula`IF(${cell("profit")}>=0,"▲ ",IF(${cell("margin")}>=0,"● ","▼ "))`;
  const dollars = (value: Term) => formula`"$"&${shown(value, "0.00")}`;
  const needed = formula`${dollars(cell("allPrice"))}&" or "&${shown(cell("allYield"), "0.0")}&" bu/ac"`;
  const planned = formula`${dollars(cell("price"))}&" and "&${shown(cell("yield"), "0.0")}`;
  const sentence = formula`${sign}&${nameOf(column)}&" covers all costs at "&${needed}&"; the plan has "&${planned}&"."`;
  return formula`IFERROR(${sentence},"● "&${nameOf(column)}&": waits for its budget.")`;
}

/** "● Soybean leaves most over running costs: $333 an acre." */
function bestCrop(): Expression {
  const margins = place("budget.margin");
  const best = formula`INDEX(${place("budget.heads")},MATCH(MAX(${margins}),${margins},0))`;
  return formula`IFERROR("● "&${capitalOf(best)}&" leaves most over running costs: $"&${shown(formula`MAX(${margins})`, "#,##0")}&" an acre.","")`;
}

function nameOf(column: string): Expression {
  return capitalOf(budgetCell("head", column));
}
