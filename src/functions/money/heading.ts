import { listWithGaps, type ManyArgument, type OneArgument } from "../frame";

/** The values beside or above a grid on the sheet, and which way they run there. */
export interface Heading {
  /** null keeps the place of a blank cell. */
  readonly values: readonly (number | null)[];
  readonly runs: "down" | "across" | "either";
}

/** A row or column of values that a spilled grid lines up with. */
export function heading(of: OneArgument<number>, says: { readonly says: string }): ManyArgument<Heading> {
  const values = listWithGaps(of, says);
  return {
    ...values,
    readMany(cells, argument) {
      const columns = cells[0]?.length ?? 0;
      const runs = cells.length > 1 === columns > 1 ? "either" : cells.length > 1 ? "down" : "across";
      return { values: values.readMany(cells, argument), runs };
    },
  };
}

/** Whether a grid of two headings has to be turned so that the first one's values run across the sheet. */
export function firstRunsAcross(first: Heading, second: Heading): boolean {
  if (first.runs === "across") return second.runs !== "across";
  return first.runs === "either" && second.runs === "down";
}
