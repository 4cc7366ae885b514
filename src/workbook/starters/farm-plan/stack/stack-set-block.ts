import { formula, type Term } from "../../../formula/expression";
import { whenNumbers } from "../../../formula/natives";
import { place, type Reference } from "../../../formula/reference";
import type { EntriesBlock } from "../../../model/block";
import { formats } from "../../../model/cell";
import { computedEntry, wordsEntry } from "../../../model/entries";
import type { PracticeContext } from "../practices/practice-context";
import { practiceStack } from "../practices/practice-headers";
import { term } from "../practices/practice-terms-block";
import { pickCell, pickColumns, whenOffered } from "./stack-pick";
import { stackTerm } from "./stack-terms-block";

type SetLine = "picked" | "cost" | "gain" | "net" | "low" | "high" | "note" | "sd";

/** A line of the set that nets most. */
export const setLine = (key: SetLine): Reference => place(`stack-set.${key}`);

/** One case in ten lies this many standard deviations below the middle of a bell curve. */
const oneInTen = 1.2816;

export function stackSetBlock({ rows }: PracticeContext): EntriesBlock {
  const cell = (column: number) => whenOffered(pickCell(stackTerm("interaction"), rows + 2, column));
  const dollars = { unit: "$/ac", format: formats.cents };
  const step = formula`${oneInTen}*${term("price")}*${setLine("sd")}`;
  const known = (value: Term) => whenNumbers([setLine("net"), setLine("sd")], value);
  return {
    kind: "entries",
    key: "stack-set",
    title: "The set that nets most within them",
    entries: [
      computedEntry({ key: "picked", label: "Practices picked", format: formats.whole }, cell(pickColumns.pick)),
      computedEntry(
        { key: "cost", label: "Cost", ...dollars, says: "On an acre of the crop." },
        cell(pickColumns.cost),
      ),
      computedEntry(
        {
          key: "gain",
          label: "Expected gain",
          unit: "bu/ac",
          format: formats.signedOne,
          says: "As they come together.",
        },
        cell(pickColumns.gain),
      ),
      computedEntry({ key: "net", label: "Expected net", ...dollars }, cell(pickColumns.adds)),
      computedEntry(
        {
          key: "sd",
          label: "Give or take (SD)",
          unit: "bu/ac",
          format: formats.two,
          says: "From the spread of each belief, and how far they are off the same way.",
        },
        whenOffered(spreadOfSet()),
      ),
      computedEntry(
        {
          key: "low",
          label: "1 case in 10 nets less than",
          ...dollars,
          says: "By a bell curve of that spread; about the gains alone, not weather or price.",
        },
        known(formula`${setLine("net")}-${step}`),
      ),
      computedEntry(
        { key: "high", label: "1 case in 10 nets more than", ...dollars },
        known(formula`${setLine("net")}+${step}`),
      ),
      wordsEntry({ key: "note", label: "Note" }, cell(pickColumns.why)),
    ],
  };
}

/** √((1 - r) Σ sd² + r (Σ sd)²): on their own for r = 0, all alike for r = 1. */
function spreadOfSet() {
  const spread = practiceStack.all("spread");
  const together = stackTerm("together");
  const apart = formula`SUMPRODUCT(${spread},${spread})`;
  return formula`((1-${together})*${apart}+${together}*SUM(${spread})^2)^0.5`;
}
