import type {
  DoubleLine,
  ErrorCells,
  FewBlocks,
  FindingKind,
  ForeignExtraction,
  ImplausibleFigure,
  LoneHerbicideGroup,
  MissingBuffer,
  OldSoilTest,
  TypedOver,
  UnknownName,
} from "../../../workbook/findings";

const many = (count: number, one: string, more: string): string => (count === 1 ? `1 ${one}` : `${count} ${more}`);
const listed = (words: readonly string[]): string => words.join(", ").replace(/, ([^,]*)$/, " and $1");
const of = (row: string | undefined): string => (row === undefined ? "" : `${row}: `);

/** What each kind of finding is called and why it matters. */
const kinds: Readonly<Record<FindingKind, { readonly head: string; readonly why: string }>> = {
  unknownName: {
    head: "Formulas that find no function",
    why: "#NAME? means that the spreadsheet did not know a name in the formula when it was written.",
  },
  implausibleFigure: {
    head: "Figures to look at twice",
    why: "A price in cents or a digit too many carries into every sheet that uses it.",
  },
  typedOver: {
    head: "Numbers typed over a formula",
    why: "The rest of the column is worked out. A typed number stays as it is when anything changes.",
  },
  errorCells: {
    head: "Cells that give no answer",
    why: "Each says what it lacks. What is built on it waits as well.",
  },
  foreignExtraction: {
    head: "A guide read at another laboratory method",
    why: "Numbers from different extractions are not the same numbers: the guide gives no rate, or a wrong one is read into it.",
  },
  missingBuffer: {
    head: "Buffer pH missing",
    why: "Soil pH says that lime is due. How much it takes stands in the buffer pH.",
  },
  oldSoilTest: {
    head: "Soil tests more than four years old",
    why: "Crops, manure and fertilizer have moved the soil since. A new sample costs less than a wrong rate.",
  },
  doubleLine: {
    head: "Lines that stand twice",
    why: "The same words with the same amount may be one cost counted twice.",
  },
  loneHerbicideGroup: {
    head: "One herbicide group alone",
    why: "Weeds that survive one group are what is left next year. Two effective groups in a pass are the usual rule; rates and mixes are the label's.",
  },
  fewBlocks: {
    head: "Trials with few blocks",
    why: "With few blocks a real gain can hide and luck can look like a gain. Four to six are usually enough (Mississippi State P3930).",
  },
};

function mendableSentence(mendable: number, cells: number): string {
  const who = mendable < cells ? `${mendable} of them call` : cells === 1 ? "It calls" : "They call";
  return `${who} a Loamsheet function and can be written once more.`;
}

/** Each finding in a sentence. */
const found = {
  unknownName: ({ cells, misspelled, mendable, hidden }: UnknownName) =>
    [
      cells.length > 0 ? `${many(cells.length, "cell shows", "cells show")} #NAME?.` : "",
      misspelled.length > 0
        ? `No function is called ${listed(misspelled.map((name) => `LOAM.${name}`))}: look it up in Find a function.`
        : "",
      mendable.length > hidden ? mendableSentence(mendable.length - hidden, cells.length) : "",
      hidden > 0
        ? `${many(hidden, "formula calls", "formulas call")} a Loamsheet function and may show an old answer or none in its place: ${hidden === 1 ? "it" : "they"} can be written once more too.`
        : "",
      mendable.length === 0 && misspelled.length === 0 ? "The name is none of ours: check its spelling." : "",
    ]
      .filter((part) => part !== "")
      .join(" "),
  implausibleFigure: ({ what, head, crop, value, min, max, unit }: ImplausibleFigure, number: (n: number) => string) =>
    `${head}${crop === undefined ? "" : `, ${crop}`}: ${number(value)}. A ${what} is usually between ${number(min)} and ${number(max)} ${unit}.`,
  typedOver: ({ row, head, value }: TypedOver, number: (n: number) => string) =>
    `${of(row)}${head} is ${number(value)}, typed by hand.`,
  errorCells: ({ cells, code, message }: ErrorCells) =>
    `${cells.length > 1 ? `${cells.length} cells: ` : ""}${message ?? `shows ${code}`}`,
  foreignExtraction: ({ guide, nutrient, extraction, takes, cells }: ForeignExtraction) =>
    `${guide} takes ${nutrient} tests by ${listed(takes)}; here it is given ${extraction}${cells > 1 ? ` (${cells} cells)` : ""}. Convert the test (TESTCONVERT) or take a guide that reads it.`,
  missingBuffer: ({ row, ph, targetPh }: MissingBuffer, number: (n: number) => string) =>
    `${of(row)}soil pH ${number(ph)}, wanted ${number(targetPh)}, no buffer pH.`,
  oldSoilTest: ({ row, year }: OldSoilTest) => `${of(row)}sampled ${year}.`,
  doubleLine: ({ label, amount, column }: DoubleLine, number: (n: number) => string, first: string) =>
    `"${label}" stands here and in ${first}, ${number(amount)} each${column === undefined ? "" : ` (${column})`}.`,
  loneHerbicideGroup: ({ group, uses, pass }: LoneHerbicideGroup) =>
    pass === undefined
      ? `${uses} herbicides, and only group ${group} counts.`
      : `Pass "${pass}" leans on group ${group} alone against your driver weed.`,
  fewBlocks: ({ blocks, usual, unit }: FewBlocks) =>
    `${many(blocks, unit.slice(0, -1), unit)} with yields; ${usual} is the usual least.`,
};

/** Check this workbook. */
export const check = {
  title: "Check this workbook",
  lead: "Looks for what is missing or doubtful, in any workbook, and leads you there. Nothing is changed unless you say so.",
  look: "Look it over",
  looking: "Looking through the workbook…",
  nothing: "Nothing to ask about.",
  nothingMeans:
    "The figures themselves are yours to judge: prices, yields and samples are not checked against your farm.",
  count: (count: number) => `${many(count, "thing", "things")} to ask about.`,
  cutShort: (sheets: readonly string[]) => `Too large to read to the end: ${listed(sheets)}.`,
  kinds,
  found,
  selection: "The selection",
  notThere: (what: string) => `${what} is not in this workbook.`,
  goTo: (address: string) => `Go to ${address}`,
  wentTo: (address: string) => `${address} is selected in the sheet.`,
  more: (count: number, kind: string) => `Show ${count} more: ${kind}`,
  putBack: "Put the formula back",
  putBackLabel: (address: string) => `Put the formula back into ${address}`,
  putBackQuestion: (address: string, value: string) =>
    `Write the column's formula into ${address}? The ${value} typed there makes way.`,
  putBackYes: "Write the formula",
  repair: "Repair the formulas",
  repairLabel: (sheet: string) => `Repair the formulas on ${sheet}`,
  repairQuestion: (count: number, sheet: string, respelled: number) =>
    `Write ${many(count, "formula", "formulas")} on ${sheet} once more${respelled === 0 ? ", unchanged" : ""}? ${respelled === 0 ? "" : `In ${respelled === count ? (count === 1 ? "it" : "them") : respelled} the name gets back the spelling LOAM., which the file had lost. `}The spreadsheet then looks their functions up again.`,
  repairYes: "Write them again",
  keep: "Leave it",
  putBackDone: (address: string) => `The formula stands in ${address} again.`,
  repairDone: (written: number, still: number, refused: readonly string[]) =>
    [
      written === 0
        ? ""
        : `${many(written, "formula was", "formulas were")} written again${still === 0 ? "; none shows #NAME? any more." : `; ${still} still ${still === 1 ? "shows" : "show"} #NAME?. Close and open the pane, then try once more.`}`,
      refused.length === 0
        ? ""
        : `The spreadsheet keeps ${listed(refused)} as ${refused.length === 1 ? "it is" : "they are"}: where braces { } stand around the formula, select all of its cells, press F2 and then Ctrl+Shift+Enter.`,
    ]
      .filter((part) => part !== "")
      .join(" "),
  undo: "Undo what was written",
  undone: "It is as it was before.",
};
