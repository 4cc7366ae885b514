import { harvestLimits } from "../../../../core/harvest/harvest-limits";
import { earCountYield, podCountYield } from "../../../../functions/harvest/corn-and-soybean-counts";
import { headCountYield } from "../../../../functions/harvest/wheat-counts";
import { call } from "../../../formula/call";
import { formula, type Term } from "../../../formula/expression";
import { orBlank, whenNumbers } from "../../../formula/natives";
import { formats } from "../../../model/cell";
import { computed, pick, typedNumber, typedWords, within } from "../../../model/columns";
import { tableBlock, type TableBlock } from "../../../model/table";
import { earCounts, headCounts, podCounts } from "../../../scenario/harvest-examples";
import type { FarmContext } from "../farm-context";
import { earTable, headTable, podTable } from "./harvest-headers";

const places = 5;
const wholeLabel = "Mean of the places";
const place = { width: 26, note: "Where it was counted: five places or more tell a field." };
const one = { width: 11, format: formats.one };

/** Yield before harvest, a table for every crop that is grown. */
export function yieldCountBlocks(context: FarmContext): TableBlock[] {
  const grows = (name: string) => context.crops.some(({ crop }) => crop === name);
  return [
    ...(grows("corn") ? [earBlock(context)] : []),
    ...(grows("soybean") ? [podBlock(context)] : []),
    ...(grows("wheat") ? [headBlock(context)] : []),
  ];
}

function earBlock(context: FarmContext): TableBlock {
  const { ears, kernelRows, kernelsPerRow } = ownOf(earTable);
  const rows = countsOf(context, earCounts);
  return tableBlock(
    earTable,
    { title: "Corn: ears and kernels, from the milk stage on", rows: places, wholeLabel },
    {
      place: typedWords(pick(rows, "place"), place),
      ears: typedNumber(pick(rows, "ears"), { ...one, allow: within(harvestLimits.ears, "Ears worth harvesting") }),
      kernelRows: typedNumber(pick(rows, "kernelRows"), {
        ...one,
        allow: within(harvestLimits.kernelRows, "Rows of kernels around an ear, the mean of every fifth ear"),
      }),
      kernelsPerRow: typedNumber(pick(rows, "kernelsPerRow"), {
        ...one,
        allow: within(harvestLimits.kernelsPerRow, "Kernels along a row, without the small ones at the ends"),
      }),
      yield: computed(
        whenNumbers([ears, kernelRows, kernelsPerRow], call(earCountYield, { ears, kernelRows, kernelsPerRow })),
        yieldLook(earTable.all("yield"), "At 90,000 kernels in a bushel; early counts are often 20 bu/ac off."),
      ),
    },
  );
}

function podBlock(context: FarmContext): TableBlock {
  const { plants, podsPerPlant, seedsPerPod, seedsPerPound } = ownOf(podTable);
  const rows = countsOf(context, podCounts);
  const yields = call(podCountYield, {
    plants,
    podsPerPlant,
    seedsPerPod: orBlank(seedsPerPod),
    seedsPerPound: orBlank(seedsPerPound),
  });
  return tableBlock(
    podTable,
    { title: "Soybean: stand and pods", rows: places, wholeLabel },
    {
      place: typedWords(pick(rows, "place"), place),
      plants: typedNumber(pick(rows, "plants"), {
        width: 11,
        format: formats.whole,
        allow: within(harvestLimits.plants, "Plants on an acre"),
      }),
      podsPerPlant: typedNumber(pick(rows, "podsPerPlant"), {
        ...one,
        allow: within(harvestLimits.podsPerPlant, "Pods on a plant, the mean of ten or more"),
      }),
      seedsPerPod: typedNumber(pick(rows, "seedsPerPod"), {
        ...one,
        allow: within(harvestLimits.seedsPerPod, "Seeds in a pod; blank: 2.5"),
      }),
      seedsPerPound: typedNumber(pick(rows, "seedsPerPound"), {
        width: 11,
        format: formats.whole,
        allow: within(harvestLimits.seedsPerPoundSoybean, "Seeds in a pound; blank: 2,500"),
      }),
      yield: computed(
        whenNumbers([plants, podsPerPlant], yields),
        yieldLook(podTable.all("yield"), "If the pods fill as assumed; count later for a better answer."),
      ),
    },
  );
}

function headBlock(context: FarmContext): TableBlock {
  const { heads, rowWidth, spikelets } = ownOf(headTable);
  const rows = countsOf(context, headCounts);
  return tableBlock(
    headTable,
    { title: "Wheat: heads and spikelets", rows: places, wholeLabel },
    {
      place: typedWords(pick(rows, "place"), place),
      heads: typedNumber(pick(rows, "heads"), { ...one, allow: within(harvestLimits.heads, "Heads in 3 ft of a row") }),
      rowWidth: typedNumber(
        rows.map(() => 7.5),
        { ...one, allow: within(harvestLimits.rowWidth, "Row width") },
      ),
      spikelets: typedNumber(pick(rows, "spikelets"), {
        ...one,
        allow: within(harvestLimits.spikelets, "Spikelets on a head, without the top and the bottom one"),
      }),
      yield: computed(
        whenNumbers([heads, rowWidth, spikelets], call(headCountYield, { heads, rowWidth, spikelets })),
        yieldLook(headTable.all("yield"), "With small kernels and some loss allowed for."),
      ),
    },
  );
}

/** The counts of the invented field, where the plan has that field. */
function countsOf<Row>(
  { fields }: FarmContext,
  { field, places: counted }: { readonly field: string; readonly places: readonly Row[] },
): readonly Row[] {
  return fields.some((each) => each.field === field) ? counted : [];
}

function ownOf<Column extends string>(table: {
  readonly headers: Readonly<Record<Column, string>>;
  own(column: Column): Term;
}): Record<Column, Term> {
  const columns = Object.keys(table.headers) as Column[]; // the keys it was declared with
  return Object.fromEntries(columns.map((column) => [column, table.own(column)])) as Record<Column, Term>;
}

function yieldLook(all: Term, note: string) {
  return { width: 11, format: formats.one, note, whole: formula`IF(COUNT(${all})=0,"",SUM(${all})/COUNT(${all}))` };
}
