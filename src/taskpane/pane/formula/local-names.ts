import {
  isBinaryNode,
  isCallNode,
  isLambdaNode,
  isLetNode,
  isReferenceNode,
  isUnaryNode,
  type AstExpression,
  type CallExpression,
  type LambdaExpression,
} from "@borgar/fx";

type Part = AstExpression | null;

/** A LAMBDA with the names that were known where it stands. */
interface Closure {
  readonly lambda: LambdaExpression;
  readonly known: Locals;
}

type Locals = ReadonlyMap<string, Part | Closure>;

/**
 * A formula without names of its own: what LET names, and what a LAMBDA that is called there is given, stands in the
 * place of the name. Parts in which nothing changes stay the very same objects.
 */
export function withoutLocalNames(node: AstExpression): AstExpression {
  return inlined(node, new Map()) ?? node;
}

function inlined(node: Part, locals: Locals): Part {
  if (!node || isLambdaNode(node)) return node;
  if (isReferenceNode(node)) return node.kind === "name" ? standingFor(node.value, locals, node) : node;
  if (isUnaryNode(node) || isBinaryNode(node)) return withArguments(node, locals);
  if (isCallNode(node)) return inlinedCall(node, locals);
  if (!isLetNode(node)) return node;
  const inside = new Map(locals);
  for (const { id, init } of node.declarations) {
    inside.set(keyOf(id.name), isLambdaNode(init) ? { lambda: init, known: new Map(inside) } : inlined(init, inside));
  }
  return inlined(node.body, inside);
}

function inlinedCall(node: CallExpression, locals: Locals): Part {
  const { callee } = node;
  if (isLambdaNode(callee)) return applied({ lambda: callee, known: locals }, node, locals);
  const named = "name" in callee ? locals.get(keyOf(callee.name)) : undefined;
  if (isClosure(named)) return applied(named, node, locals);
  const called = withArguments(node, locals);
  // A function given another name: LET(f, LOAM.REMOVAL, f("corn", 200, "N")).
  if (!named || !isReferenceNode(named) || named.kind !== "name" || !("name" in callee)) return called;
  return { ...called, callee: { ...callee, name: named.value } };
}

/** The body of a LAMBDA with its arguments in it; the call as it is where they do not fit. */
function applied({ lambda, known }: Closure, call: CallExpression, locals: Locals): Part {
  if (call.arguments.length !== lambda.params.length) return call;
  const inside = new Map(known);
  lambda.params.forEach(({ name }, index) => inside.set(keyOf(name), inlined(call.arguments[index] ?? null, locals)));
  return inlined(lambda.body, inside);
}

function withArguments<Parent extends AstExpression & { readonly arguments: readonly Part[] }>(
  node: Parent,
  locals: Locals,
): Parent {
  const parts = node.arguments.map((part) => inlined(part, locals));
  return parts.every((part, index) => part === node.arguments[index]) ? node : { ...node, arguments: parts };
}

function standingFor(name: string, locals: Locals, itself: Part): Part {
  const local = locals.get(keyOf(name));
  return local === undefined || isClosure(local) ? itself : local;
}

function isClosure(local: Part | Closure | undefined): local is Closure {
  return local !== null && local !== undefined && "lambda" in local;
}

/** Names are the same however they are cased; files put a mark before them. */
function keyOf(name: string): string {
  return name.toLowerCase().replace(/^_xlpm\./, "");
}
