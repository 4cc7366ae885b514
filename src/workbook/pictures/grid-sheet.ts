import { profitGrid } from "../../functions/money/profit-grid";
import { moneyLimits } from "../../core/money/money-limits";
import { call } from "../formula/call";
import { formula } from "../formula/expression";
import { quiet, whenNumbers } from "../formula/natives";
import { formats } from "../model/cell";
import { within } from "../model/columns";
import { typedEntry } from "../model/entries";
import { remarks } from "../model/paragraphs";
import { profitGridBlock } from "../starters/profit-grid-block";
import type { GridPicture } from "./picture";
import type { PictureSheet } from "./picture-sheet";
import { liveWords, titleWith, tried, triedAcre, triedKey, triedLines } from "./tried-lines";

/** Profit of an acre at other yields and prices, as a coloured table. */
export function gridSheet({ crop, tried: acre, yieldStep, priceStep }: GridPicture): PictureSheet {
  return {
    name: "Profit grid",
    title: titleWith("Profit grid", crop),
    answers: "What does an acre leave at other yields and prices?",
    live: liveWords(acre),
    blocks: [
      {
        kind: "entries",
        key: triedKey,
        title: "The acre in the middle",
        entries: [...triedLines(acre), ...stepLines(yieldStep, priceStep)],
      },
      profitGridBlock({
        title: "What an acre leaves, $",
        profit: (yields, prices) => quiet(call(profitGrid, { ...triedAcre, yields, prices })),
        yieldAt: around("yield"),
        priceAt: around("price"),
      }),
      remarks(
        "A minus sign is a loss; the stronger the shade, the farther from zero. High yields often come with low prices: the middle of the grid is not the profit to expect.",
      ),
    ],
    widths: [30, 13, 11, 11, 11, 11, 11, 11],
    isWide: true,
  };
}

function stepLines(yieldStep: number, priceStep: number) {
  const { yield: bushels, price } = moneyLimits;
  return [
    typedEntry(
      { key: "yieldStep", label: "Step from yield to yield", unit: bushels.unit, format: formats.upToThree },
      yieldStep,
      within(bushels, "Bushels between two lines of the grid"),
    ),
    typedEntry(
      { key: "priceStep", label: "Step from price to price", unit: price.unit, format: formats.cents },
      priceStep,
      within(price, "Dollars between two columns of the grid"),
    ),
  ];
}

/** Headings around what is tried, none below zero. */
function around(figure: "yield" | "price") {
  const [middle, step] = [tried(figure), tried(`${figure}Step`)];
  return (steps: number) => whenNumbers([middle, step], formula`MAX(0,${middle}+${steps}*${step})`);
}
