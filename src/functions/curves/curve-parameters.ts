import { refuseArgument } from "../../core/fault";
import { curveLimits } from "../../core/curves/curve-limits";
import type { ResponseModel } from "../../core/curves/response-model";
import { responseModels, type ResponseModelKey } from "../../core/curves/response-models";
import { list, quantity, type CellIn, type ManyArgument, type Matrix } from "../frame";

/** The numbers of a curve as a sheet gives them: in order, or the whole table that RESPONSEFIT spills. */
export type GivenParameters =
  | { readonly kind: "numbers"; readonly numbers: readonly number[] }
  | { readonly kind: "table"; readonly values: ReadonlyMap<string, number> };

/** Labels of the rows of a fit that are not parameters but that later functions read. */
export const fitLabels = { highestRate: "Highest rate tested" } as const;

/** A range with the parameters of a curve. */
export function curveParameters(): ManyArgument<GivenParameters> {
  const numbers = list(quantity(curveLimits.parameter, { says: "parameter" }), {
    says: "the numbers of the curve in the order RESPONSEFIT gives them, or the whole table it spills",
  });
  return {
    ...numbers,
    readMany(cells, argument) {
      if (isFitTable(cells)) return { kind: "table", values: labelledValues(cells) };
      return { kind: "numbers", numbers: numbers.readMany(cells, argument) };
    },
  };
}

/** The parameters of a model, whichever way they were given. */
export function parametersOf(key: ResponseModelKey, given: GivenParameters): readonly number[] {
  if (given.kind === "numbers") return given.numbers;
  const model: ResponseModel = responseModels[key];
  return model.parameters.map(({ label }) => {
    const value = given.values.get(label);
    if (value !== undefined) return value;
    const because = `the table has no row ${label}: it was fitted with another model than ${model.label}.`;
    return refuseArgument("parameters", because);
  });
}

/** The highest rate that the table of a fit was made from; null when only numbers were given. */
export function highestTested(given: GivenParameters): number | null {
  return given.kind === "table" ? (given.values.get(fitLabels.highestRate) ?? null) : null;
}

function isFitTable(cells: Matrix<CellIn>): boolean {
  return cells.length > 1 && cells[0]?.[0] === "Item" && cells[0]?.[1] === "Value";
}

function labelledValues(cells: Matrix<CellIn>): ReadonlyMap<string, number> {
  const values = new Map<string, number>();
  for (const [label, value] of cells) {
    if (typeof label === "string" && typeof value === "number") values.set(label, value);
  }
  return values;
}
