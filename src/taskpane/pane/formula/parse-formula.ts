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
import { ownNameIn } from "../../../workbook/findings/reading/names-called";
import { withoutLocalNames } from "./local-names";

/** A call of one of our functions inside a formula. */
export interface OwnCall {
  readonly fn: WorksheetFunction;
  readonly node: CallExpression;
  /** The call whose argument it stands in. */
  readonly within?: { readonly fn: WorksheetFunction; readonly argument: string } | undefined;
  /** The INDEX that takes one cell out of its answer. */
  readonly takenBy?: CallExpression | undefined;
}

/** The parsed formula without names of its own, or nothing when it is not one. */
export function parseFormula(formula: string): AstExpression | undefined {
  try {
    return withoutLocalNames(parse(tokenize(formula, { mergeRefs: true, withLocation: true })));
  } catch {
    return undefined;
  }
}

/** Our function a call names, or nothing when it is the spreadsheet's own or unknown. */
export function ownFunction(node: CallExpression): WorksheetFunction | undefined {
  const called = ownNameIn(nameOf(node));
  return called === undefined ? undefined : allFunctions.find(({ name }) => name === called);
}

/**
 * All calls of our functions, in reading order: each before those in its arguments. One that LET names and the formula
 * uses twice counts once.
 */
export function ownCalls(node: AstExpression | null | undefined): readonly OwnCall[] {
  const calls = callsIn(node);
  return calls.filter((call, index) => calls.findIndex((other) => other.node === call.node) === index);
}

function callsIn(node: AstExpression | null | undefined, within?: OwnCall["within"]): readonly OwnCall[] {
  if (!node) return [];
  if (isUnaryNode(node) || isBinaryNode(node)) return node.arguments.flatMap((part) => callsIn(part, within));
  if (!isCallNode(node)) return [];
  const fn = ownFunction(node);
  if (!fn) return node.arguments.flatMap((part, at) => partCalls(node, part, at, within));
  const names = Object.keys(fn.args);
  const inner = node.arguments.flatMap((part, at) => callsIn(part, { fn, argument: names[at] ?? "" }));
  return [{ fn, node, within }, ...inner];
}

function partCalls(
  node: CallExpression,
  part: AstExpression | null,
  at: number,
  within: OwnCall["within"],
): readonly OwnCall[] {
  const [first, ...others] = callsIn(part, within);
  const isTaken = at === 0 && nameOf(node) === "INDEX" && first !== undefined && first.node === part;
  return first ? [isTaken ? { ...first, takenBy: node } : first, ...others] : [];
}

/** The name of a called function in capitals, as it is typed; empty where something else is called. */
export function nameOf(node: CallExpression): string {
  return "name" in node.callee ? node.callee.name.toUpperCase().replace(/^_XLFN\.(?:_XLWS\.)?/, "") : "";
}

/** Whether the formula is one call of ours and nothing around it. */
export function isBareCall(node: AstExpression | null | undefined): boolean {
  if (!node) return false;
  if (isUnaryNode(node) && node.operator === "@") return isBareCall(node.arguments[0]);
  return isCallNode(node) && ownFunction(node) !== undefined;
}

/** An argument as it stands in the formula. */
export function textOf(node: AstExpression | null | undefined, formula: string): string {
  return node?.loc ? formula.slice(node.loc[0], node.loc[1]) : "";
}

/** Whether the argument is a plain value, so that showing its text beside its value would say it twice. */
export function isPlainValue(node: AstExpression | null | undefined): boolean {
  return !node || node.type === "Literal" || isArrayNode(node);
}
