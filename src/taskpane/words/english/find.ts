function cells(rows: number, columns: number): string {
  const part = (count: number, one: string): string => `${count} ${one}${count === 1 ? "" : "s"}`;
  return `${part(rows, "row")} and ${part(columns, "column")}`;
}

/** “good”, “fair” or “poor”. */
function oneOf(known: readonly string[]): string {
  const [last = "", ...before] = known.map((word) => `“${word}”`).reverse();
  return before.length > 0 ? `${before.reverse().join(", ")} or ${last}` : last;
}

/** Find a function. */
export const find = {
  title: "Find a function",
  lead: (count: number) => `${count} functions for fields, materials, machines and money. Say what you want to know.`,
  searchLabel: "What do you want to work out?",
  searchHint: "A question such as “what does drying cost”, a name, or the heading of a column.",
  clear: "Clear the search",
  searchColumn: "Search for the selected column",
  noHeading: (address: string) =>
    `No heading stands above ${address}. Select a cell of a column with a heading, or type what you look for.`,
  found: (count: number) =>
    count === 0 ? "No function found." : count === 1 ? "1 function found." : `${count} functions found.`,
  readAs: (typed: string, taken: string) => `“${typed}” is read as “${taken}”.`,
  asked: (phrase: string) => `“${phrase}”`,
  showAll: (more: number) => `Show ${more} more`,
  nothing:
    "Try another word for it, such as potash, stand, spray, tile or price. Clear the search to see all families.",
  recent: "Opened lately",
  back: "‹ All functions",
  returns: (says: string, unit: string, table: boolean) =>
    `Gives ${says}${unit && !says.includes(unit) ? `, in ${unit}` : ""}.${table ? " The answer fills several cells." : ""}`,

  form: "Work it out",
  eachCell: "Each box takes a value or a cell. Pick a range instead and the answers fill one cell for each.",
  fillExample: "Fill in the example",
  emptyForm: "Empty the boxes",
  whenBlank: (says: string) => `When left out: ${says}.`,
  accepts: (text: string) => `Takes ${text}.`,
  orWords: (text: string, known: readonly string[], most: number) =>
    known.length > most
      ? `${text}, or one of ${known.length} words that come up as you type`
      : `${text}, or ${oneOf(known)}`,
  acceptsList: (text: string, atLeast: number) =>
    `A range, or values with commas between them${atLeast > 1 ? ` (at least ${atLeast})` : ""}; each takes ${text}.`,
  andMore: (labels: readonly string[], more: number) => `${labels.join(", ")} and ${more} more`,
  typeAWord: "Type the first letters; what fits comes up.",
  choose: "Choose one",
  leftOut: "Left out",
  pick: "Take it from the sheet",
  pickAgain: "Take what is selected now",
  typeInstead: "Type a value instead",
  shows: (value: string) => `shows ${value}`,
  showsSeveral: (count: number, first: readonly string[], more: boolean) =>
    `holds ${count} cells: ${first.join(", ")}${more ? " …" : ""}`,
  blankCell: "nothing yet",
  moreArguments: (count: number) => `Show ${count} more that may be left out`,
  fewerArguments: "Show only what is needed and given",
  answer: "Answer",
  waitingFor: (names: readonly string[]) =>
    names.length > 4
      ? `Comes here once ${names.slice(0, 3).join(", ")} and ${names.length - 3} more are given.`
      : `Comes here once ${names.join(", ")} ${names.length === 1 ? "is" : "are"} given.`,
  fills: (rows: number, columns: number) =>
    `Fills ${cells(rows, columns)}, from the selected cell to the right and down.`,
  answerSoFar: "Answer as it will fill the sheet",
  moreRows: (count: number) => `and ${count} more ${count === 1 ? "row" : "rows"}.`,
  insert: "Put the formula into the selected cell",
  inserted: (rows: number, columns: number) =>
    rows * columns > 1
      ? `The formula stands in the selected cell and fills ${cells(rows, columns)}.`
      : "The formula stands in the selected cell.",
  giveFirst: "This is still missing. Type a value, or take it from the sheet.",
  ownInput: (area: string, argument: string) =>
    `The answer would stand on ${area}, where ${argument} is taken from. Select an empty cell elsewhere.`,
  noRoom: (rows: number, columns: number, from: string, taken: string) =>
    `The answer fills ${cells(rows, columns)} from ${from}, and ${taken} is not empty. Select a cell with more room.`,

  example: "Example",
  written: "How it is written in a cell; what stands in brackets may be left out.",
  gives: "gives",
  givesTable: "fills these cells:",
  answerTable: "Answer of the example",
  sources: "Sources",
  moreSources: (more: number) => `${more} more under Sources`,
  arithmetic: "Plain arithmetic; no publication needed.",
};
