import type { Cited } from "../reference/table";
import { type Argument, type CellIn, type RawArgument, type WorksheetFunction } from "./frame";
import { explain } from "./frame/explain";

/**
 * The table rows that a function's numbers rest on: those behind its example, and behind its example with every
 * accepted word put in turn in place of each of its words. Rows that only other amounts reach are not seen.
 *
 * @param guide label of the only guide to ask; null asks every guide
 */
export function citedBy(fn: WorksheetFunction, guide: string | null): Cited[] {
  if (fn.everyRow) return [...fn.everyRow(guide)];
  if (!fn.cites) return [];
  const cited = new Set<Cited>();
  for (const call of callsOf(fn, guide)) {
    const shown = explain(fn, call);
    if ("cites" in shown) for (const row of shown.cites) cited.add(row);
  }
  return [...cited];
}

function callsOf(fn: WorksheetFunction, guide: string | null): RawArgument[][] {
  const slots = Object.entries<Argument>(fn.args);
  const guideAt = slots.findIndex(([name]) => name === "guide");
  const starts = labelsOf(slots[guideAt]?.[1], guide).map((label) => withWord(fn.example.call, guideAt, label));
  if (starts.length === 0) starts.push([...fn.example.call]);
  return starts.flatMap((start) => [
    start,
    ...slots.flatMap(([, argument], at) =>
      at === guideAt ? [] : labelsOf(argument, null).map((label) => withWord(start, at, label)),
    ),
  ]);
}

function labelsOf(argument: Argument | undefined, only: string | null): string[] {
  const words = argument?.vocabulary ?? argument?.orWords;
  if (!words) return [];
  return only === null ? Object.values(words.words).map(({ label }) => label) : [only];
}

/** The call with a word at one place; places between are left out. */
function withWord(call: readonly RawArgument[], at: number, word: CellIn): RawArgument[] {
  const changed = [...call];
  while (changed.length <= at) changed.push(null);
  changed[at] = word;
  return changed;
}
