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
  severalValues: (count: number) => `${count} values`,
  firstOf: (count: number, first: string) => `${first} (first of ${count})`,
  emptyCell: "This cell is empty. Select a cell that holds a Loamsheet formula.",
  typedIn: "This value was typed in; no formula stands behind it.",
  notOurs: "This formula calls no Loamsheet function, so there is no working to show.",
  unreadable: "This formula could not be read. Check its brackets and quotation marks.",
  ownAnswer: (answer: string) =>
    `This function stands inside a longer formula. By itself it gives ${answer === "" ? "nothing" : answer}.`,
  innerCalls: "Another Loamsheet function stands inside this one. Its answer is shown as a value.",
  firstOfMany: "This formula fills several cells. The steps are those of the first.",
  wholeColumn: (reference: string) => `${reference} is a whole column. Point to the filled rows to see the working.`,
  tablePart: (reference: string) =>
    `${reference} is a part of a table that cannot be read here, so the steps are not shown.`,
  notInTable: (reference: string) => `${reference} asks for a row that lies outside its table.`,
  cannotRead: (reference: string, why: string) => `${reference} could not be read. ${why}`,
  foreignFunction: (name: string) =>
    `An argument is computed with ${name}, which only the spreadsheet can do. Put that part in a cell of its own to see the steps.`,
  operator: (operator: string) =>
    `An argument uses "${operator}". Put that part in a cell of its own to see the steps.`,
  spillReference: "An argument points to a spilled range (#). Point to its cells to see the steps.",
  rangeArithmetic: "An argument calculates with a whole range. Put that part in cells of its own to see the steps.",
  textInArithmetic: (text: string) => `An argument calculates with "${text}", which is not a number.`,
  arrived: (code: string) => `One of its cells shows ${code}: mend that cell first.`,
};
