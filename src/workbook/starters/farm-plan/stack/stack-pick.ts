import { practicePick } from "../../../../functions/practices/practice-pick";
import { call } from "../../../formula/call";
import { formula, type Expression, type Term } from "../../../formula/expression";
import { practiceStack } from "../practices/practice-headers";
import { term } from "../practices/practice-terms-block";
import { stackTerm } from "./stack-terms-block";

/** Columns of the table of PRACTICEPICK, from 1. */
export const pickColumns = { pick: 2, cost: 3, gain: 4, adds: 5, why: 6 } as const;

/** A cell of the best set's table: rows from 1, the heading first, then the practices, then the set. */
export function pickCell(interaction: Term, row: Term, column: number): Expression {
  const pick = call(practicePick, {
    costs: practiceStack.all("cost"),
    gains: practiceStack.all("gain"),
    price: term("price"),
    budget: stackTerm("budget"),
    excludes: practiceStack.all("notWith"),
    interaction,
    names: practiceStack.all("practice"),
    requires: practiceStack.all("needs"),
    mostPractices: stackTerm("most"),
    currentYield: stackTerm("yieldNow"),
    attainableYield: stackTerm("attainable"),
  });
  return formula`INDEX(${pick},${row},${column})`;
}

/** Nothing while no practice has both a cost and a gain. */
export function whenOffered(value: Term): Expression {
  return formula`IF(COUNT(${practiceStack.all("cost")})=0,"",${value})`;
}
