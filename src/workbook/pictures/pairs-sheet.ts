import { trialLimits } from "../../core/trials/trial-limits";
import { trialPairs } from "../../functions/trials/trial-pairs";
import { call } from "../formula/call";
import { formula, type Expression } from "../formula/expression";
import { quiet, whenNumbers } from "../formula/natives";
import { place } from "../formula/reference";
import type { EntriesBlock, PlacedCell, RowsBlock } from "../model/block";
import { formats } from "../model/cell";
import { within } from "../model/columns";
import { typedEntry } from "../model/entries";
import { cautions } from "../model/paragraphs";
import { headRow, sentencesBlock } from "../model/rows";
import { chartColors } from "../starters/chart-colors";
import type { PairsPicture } from "./picture";
import { chartWithWords, type PictureSheet } from "./picture-sheet";
import {
  blockWords,
  confidenceLine,
  fact,
  factsKey,
  priceLine,
  stripsLive,
  trialTitle,
  yieldCell,
} from "./trial-words";

/** Rows of the table of TRIALPAIRS, from 1, its heading first; a sentence closes it. */
const resultRows = { gain: 5, low: 7, high: 8 } as const;
const wordsRow = { alone: 14, withMoney: 19 } as const;

/** The gain of each pair, and of all with its likely range. */
export function pairsSheet(picture: PairsPicture): PictureSheet {
  const { name, treatments, money } = picture;
  const title = trialTitle(name);
  return {
    name: "Strip differences",
    title,
    answers: `What did ${treatments.treated} gain over ${treatments.check}, pair by pair and in all?`,
    live: stripsLive,
    blocks: [
      sentencesBlock("In words", [quiet(resultAt(money ? wordsRow.withMoney : wordsRow.alone, money !== undefined))]),
      factLines(picture),
      pairRows(picture),
      ...chartWithWords(
        {
          kind: "bar",
          title: `Gain of ${treatments.treated} over ${treatments.check}, bu/ac`,
          alt: `The chart has a bar for each pair of strips, then the mean of all and both ends of its likely range${money ? ", and last the gain that pays" : ""}: bu/ac more than ${treatments.check}. To the left of zero there was less.`,
          categories: place("gain.names"),
          series: [{ name: "bu/ac", values: place("gain.values"), color: chartColors.soil }],
          yTitle: "bu/ac more than the check",
          yFormat: "0.0",
          columns: { first: 0, last: 4 },
        },
        Math.max(12, Math.ceil(8 + picture.pairs.length * 1.3)),
      ),
      cautions(...(trialPairs.cautions ?? [])),
    ],
    widths: [28, 14, 14, 14, 28],
  };
}

function factLines({ confidencePct, money, treatments }: PairsPicture): EntriesBlock {
  return {
    kind: "entries",
    key: factsKey,
    entries: [
      confidenceLine(confidencePct),
      ...(money
        ? [
            priceLine(money.priceUsdPerBu),
            typedEntry(
              {
                key: "cost",
                label: `${treatments.treated} costs`,
                unit: "$/ac",
                format: formats.cents,
                says: `More than ${treatments.check}.`,
              },
              money.costUsdPerAc,
              within(trialLimits.cost, "Cost of the treatment"),
            ),
          ]
        : []),
    ],
  };
}

function pairRows(picture: PairsPicture): RowsBlock {
  const { design, treatments, pairs, money } = picture;
  const last = pairs.length - 1;
  const wholes: [string, Expression][] = [
    ["Mean of all", quiet(resultAt(resultRows.gain, false))],
    ["Likely from", quiet(resultAt(resultRows.low, false))],
    ["Likely to", quiet(resultAt(resultRows.high, false))],
    ...(money ? [["Gain that pays", quiet(formula`${fact("cost")}/${fact("price")}`)] as [string, Expression]] : []),
  ];
  return {
    kind: "rows",
    rows: [
      headRow(blockWords[design], treatments.check, treatments.treated, "Gain bu/ac"),
      ...pairs.map(({ block, check, treated }, row) =>
        pairRow(`${blockWords[design]} ${block}`, { check, treated }, row),
      ),
      ...wholes.map(([label, content], index): (PlacedCell | null)[] => [
        { content: label, style: "totalText", key: `gain.name${pairs.length + index}` },
        { style: "total" },
        { style: "total" },
        { content, style: "total", format: formats.signedOne, key: `gain.value${pairs.length + index}` },
      ]),
    ],
    ranges: [
      { key: "strips.check", from: "strip.check0", to: `strip.check${last}` },
      { key: "strips.treated", from: "strip.treated0", to: `strip.treated${last}` },
      { key: "gain.names", from: "gain.name0", to: `gain.name${last + wholes.length}` },
      { key: "gain.values", from: "gain.value0", to: `gain.value${last + wholes.length}` },
    ],
  };
}

type Yields = Pick<PairsPicture["pairs"][number], "check" | "treated">;

function pairRow(label: string, { check, treated }: Yields, row: number): PlacedCell[] {
  const [without, with_] = [place(`strip.check${row}`), place(`strip.treated${row}`)];
  return [
    { content: label, style: "label", key: `gain.name${row}` },
    yieldCell(`strip.check${row}`, check),
    yieldCell(`strip.treated${row}`, treated),
    {
      content: whenNumbers([without, with_], formula`${with_}-${without}`),
      style: "computed",
      format: formats.signedOne,
      key: `gain.value${row}`,
    },
  ];
}

function resultAt(row: number, withMoney: boolean): Expression {
  const result = call(trialPairs, {
    check: place("strips.check"),
    treated: place("strips.treated"),
    confidence: fact("confidence"),
    ...(withMoney && { price: fact("price"), cost: fact("cost") }),
  });
  return formula`INDEX(${result},${row},2)`;
}
