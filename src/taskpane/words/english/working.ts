/** Show the working. */
export const working = {
  title: "Show the working",
  lead: "Select a cell with a Loamsheet answer. What went in, the steps and the source appear here.",
  nothingRead: "No cell has been read yet.",
  readAgain: "Read the selected cell",
  shows: (address: string) => `${address} shows`,
  went: "What went in",
  steps: "Steps",
  cites: "Where the numbers stand",
  more: (name: string) => `More about ${name}`,
  blank: "blank",
  severalValues: (count: number, unit: string) => `${count} values${unit && `, ${unit}`}`,
  firstOf: (count: number, first: string) => `${first} (first of ${count})`,
  emptyCell: "This cell is empty. Select a cell that holds a Loamsheet formula.",
  typedIn: "This value was typed in; no Loamsheet formula stands behind it.",
  notOurs: "This formula calls no Loamsheet function, so there is no working to show.",
  notFollowed: (names: readonly string[]) =>
    `${names.join(", ")} stands inside a LAMBDA, or where the formula makes no use of it, so its steps cannot be followed. Put it in a cell of its own to see them.`,
  noSuchFunction: (names: readonly string[]) =>
    `No function is called ${names.map((name) => `LOAM.${name}`).join(", ")}: look it up in Find a function.`,
  unreadable: "This formula could not be read. Check its brackets and quotation marks.",
  ownAnswer: (answer: string) =>
    `This function stands inside a longer formula. By itself it gives ${answer === "" ? "nothing" : answer}.`,
  nowGives: (answer: string) =>
    `Worked out anew it gives ${answer === "" ? "nothing" : answer}: let the sheet calculate again.`,
  standsIn: (name: string, argument: string) => `Stands inside ${name}, as its ${argument}.`,
  leftAside: (names: readonly string[]) =>
    `The formula leaves ${names.join(", ")} aside: its test takes the other branch here.`,
  oneOfMany: (at: number, count: number) =>
    `This formula fills ${count} cells. The steps are those of ${at === 1 ? "the first" : `number ${at}`}.`,
  firstOfMany: (count: number) => `It gives ${count} answers here. The steps are those of the first.`,
  partOfTable: (rows: number, columns: number) =>
    `The answer is a table of ${rows} rows and ${columns} columns, of which the formula takes more than one cell.`,
  cellOfTable: (row: number, column: number, heads: readonly string[]) =>
    `The answer is a table. This cell shows its row ${row}, column ${column}${heads.length > 0 ? `: ${heads.join(", ")}` : ""}.`,
  partOf: (address: string) => `It belongs to the answer of the formula in ${address}.`,
  formula: "The formula",
  typed: "typed in the formula",
  leftOut: "left out",
  standsFor: (text: string, address: string) => `${text}, which is ${address}`,
  spillsFrom: (text: string, address: string) => `${text}, all that spills from ${address}`,
  fromCall: (name: string) => `answer of ${name}, shown below`,
  workedOut: (text: string) => `worked out from ${text}`,
  notHere: "cannot be worked out here",
  copy: "Copy as text",
  copied: "Copied. Paste it into a letter or a message.",
  copyByHand: "The text could not be put on the clipboard. It stands below: select it all and copy it.",
  copyText: "The working as text",
  wildcard: (text: string) => `A look-up for "${text}" stands for any letters, which only the spreadsheet can search.`,
  wholeColumn: (reference: string) =>
    `${reference} is a whole column or row. Point to the filled rows to see the working.`,
  elsewhere: (reference: string) =>
    `${reference} points to several sheets or another workbook, which cannot be read here. Put that part in a cell of its own to see the steps.`,
  tablePart: (reference: string) =>
    `${reference} is a part of a table that cannot be read here, so the steps are not shown.`,
  notInTable: (reference: string) => `${reference} asks for a row that lies outside its table.`,
  cannotRead: (reference: string, why: string) => `${reference} could not be read. ${why}`,
  foreignFunction: (name: string) =>
    `An argument is computed with ${name}, which only the spreadsheet can do. Put that part in a cell of its own to see the steps.`,
  operator: (operator: string) =>
    `An argument uses "${operator}". Put that part in a cell of its own to see the steps.`,
  spillReference:
    "An argument points to a spilled range (#) whose size cannot be told here. Point to its cells to see the steps.",
  rangeArithmetic: "An argument calculates with a whole range. Put that part in cells of its own to see the steps.",
  textInArithmetic: (text: string) => `An argument calculates with "${text}", which is not a number.`,
  arrived: (code: string) => `One of its cells shows ${code}: mend that cell first.`,
};
