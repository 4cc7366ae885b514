/** What happened and what to do, by the code that Excel gives; its own wording is for programmers. */
const failures: Readonly<Record<string, string>> = {
  AccessDenied: "Excel does not allow changes here: the workbook or sheet is protected or open for reading only.",
  InvalidOperation:
    "Excel does not do that with these cells: they may be part of an array formula or of a merged cell.",
  InvalidOperationInCellEditMode: "A cell is being typed in. Press Enter or Esc in the sheet, then try again.",
  InvalidSelection: "Select one block of cells, then try again.",
  InvalidReference: "Excel does not find that range in this workbook.",
  ItemNotFound: "Excel does not find that sheet or range; it may have been renamed or deleted meanwhile.",
  ItemAlreadyExists: "A sheet, table or name with that name is already in the workbook.",
  OperationCellsExceedLimit: "That range is too large for Excel to hand over. Select fewer rows.",
  RequestPayloadSizeLimitExceeded: "That is more than Excel takes at once. Try a starter with fewer fields.",
  ResponsePayloadSizeLimitExceeded: "That range is too large for Excel to hand over. Select fewer rows.",
  RequestAborted: "Excel stopped before it was done. Try again.",
  ServiceNotAvailable: "Excel does not answer at the moment. Wait a little, then try again.",
  Timeout: "Excel took too long to answer. Try again.",
  ApiNotFound: "This version of Excel is too old for that. Update Excel, then try again.",
  UnsupportedOperation: "This version of Excel cannot do that here.",
};

const renameFirst = "Rename it, or start in a new workbook.";

const places: Readonly<Record<string, string>> = {
  PC: "desktop on Windows",
  Mac: "desktop on Mac",
  OfficeOnline: "on the web",
  iOS: "on iPad",
};

/** What is said in Excel. */
export const excel = {
  failures,
  otherFailure: (code: string) => `Excel could not do that (${code}). Try again.`,
  places,
  noNotes: "Starters come without notes on cells: this Excel takes none.",
  manyUndoSteps: "What Loamsheet writes may take several steps of Undo to take back.",
  doesNotLoad: "Loamsheet cannot be set to load with a workbook here.",

  addingSheets: "Adding the sheets",
  writingCells: "Writing the cells",
  settingLook: "Setting the look, drawing the charts",
  done: "Done",
  taken: {
    sheet: (name: string) => `The workbook already has a sheet called ${name}. ${renameFirst}`,
    table: (name: string) => `The workbook already has a table called ${name}. ${renameFirst}`,
    name: (name: string) => `The workbook already has a name called ${name}. ${renameFirst}`,
  },
  asBefore: (failure: string) => `${failure} The workbook is as it was before.`,
  someStayed: (failure: string, sheets: readonly string[]) =>
    `${failure} Some of the new sheets may have stayed: delete ${sheets.join(", ")} before you try again.`,
  halfWay: (failure: string) =>
    `${failure} Some of the sheets may be gone already: take them away once more to remove the rest.`,
  notesLeftOut: "This version of Excel takes no notes on cells; they were left out.",
  nothingWritten: (failure: string) => `${failure} Nothing was written.`,
  lookAt: (failure: string, addresses: readonly string[]) =>
    `${failure} Look at ${addresses.join(", ")}: new values may stand there.`,

  cellNotEmpty: (address: string) => `${address} is not empty. Select an empty cell, then insert again.`,
  tooManyCells: "That is more than 20,000 cells. Select only the filled ones.",
  goTo: (sheet: string) => `Go to ${sheet}`,
  nothingToList: "There is nothing to list here.",
  cellShows: (code: string) => `One of its cells shows ${code}: mend that cell first.`,
};
