import { isBinaryNode, isCallNode, isUnaryNode, type AstExpression } from "@borgar/fx";
import { ArrivedError } from "../../../functions/frame/arguments";
import { isCellError } from "../../../functions/frame/cell";
import { CannotShow } from "../formula/cannot-show";
import { nameOf, ownCalls, ownFunction } from "../formula/parse-formula";
import type { Evaluate, Node } from "../formula/native-call";
import { isTrue } from "../formula/native-calls";
import { firstCell } from "../formula/rectangle";

/** Calls of ours that the formula leaves aside for this answer. What cannot be told counts as used. */
export async function unusedParts(node: Node, evaluate: Evaluate): Promise<ReadonlySet<Node>> {
  const unused = new Set<Node>();
  await gather(node, evaluate, unused);
  return unused;
}

async function gather(node: Node, evaluate: Evaluate, unused: Set<Node>): Promise<void> {
  if (!node || !(isCallNode(node) || isUnaryNode(node) || isBinaryNode(node))) return;
  const parts: readonly (AstExpression | null)[] = node.arguments;
  if (isCallNode(node) && !ownFunction(node) && ownCalls(node).length > 0) {
    const aside = await branchAside(nameOf(node), parts, evaluate);
    for (const { node: call } of ownCalls(aside)) unused.add(call);
  }
  for (const part of parts) await gather(part, evaluate, unused);
}

/** The branch that IF does not take, or what stands ready for an error that did not come. */
async function branchAside(name: string, parts: readonly Node[], evaluate: Evaluate): Promise<Node> {
  const [first, second, third] = parts;
  try {
    if (name === "IF") return isTrue(await evaluate(first)) ? third : second;
    if (name !== "IFERROR" && name !== "IFNA") return undefined;
    return isCellError(firstCell(await evaluate(first))) ? undefined : second;
  } catch (thrown) {
    if (thrown instanceof CannotShow || thrown instanceof ArrivedError) return undefined;
    throw thrown;
  }
}
