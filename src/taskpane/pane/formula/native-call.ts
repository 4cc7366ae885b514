import type { AstExpression } from "@borgar/fx";
import { ArrivedError } from "../../../functions/frame/arguments";
import { isCellError, type CellIn, type RawArgument } from "../../../functions/frame/cell";
import { rectangle } from "./rectangle";

export type Node = AstExpression | null | undefined;
export type Evaluate = (node: Node) => Promise<RawArgument>;

/** Works out a call of a spreadsheet's own function; arguments are evaluated only where they are needed. */
export type NativeCall = (nodes: readonly Node[], evaluate: Evaluate) => Promise<RawArgument>;

export type NativeCalls = Readonly<Record<string, NativeCall>>;

/** All cells of the arguments, in reading order; an error among them travels on. */
export async function cellsIn(nodes: readonly Node[], evaluate: Evaluate): Promise<readonly CellIn[]> {
  const cells = (await Promise.all(nodes.map(evaluate))).flatMap((raw) => rectangle(raw).flat());
  const broken = cells.find(isCellError);
  if (broken) throw new ArrivedError(broken);
  return cells;
}

/** The numbers among the cells; text, blanks and truths are passed over. */
export async function numbersIn(nodes: readonly Node[], evaluate: Evaluate): Promise<readonly number[]> {
  return (await cellsIn(nodes, evaluate)).filter((cell) => typeof cell === "number");
}
