import { moneyLimits } from "../../core/money/money-limits";
import { profitGrid } from "../../functions/money/profit-grid";
import { call } from "../formula/call";
import { formula, type Expression } from "../formula/expression";
import { less, quiet } from "../formula/natives";
import { place, type Reference } from "../formula/reference";
import type { PlacedCell, RowsBlock } from "../model/block";
import { formats } from "../model/cell";
import { within } from "../model/columns";
import { computedEntry } from "../model/entries";
import { headRow } from "../model/rows";
import { chartColors } from "../starters/chart-colors";
import type { SwingRange, TornadoPicture } from "./picture";
import { chartWithWords, type PictureSheet } from "./picture-sheet";
import { figureFacts, liveWords, titleWith, tried, triedAcre, triedKey, triedLines } from "./tried-lines";

/** What moves profit most: a pair of bars for each figure, at its lowest and at its highest. */
export function tornadoSheet({ crop, tried: acre, swings }: TornadoPicture): PictureSheet {
  const profit = computedEntry(
    { key: "profit", label: "An acre leaves", unit: "$/ac", format: formats.cents },
    quiet(call(profitGrid, triedAcre)),
  );
  return {
    name: "What moves profit",
    title: titleWith("What moves profit most", crop),
    answers: "How far does the profit of an acre move when one figure goes to its lowest or highest?",
    live: `${liveWords(acre)} The rows stand in the order of that day, widest first.`,
    blocks: [
      { kind: "entries", key: triedKey, title: "The acre as tried", entries: [...triedLines(acre), profit] },
      swingRows(swings),
      ...chartWithWords(
        {
          kind: "bar",
          title: "Change of profit, $/ac",
          alt: "The chart has two bars on one line for each figure, in the order of the table: how far the profit of an acre moves with the figure at its lowest, light, and at its highest, dark. What has the longest bars is what to look after first.",
          categories: place("swing.name"),
          series: [
            { name: "At the lowest", values: place("swing.moveLow"), color: chartColors.running },
            { name: "At the highest", values: place("swing.moveHigh"), color: chartColors.soil },
          ],
          yTitle: "$/ac",
          yFormat: "$#,##0;-$#,##0",
          onOneLine: true,
          columns: { first: 0, last: 8 },
        },
        Math.max(12, 5 + swings.length * 2),
      ),
    ],
    widths: [30, 11, 11, 11, 11, 12, 12, 12, 12],
    isWide: true,
  };
}

const key = (row: number, column: string) => `swing.${column}${row}`;

function swingRows(swings: readonly SwingRange[]): RowsBlock {
  const range = (column: string) => ({
    key: `swing.${column}`,
    from: key(0, column),
    to: key(swings.length - 1, column),
  });
  return {
    kind: "rows",
    title: "One figure at a time, all others as tried",
    rows: [
      headRow(
        "Figure",
        "Unit",
        "Lowest",
        "As tried",
        "Highest",
        "Profit at lowest",
        "Profit at highest",
        "Change at lowest",
        "Change at highest",
      ),
      ...swings.map(swingRow),
    ],
    ranges: ["name", "moveLow", "moveHigh"].map(range),
    heights: { 0: 32 },
  };
}

function swingRow(swing: SwingRange, row: number): PlacedCell[] {
  const at = (column: string) => place(key(row, column));
  const { label, limit, format } =
    typeof swing.moves === "string"
      ? figureFacts[swing.moves]
      : { label: swing.name, limit: moneyLimits.costPerAc, format: formats.cents };
  const typed = (column: string, value: number, what: string): PlacedCell => ({
    key: key(row, column),
    content: value,
    style: "input",
    format,
    allow: within(limit, `${what} ${label.toLowerCase()}`),
  });
  const now: PlacedCell =
    typeof swing.moves === "string"
      ? { key: key(row, "now"), content: formula`${tried(swing.moves)}`, style: "computed", format }
      : typed("now", swing.moves.planned, "Planned");
  const dollars = (column: string, content: Expression, shown: string): PlacedCell => ({
    key: key(row, column),
    content,
    style: "computed",
    format: shown,
  });
  const change = (profit: Reference) => less(profit, tried("profit"));
  return [
    { key: key(row, "name"), content: swing.name, style: "label" },
    { content: limit.unit, style: "unit" },
    typed("low", swing.low, "Lowest"),
    now,
    typed("high", swing.high, "Highest"),
    dollars("atLow", profitWith(swing, at("low"), at("now")), formats.cents),
    dollars("atHigh", profitWith(swing, at("high"), at("now")), formats.cents),
    dollars("moveLow", change(at("atLow")), "+$#,##0.00_);-$#,##0.00_);$0.00_)"),
    dollars("moveHigh", change(at("atHigh")), "+$#,##0.00_);-$#,##0.00_);$0.00_)"),
  ];
}

const argumentOf = {
  yield: "yields",
  price: "prices",
  cost: "cost",
  perBushel: "costPerBushel",
  other: "otherIncome",
} as const;

/** Profit of the acre with one figure elsewhere; a part of the costs takes the place of what was planned of it. */
function profitWith({ moves }: SwingRange, there: Reference, now: Reference): Expression {
  const moved =
    typeof moves === "string"
      ? { [argumentOf[moves]]: there }
      : { cost: formula`MAX(0,${tried("cost")}-${now}+${there})` };
  return quiet(call(profitGrid, { ...triedAcre, ...moved }));
}
