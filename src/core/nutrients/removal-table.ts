import { nutrientKeys, type NutrientKey } from "../../reference/nutrients";
import { refuse, FormulaError } from "../fault";
import { removal, type Harvest, type Removal } from "./removal";

/** A line of the removal table. */
export interface RemovalLine {
  readonly nutrient: NutrientKey;
  readonly removal: Removal;
}

/**
 * Every nutrient that is published for the harvested part, in lb/ac. Nutrients that no row prints are left out.
 *
 * For a joined part a nutrient stands only where grain and residue both print it.
 */
export function removalTable(harvest: Omit<Harvest, "nutrient">): readonly RemovalLine[] {
  const lines: RemovalLine[] = [];
  let missing: FormulaError | undefined;
  for (const nutrient of nutrientKeys) {
    try {
      lines.push({ nutrient, removal: removal({ ...harvest, nutrient }) });
    } catch (thrown) {
      if (!(thrown instanceof FormulaError) || thrown.fault.kind !== "notPublished") throw thrown;
      missing ??= thrown;
    }
  }
  if (lines.length === 0 && missing) refuse(missing.fault);
  return lines;
}
