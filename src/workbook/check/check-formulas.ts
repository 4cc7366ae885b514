import { parse, parseA1Ref, parseStructRef, tokenize, type AstExpression } from "@borgar/fx";
import type { Argument, WorksheetFunction } from "../../functions/frame";
import { namespace } from "../../functions/frame/formula-text";
import type { Area, WorkbookPlan } from "../plan";
import { headersIn, isInside, usedArea } from "./check-sheet";

/** What formulas may point to, ready to be looked up. */
interface Known {
  readonly functions: ReadonlyMap<string, WorksheetFunction>;
  readonly sheets: ReadonlyMap<string, Area>;
  readonly tables: ReadonlyMap<string, ReadonlySet<string>>;
  readonly names: ReadonlySet<string>;
}

/** Formulas of cells and conditional formats: they parse, and all they call or point to exists. */
export function checkFormulas(
  plan: WorkbookPlan,
  functions: readonly WorksheetFunction[],
  sheetsBeside: readonly string[],
): string[] {
  const known = knownTo(plan, functions, sheetsBeside);
  return plan.sheets.flatMap((sheet) => {
    const written = sheet.cells.flatMap(({ content }) => (typeof content === "object" ? [content.formula] : []));
    const rules = sheet.rules.flatMap((rule) => (rule.kind === "formula" ? [rule.formula] : []));
    const lists = sheet.validations.flatMap((validation) =>
      validation.kind === "list" && typeof validation.words === "string" ? [`=${validation.words}`] : [],
    );
    // A column of a table holds one formula many times.
    const formulas = new Set([...written, ...rules, ...lists]);
    return [...formulas].flatMap((formula) =>
      problemsOf(formula, sheet.name, known).map((problem) => `${sheet.name}: ${problem} in ${formula}`),
    );
  });
}

const wholeSheet: Area = { top: 0, left: 0, bottom: 1_048_575, right: 16_383 };

function knownTo(plan: WorkbookPlan, functions: readonly WorksheetFunction[], sheetsBeside: readonly string[]): Known {
  return {
    functions: new Map(functions.map((fn) => [`${namespace}.${fn.name}`, fn])),
    sheets: new Map([
      ...sheetsBeside.map((name) => [name.toLowerCase(), wholeSheet] as const),
      ...plan.sheets.map((sheet) => [sheet.name.toLowerCase(), usedArea(sheet)] as const),
    ]),
    tables: new Map(
      plan.sheets.flatMap(({ cells, tables }) =>
        tables.map(({ name, area }) => [name, new Set(headersIn(cells, area).map((header) => header.toLowerCase()))]),
      ),
    ),
    names: new Set(plan.names.map(({ name }) => name)),
  };
}

function problemsOf(formula: string, sheet: string, known: Known): string[] {
  try {
    return visit(parse(tokenize(formula)), sheet, known);
  } catch {
    return ["not a formula"];
  }
}

/** Walks the tree of a formula; null stands for an argument left out. */
function visit(node: AstExpression | null, sheet: string, known: Known): string[] {
  if (node === null) return [];
  switch (node.type) {
    case "CallExpression":
      return [
        ...callProblems(node.callee.name, node.arguments.length, known),
        ...node.arguments.flatMap((argument) => visit(argument, sheet, known)),
      ];
    case "UnaryExpression":
    case "BinaryExpression":
      return node.arguments.flatMap((argument) => visit(argument, sheet, known));
    case "ReferenceIdentifier":
      return referenceProblems(node.value, node.kind, sheet, known);
    case "ErrorLiteral":
      return [`the error ${node.value} stands`];
    default:
      return [];
  }
}

function callProblems(callee: string, count: number, { functions }: Known): string[] {
  if (!callee.startsWith(`${namespace}.`)) return [];
  const fn = functions.get(callee);
  if (fn === undefined) return [`no function ${callee}`];
  const args = Object.values<Argument>(fn.args);
  const required = args.filter(({ shape }) => shape !== "optional").length;
  return count >= required && count <= args.length ? [] : [`${count} arguments for ${callee}`];
}

function referenceProblems(value: string, kind: string, sheet: string, known: Known): string[] {
  if (kind === "name") return known.names.has(value) ? [] : [`no name ${value}`];
  if (kind === "table") return tableProblems(value, known);
  const reference = parseA1Ref(value);
  if (reference === undefined || !("range" in reference) || reference.range === undefined) return [`no cell ${value}`];
  const target = known.sheets.get(String(reference.context?.[0] ?? sheet).toLowerCase());
  const { top = 0, left = 0, bottom = top, right = left } = reference.range;
  if (target === undefined) return [`no sheet for ${value}`];
  const area: Area = { top: top ?? 0, left: left ?? 0, bottom: bottom ?? 0, right: right ?? 0 };
  return isInside(area, target) ? [] : [`${value} lies outside what is written`];
}

function tableProblems(value: string, { tables }: Known): string[] {
  const reference = parseStructRef(value);
  const headers = reference && tables.get(reference.table ?? "");
  if (reference === undefined || headers === undefined) return [`no table for ${value}`];
  const missing = (reference.columns ?? []).filter((column) => !headers.has(column.toLowerCase()));
  return missing.map((column) => `no column "${column}" for ${value}`);
}
