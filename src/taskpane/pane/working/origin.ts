import { isCallNode, isReferenceNode, isUnaryNode } from "@borgar/fx";
import { parseAddress } from "../../../hosts/address";
import { words } from "../../words";
import { isPlainValue, ownFunction, textOf } from "../formula/parse-formula";
import type { Node } from "../formula/native-call";
import { findCells, type Reader } from "../formula/references";

const say = words.working;

/** Where the value of an argument comes from: typed, the address behind a name or column, another call, a calculation. */
export async function originOf(node: Node, formula: string, reader: Reader): Promise<string> {
  if (!node) return say.leftOut;
  if (isPlainValue(node)) return say.typed;
  const text = textOf(node, formula);
  if (isReferenceNode(node)) {
    const { address } = await findCells(node, reader);
    return parseAddress(text.replace(/\$/g, "")) ? address : say.standsFor(text, address);
  }
  if (isUnaryNode(node) && node.operator === "#" && isReferenceNode(node.arguments[0])) {
    return say.spillsFrom(
      `${textOf(node.arguments[0], formula)}#`,
      (await findCells(node.arguments[0], reader)).address,
    );
  }
  if (isCallNode(node) && ownFunction(node)) return say.fromCall(ownFunction(node)?.name ?? "");
  return say.workedOut(text);
}
