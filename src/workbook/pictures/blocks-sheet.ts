import { trialLimits } from "../../core/trials/trial-limits";
import { trialBlocks } from "../../functions/trials/trial-blocks";
import { call } from "../formula/call";
import { formula, type Expression, type Term } from "../formula/expression";
import { lookUp, quiet, whenNumbers } from "../formula/natives";
import { place } from "../formula/reference";
import type { EntriesBlock, PlacedCell, RowsBlock } from "../model/block";
import { formats } from "../model/cell";
import { within } from "../model/columns";
import { cautions } from "../model/paragraphs";
import { headRow, sentencesBlock } from "../model/rows";
import { chartColors } from "../starters/chart-colors";
import type { BlocksPicture } from "./picture";
import { chartWithWords, type PictureSheet } from "./picture-sheet";
import {
  blockWords,
  confidenceLine,
  factsKey,
  fact,
  priceLine,
  stripsLive,
  trialTitle,
  yieldCell,
} from "./trial-words";

/** Columns of the table of TRIALBLOCKS, from 1. */
const resultColumns = { treatment: 1, mean: 3, gain: 5, low: 6, high: 7 } as const;

/** The gain of each treatment over the check with its likely range, best first. */
export function blocksSheet(picture: BlocksPicture): PictureSheet {
  const { name, check, money } = picture;
  const result = resultOf(picture);
  return {
    name: "Strip differences",
    title: trialTitle(name),
    answers: `What did each treatment gain over ${check}, and how sure is that?`,
    live: stripsLive,
    blocks: [
      sentencesBlock("In words", [quiet(formula`INDEX(${result},ROWS(${result}),2)`)]),
      factLines(picture),
      gainRows(picture),
      ...chartWithWords(
        {
          kind: "bar",
          title: `Gain over ${check}, bu/ac`,
          alt: `The chart has three bars for each treatment, light to dark: the lowest likely gain over ${check}, the gain measured, and the highest likely one, bu/ac. To the left of zero there was less. The check itself, ${check}, has no bar.`,
          categories: place("gain.treatments"),
          series: [
            { name: "Likely from", values: place("gain.lows"), color: chartColors.running },
            { name: "Gain", values: place("gain.gains"), color: chartColors.income },
            { name: "Likely to", values: place("gain.highs"), color: chartColors.all },
          ],
          yTitle: "bu/ac more than the check",
          yFormat: "0.0",
          columns: { first: 0, last: 5 },
        },
        Math.max(12, 6 + 2 * listed(picture).length),
      ),
      ...(money ? [costRows(money.costs)] : []),
      stripRows(picture),
      cautions(...(trialBlocks.cautions ?? [])),
    ],
    widths: [30, 14, 14, 14, 14, 14],
  };
}

function listed({ strips }: BlocksPicture): string[] {
  return [...new Set(strips.map(({ treatment }) => treatment))];
}

function factLines({ confidencePct, money }: BlocksPicture): EntriesBlock {
  return {
    kind: "entries",
    key: factsKey,
    entries: [confidenceLine(confidencePct), ...(money ? [priceLine(money.priceUsdPerBu)] : [])],
  };
}

function gainRows(picture: BlocksPicture): RowsBlock {
  const rows = listed(picture).map((_, index) => gainRow(picture, index));
  const range = (key: string, column: string) => ({
    key: `gain.${key}`,
    from: `gain.${column}0`,
    to: `gain.${column}${rows.length - 1}`,
  });
  const titles = ["Treatment, best first", "Mean bu/ac", "Gain bu/ac", "Likely from", "Likely to"];
  return {
    kind: "rows",
    title: `Over ${picture.check}`,
    rows: [headRow(...titles, ...(picture.money ? ["Gain that pays"] : [])), ...rows],
    ranges: [range("treatments", "treatment"), range("gains", "gain"), range("lows", "low"), range("highs", "high")],
  };
}

function gainRow(picture: BlocksPicture, index: number): PlacedCell[] {
  const result = resultOf(picture);
  const at = (column: number) => quiet(formula`INDEX(${result},${index + 2},${column})`);
  const bushels = (column: "mean" | "gain" | "low" | "high", format: string): PlacedCell => ({
    content: at(resultColumns[column]),
    style: "computed",
    format,
    key: `gain.${column}${index}`,
  });
  return [
    { content: at(resultColumns.treatment), style: "computedText", key: `gain.treatment${index}` },
    bushels("mean", formats.one),
    bushels("gain", formats.signedOne),
    bushels("low", formats.signedOne),
    bushels("high", formats.signedOne),
    ...(picture.money
      ? [{ content: paysFrom(picture, index), style: "computed", format: formats.signedOne } as const]
      : []),
  ];
}

function resultOf({ check, money }: BlocksPicture): Expression {
  return call(trialBlocks, {
    treatments: place("strips.treatments"),
    blocks: place("strips.blocks"),
    yields: place("strips.yields"),
    confidence: fact("confidence"),
    check,
    ...(money && { price: fact("price"), costs: place("costs.amounts") }),
  });
}

/** What a treatment costs beyond the check, in bushels; nothing for the check itself. */
function paysFrom({ check }: BlocksPicture, index: number): Expression {
  const cost = (treatment: Term) => lookUp(treatment, place("costs.treatments"), place("costs.amounts"));
  const over = formula`${cost(place(`gain.treatment${index}`))}-${cost(check)}`;
  return quiet(whenNumbers([place(`gain.gain${index}`)], formula`(${over})/${fact("price")}`));
}

function costRows(costs: NonNullable<BlocksPicture["money"]>["costs"]): RowsBlock {
  const last = costs.length - 1;
  return {
    kind: "rows",
    title: "What the treatments cost",
    rows: [
      headRow("Treatment", "Cost $/ac"),
      ...costs.map(({ treatment, usdPerAc }, index): PlacedCell[] => [
        { content: treatment, style: "label", key: `cost.treatment${index}` },
        {
          content: usdPerAc,
          style: "input",
          format: formats.cents,
          key: `cost.amount${index}`,
          allow: within(trialLimits.cost, "Cost of the treatment"),
        },
      ]),
    ],
    ranges: [
      { key: "costs.treatments", from: "cost.treatment0", to: `cost.treatment${last}` },
      { key: "costs.amounts", from: "cost.amount0", to: `cost.amount${last}` },
    ],
  };
}

function stripRows({ design, strips }: BlocksPicture): RowsBlock {
  const last = strips.length - 1;
  const range = (key: string, column: string) => ({ key, from: `strip.${column}0`, to: `strip.${column}${last}` });
  return {
    kind: "rows",
    title: "The strips",
    rows: [
      headRow("Treatment", blockWords[design], "Strip", "Yield bu/ac"),
      ...strips.map(({ strip, block, treatment, yieldBuPerAc }, index): PlacedCell[] => [
        { content: treatment, style: "label", key: `strip.treatment${index}` },
        { content: block, style: "label", key: `strip.block${index}` },
        { content: strip, style: "label" },
        yieldCell(`strip.yield${index}`, yieldBuPerAc),
      ]),
    ],
    ranges: [range("strips.treatments", "treatment"), range("strips.blocks", "block"), range("strips.yields", "yield")],
  };
}
