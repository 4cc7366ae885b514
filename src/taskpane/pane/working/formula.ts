import {
  isArrayNode,
  isBinaryNode,
  isCallNode,
  isUnaryNode,
  parse,
  tokenize,
  type AstExpression,
  type CallExpression,
} from "@borgar/fx";
import { allFunctions } from "../../../functions";
import type { WorksheetFunction } from "../../../functions/frame/declaration";
import { namespace } from "../../../functions/frame/formula-text";

/** A call of one of our functions inside a formula, with the text of its arguments. */
export interface OwnCall {
  readonly fn: WorksheetFunction;
  readonly node: CallExpression;
}

/** How our names stand in formulas: as typed, or as some files keep them. */
const prefixes = [`${namespace}.`, `_xldudf_${namespace}_`.toUpperCase()];

/** The parsed formula, or nothing when it is not one. */
export function parseFormula(formula: string): AstExpression | undefined {
  try {
    return parse(tokenize(formula, { mergeRefs: true, withLocation: true }));
  } catch {
    return undefined;
  }
}

/** Our function a call names, or nothing when it is the spreadsheet's own or unknown. */
export function ownFunction(node: CallExpression): WorksheetFunction | undefined {
  if (!("name" in node.callee)) return undefined;
  const called = node.callee.name.toUpperCase();
  const prefix = prefixes.find((start) => called.startsWith(start));
  return prefix === undefined ? undefined : allFunctions.find(({ name }) => name === called.slice(prefix.length));
}

/** The outermost calls of our functions, in reading order; calls inside their arguments are left to those. */
export function ownCalls(node: AstExpression | null | undefined): readonly OwnCall[] {
  if (!node) return [];
  if (isCallNode(node)) {
    const fn = ownFunction(node);
    return fn ? [{ fn, node }] : node.arguments.flatMap(ownCalls);
  }
  if (isUnaryNode(node) || isBinaryNode(node)) return node.arguments.flatMap(ownCalls);
  return [];
}

/** Whether one of our calls stands within this argument. */
export function holdsOwnCall(node: AstExpression | null | undefined): boolean {
  return ownCalls(node).length > 0;
}

/** An argument as it stands in the formula. */
export function textOf(node: AstExpression | null | undefined, formula: string): string {
  return node?.loc ? formula.slice(node.loc[0], node.loc[1]) : "";
}

/** Whether the argument is a plain value, so that showing its text beside its value would say it twice. */
export function isPlainValue(node: AstExpression | null | undefined): boolean {
  return !node || node.type === "Literal" || isArrayNode(node);
}
