import { limits } from "../../../../core/limits";
import { trialLimits } from "../../../../core/trials/trial-limits";
import { formula, type Expression } from "../../../formula/expression";
import type { EntriesBlock, Entry } from "../../../model/block";
import { formats } from "../../../model/cell";
import { oneOf, within } from "../../../model/columns";
import { computedEntry, typedEntry, wordsEntry } from "../../../model/entries";
import { stripEntries } from "../../../scenario/trial-examples";
import { fieldTable } from "../headers";
import { practiceTable } from "../practices/practice-headers";
import { fromPractices } from "../practices/practice-lookup";
import { term } from "../practices/practice-terms-block";
import { trialKey, trialLine, type TrialLine } from "./trial-places";
import type { Trial } from "./trial";

/** Pairs that a sheet holds. */
export const stripRows = 8;

export function trialLinesBlock(trial: Trial): EntriesBlock {
  return {
    kind: "entries",
    key: trialKey(trial.index),
    title: "The trial",
    entries: [...whatLines(trial), ...layoutLines(trial), ...stripLines(trial), ...moneyLines(trial)],
  };
}

function whatLines({ example }: Trial): Entry[] {
  const practices = oneOf({ table: practiceTable.table, column: "practice" }, "A practice from the list of practices.");
  const fields = oneOf({ table: fieldTable.table, column: "field" }, "The field the strips lie in.");
  return [
    typedEntry({ key: "practice", label: "Practice" }, example?.practice ?? null, practices),
    typedEntry(
      { key: "check", label: "Untreated strips are called", says: "Everything but the treatment is alike." },
      "check",
    ),
    typedEntry(
      { key: "treated", label: "Treated strips are called", says: "A short word for the layout below." },
      example?.treated ?? "treated",
    ),
    typedEntry({ key: "field", label: "Field" }, example?.field ?? null, fields),
    typedEntry({ key: "season", label: "Season", says: "In your own words." }, example?.season ?? "next season"),
    wordsEntry({ key: "crop", label: "Crop", says: "From the sheet of practices." }, formula`${term("crop")}&""`),
  ];
}

function layoutLines({ example }: Trial): Entry[] {
  return [
    typedEntry(
      {
        key: "blocks",
        label: "Pairs of strips",
        unit: "pairs",
        format: formats.whole,
        says: "Four to six are usual; this sheet holds eight.",
      },
      example?.pairs.length ?? 6,
      { kind: "between", min: 2, max: stripRows, whole: true, prompt: "Pairs of strips side by side." },
    ),
    typedEntry(
      {
        key: "seed",
        label: "Draw number",
        format: formats.whole,
        says: "Any whole number; the same one draws the same layout again. Choose it once.",
      },
      example?.seed ?? 1,
      { kind: "between", min: 0, max: 1_000_000, whole: true, prompt: "Any whole number." },
    ),
    typedEntry(
      { key: "entered", label: "Yields come as", says: "Pounds over the scale, or bushels of each whole strip." },
      example?.entered ?? stripEntries[0],
      oneOf(stripEntries, "How the yields of the strips are entered below."),
    ),
  ];
}

function stripLines({ example }: Trial): Entry[] {
  return [
    typedEntry(
      {
        key: "length",
        label: "Length harvested",
        unit: "ft",
        format: formats.whole,
        says: "Of each strip; only pounds need it.",
      },
      example?.lengthFt ?? 1000,
      within(trialLimits.feet, "Length harvested of each strip"),
    ),
    typedEntry(
      {
        key: "width",
        label: "Width harvested",
        unit: "ft",
        format: formats.one,
        says: "Rows harvested times their width.",
      },
      example?.widthFt ?? 30,
      within(trialLimits.width, "Width harvested of each strip"),
    ),
    typedEntry(
      {
        key: "confidence",
        label: "Confidence of the range",
        unit: "%",
        format: formats.whole,
        says: "90 is usual for strips on a farm: the range is wrong once in ten.",
      },
      90,
      within({ ...limits.share, min: 50, max: 99 }, "Confidence of the range"),
    ),
  ];
}

function moneyLines({ index }: Trial): Entry[] {
  const practice = trialLine(index, "practice");
  const line = (key: TrialLine, label: string, unit: string, says: string, value: Expression) =>
    computedEntry({ key, label, unit, format: formats.cents, says }, value);
  return [
    line("cost", "The practice costs", "$/ac", "From the sheet of practices.", fromPractices(practice, "cost")),
    line("price", "A bushel leaves", "$/bu", "Price less hauling and drying.", formula`${term("price")}+0`),
  ];
}
