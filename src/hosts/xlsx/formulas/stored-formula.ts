import { namespace } from "../../../functions/frame/formula-text";
import { formulaTokens, isCall, isMark, type Token } from "./formula-tokens";
import { storedFunctionName } from "./future-functions";

/** What a spreadsheet puts before the name of an add-in's function when it saves a workbook. */
const addInPrefix = "_xldudf_";
/** The name of a function of ours, as a person types it. */
export const ownCall = new RegExp(`^${namespace}\\.`, "i");

/**
 * A formula as the file holds it, from the form a person types: no leading "=", add-in functions as
 * _xldudf_LOAM_NAME, younger native functions under their prefix, names bound by LET and LAMBDA as _xlpm.name.
 */
export function storedFormula(typed: string): string {
  return inCallsOf(formulaTokens(withoutEquals(typed)), new Set());
}

/** Stored names of the add-in functions that a stored formula calls. */
export function addInFunctionsIn(stored: string): string[] {
  const tokens = formulaTokens(stored);
  return tokens.filter((token, index) => isCall(tokens, index) && token.text.startsWith(addInPrefix)).map(textOf);
}

export function withoutEquals(typed: string): string {
  return typed.replace(/^\s*=/, "");
}

function inCallsOf(tokens: readonly Token[], bound: ReadonlySet<string>): string {
  let stored = "";
  for (let index = 0; index < tokens.length; index++) {
    const token = tokens[index];
    if (token === undefined) break;
    if (!isCall(tokens, index)) {
      stored += isBound(token, bound) ? boundName(token.text) : token.text;
      continue;
    }
    const end = closingParenthesis(tokens, index + 1);
    const inside = tokens.slice(index + 2, end);
    const inner = new Set([...bound, ...namesBoundBy(token.text, inside)]);
    stored += `${calledName(token, bound)}(${inCallsOf(inside, inner)})`;
    index = end;
  }
  return stored;
}

function calledName(token: Token, bound: ReadonlySet<string>): string {
  if (isBound(token, bound)) return boundName(token.text);
  if (ownCall.test(token.text)) return addInPrefix + token.text.toUpperCase().replace(/\./g, "_");
  return storedFunctionName(token.text);
}

/** LET binds every other argument before its last, LAMBDA all but its last. */
function namesBoundBy(functionName: string, inside: readonly Token[]): string[] {
  const upper = functionName.toUpperCase();
  if (upper !== "LET" && upper !== "LAMBDA") return [];
  const firstTokens = argumentsOf(inside).map((argument) => argument.filter(({ kind }) => kind !== "space"));
  return firstTokens
    .slice(0, -1)
    .filter((argument, index) => argument.length === 1 && (upper === "LAMBDA" || index % 2 === 0))
    .flatMap((argument) => argument.map(({ text }) => text.toUpperCase()));
}

function argumentsOf(inside: readonly Token[]): Token[][] {
  const found: Token[][] = [[]];
  let depth = 0;
  for (const token of inside) {
    if (isMark(token, "(") || isMark(token, "{")) depth += 1;
    if (isMark(token, ")") || isMark(token, "}")) depth -= 1;
    if (depth === 0 && isMark(token, ",")) found.push([]);
    else found.at(-1)?.push(token);
  }
  return found;
}

function closingParenthesis(tokens: readonly Token[], open: number): number {
  let depth = 0;
  for (let index = open; index < tokens.length; index++) {
    if (isMark(tokens[index], "(")) depth += 1;
    if (isMark(tokens[index], ")") && --depth === 0) return index;
  }
  throw new Error(`A parenthesis is not closed in =${tokens.map(textOf).join("")}`);
}

function isBound(token: Token, bound: ReadonlySet<string>): boolean {
  return token.kind === "name" && bound.has(token.text.toUpperCase());
}

function boundName(name: string): string {
  return `_xlpm.${name}`;
}

function textOf(token: Token): string {
  return token.text;
}
