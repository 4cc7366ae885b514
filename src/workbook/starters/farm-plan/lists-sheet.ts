import { coverPassWords } from "../../../functions/cover/cover-words";
import { herbicideWords } from "../../../functions/protection/protection-words";
import { typedWords } from "../../model/columns";
import { tableBlock, type TableBlock } from "../../model/table";
import type { SheetModel } from "../../model/workbook-model";
import { labelsOf } from "../word-lists";
import { tabColors } from "../tab-colors";
import type { FarmContext } from "./farm-context";
import { farmSheets } from "./farm-sheets";
import { ingredientNames } from "./protection/protection-headers";
import { passNames } from "./tillage/tillage-headers";

/** Words that are too many for a list in a cell. */
export function listsSheet({ parts }: FarmContext): SheetModel {
  return {
    key: "lists",
    name: farmSheets.lists.name,
    tabColor: tabColors.start,
    title: "Lists",
    answers: "The names that long drop-down lists offer.",
    blocks: [
      ...(parts.includes("tillage") ? [passBlock()] : []),
      ...(parts.includes("protection") ? [ingredientBlock()] : []),
    ],
    print: { orientation: "portrait", onePage: true },
  };
}

function passBlock(): TableBlock {
  const names = labelsOf(coverPassWords);
  const note =
    "Passes whose residue cover is published. A number on the sheet of passes stands for the percent of cover kept.";
  return tableBlock(
    passNames,
    { title: "Passes", rows: names.length },
    { pass: typedWords(names, { width: 60, note }) },
  );
}

function ingredientBlock(): TableBlock {
  const names = labelsOf(herbicideWords);
  const note = "Active ingredients by common name, as the label's ingredient statement gives them.";
  return tableBlock(
    ingredientNames,
    { title: "Active ingredients", rows: names.length },
    { ingredient: typedWords(names, { width: 60, note }) },
  );
}
