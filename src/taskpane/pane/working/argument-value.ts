import {
  isArrayNode,
  isBinaryNode,
  isCallNode,
  isErrorNode,
  isLiteralNode,
  isReferenceNode,
  isUnaryNode,
  type AstExpression,
} from "@borgar/fx";
import { ArrivedError } from "../../../functions/frame/arguments";
import { isBlank, isCellError, type CellIn, type RawArgument } from "../../../functions/frame/cell";
import { runFunction } from "../../../functions/frame/run";
import type { HostRange, WorkbookHost } from "../../../hosts/port";
import { words } from "../../words";
import { CannotShow } from "./cannot-show";
import { ownFunction } from "./formula";
import { cellCount, firstCell } from "./rectangle";
import { readReference } from "./references";

const say = words.working;

/** Where the cells that a formula points to are read. */
export interface Reader {
  readonly host: WorkbookHost;
  readonly selected: HostRange;
}

type Node = AstExpression | null | undefined;

/**
 * The value of an argument as the function receives it: a literal, the cells it points to, the answer of another of
 * our functions, or plain arithmetic on those. Anything else is for the spreadsheet alone to compute.
 */
export async function argumentValue(node: Node, reader: Reader): Promise<RawArgument> {
  if (!node) return null;
  if (isLiteralNode(node)) return node.value;
  if (isErrorNode(node)) return { code: node.value };
  if (isReferenceNode(node)) return readReference(node, reader.selected, reader.host);
  if (isArrayNode(node)) return Promise.all(node.elements.map((row) => arrayRow(row, reader)));
  if (isUnaryNode(node)) return unary(node.operator, node.arguments[0], reader);
  if (isBinaryNode(node)) return binary(node.operator, node.arguments, reader);
  if (isCallNode(node)) {
    const fn = ownFunction(node);
    const name = "name" in node.callee ? node.callee.name : "";
    if (!fn) throw new CannotShow(say.foreignFunction(name));
    return runFunction(fn, await Promise.all(node.arguments.map((argument) => argumentValue(argument, reader))));
  }
  throw new CannotShow(say.foreignFunction("LET, LAMBDA"));
}

async function arrayRow(row: readonly AstExpression[], reader: Reader): Promise<CellIn[]> {
  const cells = await Promise.all(row.map((cell) => argumentValue(cell, reader)));
  return cells.map(firstCell);
}

async function unary(operator: string, node: Node, reader: Reader): Promise<RawArgument> {
  if (operator === "#") throw new CannotShow(say.spillReference);
  const inner = await argumentValue(node, reader);
  if (operator === "@" || operator === "+") return inner;
  const value = numberOf(inner);
  return operator === "%" ? value / 100 : -value;
}

async function binary(operator: string, nodes: readonly Node[], reader: Reader): Promise<RawArgument> {
  const left = await argumentValue(nodes[0], reader);
  const right = await argumentValue(nodes[1], reader);
  if (operator === "&") return `${textOf(left)}${textOf(right)}`;
  const [a, b] = [numberOf(left), numberOf(right)];
  if (operator === "+") return a + b;
  if (operator === "-") return a - b;
  if (operator === "*") return a * b;
  if (operator === "^") return a ** b;
  if (operator === "/") return b === 0 ? { code: "#DIV/0!" } : a / b;
  throw new CannotShow(say.comparison(operator));
}

/** Arithmetic takes single cells here; a blank counts as 0, as in the sheet. */
function numberOf(raw: RawArgument): number {
  const cell = single(raw);
  const value = isBlank(cell) ? 0 : Number(cell);
  if (Number.isNaN(value)) throw new CannotShow(say.textInArithmetic(String(cell)));
  return value;
}

function textOf(raw: RawArgument): string {
  const cell = single(raw);
  return isBlank(cell) ? "" : String(cell);
}

function single(raw: RawArgument): CellIn {
  if (cellCount(raw) > 1) throw new CannotShow(say.rangeArithmetic);
  const cell = firstCell(raw);
  if (isCellError(cell)) throw new ArrivedError(cell);
  return cell;
}
