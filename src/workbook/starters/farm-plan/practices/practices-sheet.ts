import { formula } from "../../../formula/expression";
import type { RowsBlock } from "../../../model/block";
import { cautions } from "../../../model/paragraphs";
import type { SheetModel } from "../../../model/workbook-model";
import { tabColors } from "../../tab-colors";
import { farmSheets } from "../farm-sheets";
import { decisionTableBlock, whyExpression } from "./decision-table";
import type { PracticeContext } from "./practice-context";
import { practiceDecisions } from "./practice-headers";
import { practiceListBlock } from "./practice-table";
import { practiceTermsBlock } from "./practice-terms-block";
import { trialResultsBlock } from "./trial-results-block";

/** Practices under discussion, what the trials said of them, and what to do about each. */
export function practicesSheet(context: PracticeContext): SheetModel {
  return {
    key: "practices",
    name: farmSheets.practices.name,
    tabColor: tabColors.answer,
    title: "Practices",
    answers: "Which practices pay, how likely, and which to adopt, test on strips first, or skip.",
    blocks: [
      practiceTermsBlock(context),
      practiceListBlock(context),
      trialResultsBlock(),
      decisionTableBlock(context),
      whyBlock(context),
      cautions(
        "A profitable average is no promise: a gain is a belief until strips have shown it, and a trial speaks for its field and season.",
        "Pesticides: the label is the law, for crop, rate, timing and mixing. Treated seed: keep it out of feed and grain. Local rules and licensed practice come before anything listed here.",
        "Tile and other work that stays for years: weigh it as an investment as well, with a drainage contractor and your tax adviser.",
      ),
    ],
    print: { orientation: "portrait", onePage: true },
  };
}

function whyBlock({ rows }: PracticeContext): RowsBlock {
  return {
    kind: "rows",
    title: "Why",
    rows: Array.from({ length: rows }, (_, index) => [
      { content: formula`INDEX(${practiceDecisions.all("practice")},${index + 1})&""`, style: "body" },
      { content: whyExpression(formula`${index + 1}`), style: "body" },
    ]),
  };
}
