import { merge, mergeLocales } from "@univerjs/core";
import rulesWords from "@univerjs/preset-sheets-conditional-formatting/locales/en-US";
import coreWords from "@univerjs/preset-sheets-core/locales/en-US";
import validationWords from "@univerjs/preset-sheets-data-validation/locales/en-US";
import drawingWords from "@univerjs/preset-sheets-drawing/locales/en-US";
import noteWords from "@univerjs/preset-sheets-note/locales/en-US";
import tableWords from "@univerjs/preset-sheets-table/locales/en-US";

const locked = "This cell is calculated and locked. Change the input cells it is calculated from.";
const seeWorking = "Select the cell and open Show the working in the tools: it says what is missing.";

/** Every refusal of a locked cell has a sentence of its own in the grid, all of them about asking a creator. */
function lockedSentences(refusals: object): Record<string, string> {
  return Object.fromEntries(
    Object.keys(refusals)
      .filter((key) => /Err$|alertContent/.test(key))
      .map((key) => [key, locked]),
  );
}

/** Our words where the grid's own would not help the person. */
const ours = {
  sheets: { permission: { dialog: lockedSentences(coreWords.sheets.permission.dialog) } },
  "sheets-ui": {
    permission: { dialog: { ...lockedSentences(coreWords["sheets-ui"].permission.dialog), alert: "Locked" } },
    definedName: { formulaOrRefStringInvalid: "Give a range of cells, such as Fields!B4:B9." },
    sheetConfig: { tipNameRepeat: "Another sheet has this name. Choose a different one." },
  },
  // Shown beside the formula while a large workbook is worked out; the grid's own file of words has none of these.
  "sheets-formula": {
    progress: {
      analyzing: "Reading the formulas",
      calculating: "Working out the cells",
      "array-analysis": "Reading the formulas",
      "array-calculation": "Working out the cells",
      done: "Done",
    },
  },
  "sheets-formula-ui": {
    error: {
      title: "No number here",
      divByZero: "A number is divided by zero or by an empty cell.",
      name: "A name in this formula is not known here. Check its spelling.",
      value: `A value in this formula is not what it takes. ${seeWorking}`,
      num: "These values have no finite answer. Check them for zeros.",
      na: `A value is missing or not published. ${seeWorking}`,
      cycle: "This formula leads back to its own cell.",
      ref: "This formula points to cells that are gone.",
      spill: "Cells that this formula would fill are not empty.",
      calc: "This formula gives nothing to show.",
      error: "This formula cannot be read.",
      null: "The two ranges in this formula have no cell in common.",
    },
  },
  "sheets-numfmt-ui": { info: { error: "Not a number" } },
  "sheets-data-validation-ui": {
    panel: { invalid: "Does not fit" },
    alert: { title: "This entry does not fit" },
    error: { title: "Does not fit:" },
  },
};

const theirs = mergeLocales(coreWords, rulesWords, validationWords, drawingWords, noteWords, tableWords);

export const gridWords: typeof theirs = merge({}, theirs, ours);
