import { seedLimits } from "../../../../core/seed/seed-limits";
import { standCount } from "../../../../functions/seed/row-counts";
import { standGuideWords } from "../../../../functions/seed/seed-words";
import { standRange } from "../../../../functions/seed/stand";
import { standYield } from "../../../../functions/seed/stand-yield";
import { call } from "../../../formula/call";
import { formula, type Expression } from "../../../formula/expression";
import { whenNamed, whenNumbers } from "../../../formula/natives";
import { place } from "../../../formula/reference";
import type { EntriesBlock, Entry } from "../../../model/block";
import { formats } from "../../../model/cell";
import { computed, oneOf, pick, typedNumber, typedWords, within } from "../../../model/columns";
import { computedEntry, typedEntry } from "../../../model/entries";
import { headersOf, tableBlock, type TableBlock } from "../../../model/table";
import { standExample } from "../../../scenario/stand-example";
import { labelsOf } from "../../word-lists";
import { cropList, ofCrop } from "../crop-lookup";
import type { FarmContext } from "../farm-context";
import { fieldList, fromFields } from "../field-lookup";

export const stand = (key: string) => place(`stand.${key}`);
export const found = (key: string) => place(`found.${key}`);

const counts = headersOf("StandCounts", {
  place: "Place counted",
  plants: "Plants on 1/1000 ac",
  stand: "Stand there plants/ac",
});
const places = 12;
/** Fewest counts that have a spread. */
const fewest = 2;

/** The invented stand, where the plan has its field. */
export function exampleFor({ fields }: FarmContext): typeof standExample | null {
  return fields.some(({ field }) => field === standExample.field) ? standExample : null;
}

/** Which stand it is. */
export function standBlock(context: FarmContext): EntriesBlock {
  const start = exampleFor(context);
  const date = "A date, such as 2026-04-28; wheat tables know no date.";
  return {
    kind: "entries",
    key: "stand",
    title: "The stand",
    entries: [
      typedEntry({ key: "field", label: "Field" }, start?.field ?? null, fieldList),
      typedEntry({ key: "crop", label: "Crop" }, start?.crop ?? null, cropList),
      typedEntry({ key: "planted", label: "Planted on", format: formats.date, says: date }, start?.plantedOn ?? null),
      typedEntry(
        {
          key: "guide",
          label: "Table to read it by",
          says: "Whose figures; each covers some crops.",
        },
        start?.guide ?? null,
        oneOf(
          labelsOf(standGuideWords),
          "Corn: Iowa, Illinois or Wisconsin; soybean: Illinois or Penn State; wheat: Penn State or Ontario.",
        ),
      ),
      typedEntry(
        {
          key: "uneven",
          label: "Lost to gaps, unevenness",
          unit: "%",
          format: formats.one,
          says: "Beyond the thin stand; 0 where it is even.",
        },
        0,
        within(seedLimits.lossPct, "Yield lost to gaps or uneven emergence"),
      ),
      computedEntry(
        {
          key: "full",
          label: "Yield of a full stand",
          unit: "bu/ac",
          format: formats.one,
          says: "The field's yield goal, planted in good time.",
        },
        fromFields(stand("field"), "yieldGoal"),
      ),
      computedEntry(
        { key: "rowWidth", label: "Row width", unit: "in", format: formats.one },
        whenNamed(stand("crop"), formula`IFERROR(${ofCrop(stand("crop"), "rowWidth")},"")`),
      ),
    ],
  };
}

/** Counts of several places. */
export function countsBlock(context: FarmContext): TableBlock {
  const rows = exampleFor(context)?.counts ?? [];
  const plants = counts.own("plants");
  return tableBlock(
    counts,
    { title: "Counts", rows: places },
    {
      place: typedWords(pick(rows, "place"), { width: 27, note: "Ten places at random; walk in before you look." }),
      plants: typedNumber(pick(rows, "plants"), {
        width: 14,
        format: formats.whole,
        allow: within(seedLimits.plantCount, "Plants in the length of row that is 1/1000 acre: 17 ft 5 in at 30 in"),
      }),
      stand: computed(
        whenNumbers([plants, stand("rowWidth")], call(standCount, { counts: plants, rowWidth: stand("rowWidth") })),
        { width: 14, format: formats.whole },
      ),
    },
  );
}

/** How thick the stand is, how sure that is, and what it may yield. */
export function foundBlock(): EntriesBlock {
  return {
    kind: "entries",
    key: "found",
    title: "What the counts say",
    entries: [
      plantsLine("low", "Stand at least", 1, "The true stand lies between these two 19 times in 20."),
      plantsLine("mean", "Mean stand", 2, ""),
      plantsLine("high", "Stand at most", 3, ""),
      computedEntry({ key: "more", label: "More counts for ±5 %", unit: "counts", format: formats.whole }, ranged(6)),
      computedEntry(
        { key: "share", label: "Share of full yield", unit: "%", format: formats.one },
        readTable(
          call(standYield, {
            crop: stand("crop"),
            plantingDate: stand("planted"),
            stand: found("mean"),
            guide: stand("guide"),
            unevenLoss: stand("uneven"),
            rowWidth: stand("rowWidth"),
          }),
        ),
      ),
      computedEntry(
        { key: "yield", label: "Kept, it may yield", unit: "bu/ac", format: formats.one },
        whenNumbers([found("share"), stand("full")], formula`${found("share")}/100*${stand("full")}`),
      ),
    ],
  };
}

/** Nothing until stand, crop and table are known. */
export function readTable(value: Expression): Expression {
  return whenNamed(stand("guide"), whenNumbers([found("mean"), stand("rowWidth")], value));
}

function plantsLine(key: string, label: string, column: number, says: string): Entry {
  return computedEntry({ key, label, unit: "plants/ac", format: formats.whole, says }, ranged(column));
}

/** A figure of the one line that the range of the stand gives. */
function ranged(column: number): Expression {
  const range = call(standRange, { counts: counts.all("plants"), rowWidth: stand("rowWidth") });
  const enough = formula`IF(COUNT(${counts.all("plants")})<${fewest},"",INDEX(${range},2,${column}))`;
  return whenNumbers([stand("rowWidth")], enough);
}
