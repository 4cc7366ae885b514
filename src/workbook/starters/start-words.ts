import type { ParagraphsBlock, RowsBlock } from "../model/block";

/** What the looks of cells and the signs mean; the same in every starter. */
export function howToRead(): RowsBlock {
  return {
    kind: "rows",
    title: "How to read it",
    rows: [
      [
        { content: "blue on cream", style: "inputText" },
        { content: "yours to fill in or write over", style: "body" },
      ],
      [
        { content: "black on white", style: "computedText" },
        { content: "worked out; leave it as it is", style: "body" },
      ],
      [
        { content: "bold on gray", style: "totalText" },
        { content: "worked out over all rows", style: "body" },
      ],
      [
        { content: "▲ ● ▼", style: "computedText" },
        { content: "gains or builds up, even or waiting, falls short or draws down", style: "body" },
      ],
      [
        { content: "N/A", style: "computedText" },
        { content: "shown as #N/A: waits for a cell that is still blank; the pane says which one", style: "body" },
      ],
    ],
  };
}

/** Said wherever the invented farm stands. */
export const inventedFarm = "Windmill Hollow Farm and all of its figures are invented.";

/** Said once, at the front. */
export function beforeFieldWork(): ParagraphsBlock {
  return {
    kind: "paragraphs",
    title: "Before anything is done in the field",
    style: "caution",
    paragraphs: [
      "Pesticides: the label is the law, for crop, rate, timing, mixing, drift, re-entry and days to harvest. Some products call for a licensed applicator.",
      "Fertilizer, manure and lime: state and local rules on rates, setbacks, frozen ground and records come before any guide.",
      "Anhydrous ammonia and machinery: only trained people, with the protection and the water the supplier and the maker call for.",
      "These sheets do arithmetic. A certified adviser who knows the field, and your own judgment, decide.",
    ],
  };
}
