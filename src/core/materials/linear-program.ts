import { solve } from "yalps";
import { refuse } from "../fault";

/** One condition: the amounts times these numbers lie between min and max. */
export interface LinearRow {
  readonly coefficients: readonly number[];
  readonly min: number;
  readonly max: number;
}

/** Amounts of 0 or more that keep every row and make the total cost least. */
export interface LinearProgram {
  readonly costs: readonly number[];
  readonly rows: readonly LinearRow[];
}

export type LinearAnswer =
  | { readonly kind: "optimal"; readonly amounts: readonly number[] }
  | { readonly kind: "infeasible" }
  | { readonly kind: "unbounded" };

/** Key of the objective among the numbered rows. */
const costKey = -1;

/**
 * Solves a linear program with the simplex method. The only place that knows the solver: a small one that answers at
 * once, as a cell needs; a compiled one is 300 times the size, starts later and was no faster on problems this small.
 */
export function solveLinearProgram({ costs, rows }: LinearProgram): LinearAnswer {
  // The solver takes what is under 1e-8 for nothing: costs are held against the largest so that their unit is no matter.
  const scale = costs.reduce((most, cost) => Math.max(most, Math.abs(cost)), 0) || 1;
  const { status, variables } = solve<number, number>({
    direction: "minimize",
    objective: costKey,
    constraints: rows.map(({ min, max }, row) => [row, bounds(min, max)] as const),
    variables: costs.map((cost, column) => [column, columnOf(rows, column, cost / scale)] as const),
  });
  if (status === "infeasible" || status === "unbounded") return { kind: status };
  if (status !== "optimal") refuse({ kind: "noSolution", because: "The solver went in circles on these numbers." });
  const amounts = costs.map(() => 0);
  for (const [column, amount] of variables) amounts[column] = amount;
  return { kind: "optimal", amounts };
}

function bounds(min: number, max: number): { min?: number; max?: number } {
  return { ...(min > -Infinity && { min }), ...(max < Infinity && { max }) };
}

function columnOf(rows: readonly LinearRow[], column: number, cost: number): [number, number][] {
  const entries: [number, number][] = [[costKey, cost]];
  rows.forEach(({ coefficients }, row) => {
    const coefficient = coefficients[column] ?? 0;
    if (coefficient !== 0) entries.push([row, coefficient]);
  });
  return entries;
}
