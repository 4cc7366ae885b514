import type { Arguments, OneValueFunction, OptionalArgument, TableFunction } from "../../functions/frame";
import { namespace } from "../../functions/frame/formula-text";
import { joined, type Expression, type Term } from "./expression";

type OptionalNames<A extends Arguments> = {
  [Name in keyof A]: A[Name] extends OptionalArgument<unknown, unknown> ? Name : never;
}[keyof A];

/** The arguments of a call by name: those the declaration requires, and any of the optional ones. */
export type CallArguments<A extends Arguments> = { readonly [Name in Exclude<keyof A, OptionalNames<A>>]: Term } & {
  readonly [Name in OptionalNames<A>]?: Term;
};

/**
 * A call of one of our worksheet functions, typed from its declaration: a function or an argument that does not
 * exist does not compile. Arguments stand in the declared order; optional ones at the end are left out.
 */
export function call<const A extends Arguments, Result>(
  fn: OneValueFunction<A, Result> | TableFunction<A, Result>,
  args: CallArguments<A>,
): Expression {
  const given = new Map<string, Term>(Object.entries(args));
  const names = Object.keys(fn.args);
  const count = 1 + names.reduce((last, name, index) => (given.has(name) ? index : last), -1);
  const terms = names.slice(0, count).map((name) => given.get(name) ?? nothing);
  return { parts: [`${namespace}.${fn.name}(`, ...joined(terms, ",").parts, ")"] };
}

/** An optional argument that is left out though a later one is given. */
const nothing: Expression = { parts: [] };
