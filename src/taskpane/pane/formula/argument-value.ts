import {
  isArrayNode,
  isBinaryNode,
  isCallNode,
  isErrorNode,
  isLiteralNode,
  isReferenceNode,
  isUnaryNode,
  type CallExpression,
} from "@borgar/fx";
import { isCellError, type RawArgument } from "../../../functions/frame/cell";
import { runFunction } from "../../../functions/frame/run";
import { parseAddress, sheetAddress } from "../../../hosts/address";
import { areaFrom } from "../../../workbook/area";
import { isFormula } from "../../../workbook/findings/reading/sheet-cells";
import { words } from "../../words";
import { CannotShow } from "./cannot-show";
import { nameOf, ownFunction, parseFormula } from "./parse-formula";
import type { Evaluate, Node } from "./native-call";
import { nativeCalls } from "./native-calls";
import { binary, unary } from "./operators";
import { cellCount, firstCell, rectangle } from "./rectangle";
import { cellsOf, findCells, readReference, type Reader } from "./references";

const say = words.working;

/**
 * The value of an argument as the function receives it: a literal, the cells it points to, the answer of another of
 * our functions, a look-up or plain arithmetic on those. Anything else is for the spreadsheet alone to compute.
 */
export async function argumentValue(node: Node, reader: Reader): Promise<RawArgument> {
  const evaluate: Evaluate = (inner) => argumentValue(inner, reader);
  if (!node) return null;
  if (isLiteralNode(node)) return node.value;
  if (isErrorNode(node)) return { code: node.value };
  if (isReferenceNode(node)) return readReference(node, reader);
  if (isArrayNode(node)) {
    return Promise.all(node.elements.map(async (row) => (await Promise.all(row.map(evaluate))).map(firstCell)));
  }
  if (isUnaryNode(node) && node.operator === "#") return spilledFrom(node.arguments[0], reader);
  if (isUnaryNode(node)) return unary(node.operator, await evaluate(node.arguments[0]));
  if (isBinaryNode(node)) {
    return binary(node.operator, await evaluate(node.arguments[0]), await evaluate(node.arguments[1]));
  }
  if (isCallNode(node)) return call(node, evaluate, reader);
  throw new CannotShow(say.foreignFunction("LAMBDA"));
}

async function call(node: CallExpression, evaluate: Evaluate, reader: Reader): Promise<RawArgument> {
  const fn = ownFunction(node);
  if (fn) return runFunction(fn, await Promise.all(node.arguments.map(evaluate)));
  const name = nameOf(node);
  if (name === "ANCHORARRAY") return spilledFrom(node.arguments[0], reader);
  if (name === "ROW" || name === "COLUMN") return placeOf(name, node.arguments[0], reader);
  const native = nativeCalls[name];
  if (!native) throw new CannotShow(say.foreignFunction(name));
  return native(node.arguments, evaluate);
}

/** The number of the row or column that a reference begins in; without one, that of the selected cell. */
async function placeOf(name: "ROW" | "COLUMN", node: Node, reader: Reader): Promise<number> {
  if (node && !isReferenceNode(node)) throw new CannotShow(say.foreignFunction(name));
  const { address } = node ? await findCells(node, reader) : reader.selected;
  const place = parseAddress(address);
  if (!place) throw new CannotShow(say.foreignFunction(name));
  return (name === "ROW" ? place.area.top : place.area.left) + 1;
}

/** What spills from a cell (A1#): as far as the answer of its own formula reaches, where that can be worked out. */
async function spilledFrom(node: Node, reader: Reader): Promise<RawArgument> {
  if (!node || !isReferenceNode(node)) throw new CannotShow(say.spillReference);
  const anchor = await findCells(node, reader);
  const place = parseAddress(anchor.address);
  const formula = anchor.formulas[0]?.[0] ?? "";
  const shown = firstCell(cellsOf(anchor));
  if (isCellError(shown)) return shown;
  if (place?.sheet === undefined || cellCount(cellsOf(anchor)) > 1 || !isFormula(formula)) {
    throw new CannotShow(say.spillReference);
  }
  const answer = rectangle(await spillOf(formula, { host: reader.host, selected: anchor }));
  const { top, left } = place.area;
  const area = areaFrom({ row: top, column: left }, { rows: answer.length, columns: answer[0]?.length ?? 1 });
  return cellsOf(await reader.host.read(sheetAddress(place.sheet, area)));
}

async function spillOf(formula: string, reader: Reader): Promise<RawArgument> {
  try {
    return await argumentValue(parseFormula(formula), reader);
  } catch (thrown) {
    if (thrown instanceof CannotShow) throw new CannotShow(say.spillReference);
    throw thrown;
  }
}
