import type { CellPlace } from "../area";
import { formula } from "../formula/expression";
import { place } from "../formula/reference";
import type { PlacedCell, RowsBlock } from "../model/block";
import { formats } from "../model/cell";
import { headRow } from "../model/rows";
import { chartColors } from "../starters/chart-colors";
import { evenWithinLbPerAc, meaning } from "../starters/farm-plan/soil/ledger-sheet";
import type { DriftPicture, LedgerPicture, Trade } from "./picture";
import { chartWithWords, outside, type PictureSheet } from "./picture-sheet";

const elements: Readonly<Record<Trade, string>> = { potash: "Potassium", phosphate: "Phosphorus" };
const live =
  "Live: fields and numbers follow your ledger. A field that is filled in there later is not here; make the picture again for it.";

/** A bar a field: which of them are drawn down. */
export function ledgerSheet({ trade, rows }: LedgerPicture): PictureSheet {
  const title = `${trade === "potash" ? "Potash" : "Phosphate"} by field`;
  const key = (row: number, column: string) => `ledger.${column}${row}`;
  const body = rows.map(({ field, perYear }, row): PlacedCell[] => [
    { ...followed(field, "words"), key: key(row, "field") },
    {
      ...followed(perYear, formats.signedOne),
      key: key(row, "perYear"),
    },
    { content: meaning(place(key(row, "perYear")), trade), style: "computedText" },
  ]);
  const perYear = { from: key(0, "perYear"), to: key(rows.length - 1, "perYear") };
  return {
    name: title,
    title,
    answers: `What goes on less what two crops take, lb/ac a year: which fields draw ${trade} down?`,
    live,
    blocks: [
      {
        kind: "rows",
        rows: [headRow("Field", "Balance lb/ac a year", "What it means"), ...body],
        ranges: [
          { key: "ledger.fields", from: key(0, "field"), to: key(rows.length - 1, "field") },
          { key: "ledger.perYear", ...perYear },
        ],
        rules: [{ ...perYear, rule: { kind: "compare", when: "below", value: -evenWithinLbPerAc, look: "attention" } }],
        heights: { 0: 32 },
      },
      ...chartWithWords(
        {
          kind: "bar",
          title: `${title}, lb/ac a year`,
          alt: `The chart has a bar for each field, in the order of the table: ${trade} put on less what two crops take, lb/ac a year. To the left of zero the field is drawn down.`,
          categories: place("ledger.fields"),
          series: [{ name: "lb/ac a year", values: place("ledger.perYear"), color: chartColors.soil }],
          yTitle: "lb/ac a year",
          yFormat: "0",
          columns: { first: 0, last: 2 },
        },
        chartRows(rows.length),
      ),
    ],
    widths: [24, 14, 44],
  };
}

/** Three columns a field: the test now, after the next two crops by the plan, and with nothing put on. */
export function driftSheet({ trade, rows }: DriftPicture): PictureSheet {
  const title = `${elements[trade]} test drift`;
  return {
    name: title,
    title,
    answers: `Where is the ${trade} test heading over the next two crops, with the plan and with nothing put on?`,
    live,
    blocks: [
      driftRows(rows),
      ...chartWithWords(
        {
          kind: "column",
          title: `${elements[trade]} test over the next rotation, ppm`,
          alt: "The chart has three columns for each field, light to dark in this order: the soil test now, after the next two crops by the plan, and after them with nothing put on. Soils buffer differently: a direction, not a promise.",
          categories: place("drift.field"),
          series: [
            { name: "Now", values: place("drift.now"), color: chartColors.running },
            { name: "By the plan", values: place("drift.byPlan"), color: chartColors.income },
            { name: "Nothing put on", values: place("drift.nothingOn"), color: chartColors.all },
          ],
          yTitle: "ppm",
          yFormat: "0",
          columns: { first: 0, last: 4 },
        },
        18,
      ),
    ],
    widths: [24, 12, 14, 16, 18],
  };
}

function driftRows(rows: DriftPicture["rows"]): RowsBlock {
  const columns = ["field", "now", "byPlan", "nothingOn"] as const;
  const key = (row: number, column: string) => `drift.${column}${row}`;
  return {
    kind: "rows",
    rows: [
      headRow("Field", "Test now ppm", "By the plan ppm", "Nothing put on ppm"),
      ...rows.map((cells, row) =>
        columns.map((column): PlacedCell => ({
          ...followed(cells[column], column === "field" ? "words" : formats.whole),
          key: key(row, column),
        })),
      ),
    ],
    ranges: columns.map((column) => ({
      key: `drift.${column}`,
      from: key(0, column),
      to: key(rows.length - 1, column),
    })),
    heights: { 0: 32 },
  };
}

/** A cell that shows what another one shows. */
function followed(cell: CellPlace, format: string): PlacedCell {
  const content = formula`${outside(cell)}`;
  return format === "words" ? { content, style: "computedText" } : { content, style: "computed", format };
}

function chartRows(bars: number): number {
  return Math.max(12, Math.ceil(5 + bars * 1.3));
}
