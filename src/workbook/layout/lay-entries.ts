import { areaFrom } from "../area";
import { placeKey } from "../formula/reference";
import type { EntriesBlock, Entry } from "../model/block";
import type { ModelCell } from "../model/cell";
import { wordsOf } from "../names/words-of";
import { fragment, heading, type DraftCell, type Fragment, type Ground } from "./fragment";
import { computedCell, inputCell } from "./value-cells";

const valueColumn = 1;

/** Label, value, unit and a word about it, one line an entry. */
export function layEntries(block: EntriesBlock, { top, names }: Ground): Fragment {
  const { cells: head, start } = heading(block.title, top);
  const at = (index: number) => areaFrom({ row: start + index, column: valueColumn });
  return fragment({
    cells: [...head, ...block.entries.flatMap((entry, index) => lineOf(entry, start + index))],
    places: block.entries.map((entry, index) => [placeKey(block.key, entry.key), at(index)] as const),
    names: block.entries.flatMap(({ name, label, unit }, index) =>
      name === undefined
        ? []
        : [{ name, area: at(index), says: `${wordsOf(label, names)}${unit ? ` (${unit})` : ""}` }],
    ),
    validations: block.entries.flatMap(({ value }, index) =>
      value.kind === "input" && value.allow ? [{ area: at(index), allow: value.allow }] : [],
    ),
    rules: block.entries.flatMap(({ rules = [] }, index) => rules.map((rule) => ({ area: at(index), rule }))),
    widths: [30, 14, 10],
    end: start + block.entries.length,
  });
}

function lineOf(entry: Entry, row: number): DraftCell[] {
  const says =
    entry.says === undefined || entry.says === ""
      ? []
      : [{ row, column: 3, content: entry.says, style: "says" as const }];
  return [
    { row, column: 0, content: entry.label, style: "label" },
    { row, column: valueColumn, ...valueCell(entry) },
    { row, column: 2, ...(entry.unit !== "" && { content: entry.unit }), style: "unit" },
    ...says,
  ];
}

function valueCell({ value, format }: Entry): ModelCell {
  const cell = value.kind === "input" ? inputCell(value.start) : computedCell(value.formula, value.words);
  return { ...cell, ...(format !== undefined && { format }) };
}
