import { guides } from "../../../reference/guides";
import { guideWords } from "../../../functions/words";
import { formula, prose } from "../../formula/expression";
import { sheetName } from "../../formula/reference";
import type { Block, RowsBlock } from "../../model/block";
import { entriesOf } from "../../model/table";
import type { SheetModel } from "../../model/workbook-model";
import { beforeFieldWork, howToRead, inventedFarm } from "../start-words";
import { tabColors } from "../tab-colors";
import type { FarmContext } from "./farm-context";
import { farmSheets, isMade } from "./farm-sheets";
import { named } from "./names";

export function startHereSheet(context: FarmContext): SheetModel {
  return {
    key: "start-here",
    name: farmSheets["start-here"].name,
    tabColor: tabColors.start,
    title: formula`${named("farmName")}&": start here"`,
    answers: "What to fill in, in which order, and how to read what comes out.",
    blocks: [orderBlock(context), sheetsBlock(context), howToRead(), sourcesBlock(context), beforeFieldWork()],
    widths: [26, 86],
    print: { orientation: "portrait", onePage: true },
  };
}

function orderBlock({ parts }: FarmContext): Block {
  return {
    kind: "paragraphs",
    title: "In this order",
    style: "body",
    paragraphs: [
      prose`1. ${sheetName("assumptions")}: choose the guide of your region, then write your own crops and prices over the examples.`,
      prose`2. ${sheetName("materials")}: what your dealer offers, at what price.`,
      prose`3. ${sheetName("fields")}: one row a field, with last and next crop, yields, and what was put on for both.`,
      prose`4. ${sheetName("soil-tests")}: copy the laboratory's report, field by field.`,
      prose`5. Read the ledgers and plans, adjust ${sheetName("budgets")}, and print ${sheetName("summary")}.`,
      ...(parts.includes("practices")
        ? [
            prose`6. Weigh what you might do otherwise on ${sheetName("practices")}, enter strips on ${sheetName("trial-1")}, and see what ${sheetName("stack")} picks.`,
          ]
        : []),
      "Every sheet follows as you type. Rows still empty stay empty; a row half filled says what it waits for.",
      "More fields later: add them below the last row of the list, and drag the lower corner of each other table down.",
    ],
  };
}

function sheetsBlock({ parts }: FarmContext): RowsBlock {
  return {
    kind: "rows",
    title: "The sheets",
    rows: entriesOf(farmSheets)
      .filter(([key]) => key !== "start-here" && isMade(key, parts))
      .map(([key, { purpose }]) => [
        { content: prose`${sheetName(key)}`, style: "link", link: key },
        { content: purpose, style: "body" },
      ]),
  };
}

function sourcesBlock({ guide, withDemo }: FarmContext): Block {
  const { title, year } = guides[guideWords.find(guide) ?? "IN-MI-OH"];
  return {
    kind: "paragraphs",
    title: "Where the numbers come from",
    style: "body",
    paragraphs: [
      `Phosphate and potash: ${title}, ${year}, unless another guide is chosen. Nitrogen, sulfur and zinc: the same region, where it prints a rule. Removal, lime and seed: published extension tables. ` +
        "Each function names its source, page and year; look it up with LOAM.SOURCE or in the Loamsheet pane. Check against the current bulletin.",
      "Dollar figures, material prices and machine costs are examples in the range of university budgets of 2023 to 2025: write over them.",
      ...(withDemo ? [inventedFarm] : []),
    ],
  };
}
