/** What the workbook of the page says. */
export const browser = {
  program: "The grid of this page",
  kept: "Kept in this browser.",
  cannotRead: "The workbook kept in this browser could not be read, and is left as it is.",
  cannotKeep:
    "This browser has no room to keep the workbook, or does not allow it. Nothing is lost while the page is open: save a file before you leave.",
  openElsewhere:
    "Another tab keeps its own changes to this workbook, so changes here are not kept. Save a file, or close one of the two and reload.",
  wouldBeLost:
    "This workbook could not be kept in this browser, so it would be lost. Save it as .xlsx first, then try again.",
  pasteTooLarge:
    "That is more than this grid can take at once, and nothing was pasted. Paste it in parts of a few thousand rows.",
  cannotShow:
    "This page cannot show that workbook: something in it is damaged. The workbook open before is open again, and nothing was changed.",
  noStorage: "This browser does not allow workbooks to be kept, or has no room for them.",
  removesOpen: "Open another workbook before you remove this one.",
  noWorkbook: "No workbook is open on this page. Reload the page.",

  layingOut: (sheets: number) => `Laying out ${sheets} sheets`,
  placing: "Placing them in the workbook and calculating",
  done: "Done",
  notPutIn: "The starter could not be put in, and the workbook is as it was.",
  notTakenAway: "The sheets could not be taken away, and the workbook is as it was.",
  happened: (what: string, detail: string) => `${what} What happened: ${detail}`,
  taken: {
    sheet: (name: string) => `A sheet named ${name} is already here. Rename it or take it away first.`,
    table: (name: string) => `A table named ${name} is already here.`,
    name: (name: string) => `The name ${name} is already used in this workbook.`,
  },

  noCell: "Select a cell for the formula first.",
  cellNotEmpty: (address: string) => `${address} is not empty. Select an empty cell for the formula.`,
  noSheet: (name: string | undefined) => `There is no sheet named ${name}.`,
  noName: (name: string) => `"${name}" is neither an address, such as Fields!B7, nor a name here.`,
  noTable: (name: string) => `There is no table named ${name}.`,
  noColumn: (table: string, column: string) => `The table ${table} has no column named ${column}.`,
  notWritten: "The grid did not take the values. Select a cell and try again.",
  pastTheEnd: (address: string) =>
    `${address} reaches past the last row or column of the sheet. Select a cell further up or to the left.`,
  emptySheet: (name: string) => `The sheet ${name} is empty.`,
  lockedCells: "Computed cells",
};
