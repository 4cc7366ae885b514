/** What is said of .xlsx files. */
export const files = {
  empty: "This file is empty. Choose another. Nothing here was changed.",
  locked:
    "This file is locked with a password, or is an old .xls file. Save it as .xlsx without a password in a spreadsheet program and open that. Nothing here was changed.",
  otherKind: "This file is not an .xlsx workbook. Choose one that was saved as .xlsx. Nothing here was changed.",
  unpacksTooLarge: "This file unpacks to more than 250 MB, more than this page can hold. Nothing here was changed.",
  damaged: "This .xlsx file is damaged and could not be read. Copy or save it anew. Nothing here was changed.",
  notOurs: "This workbook was not made by Loamsheet, so it is left to a spreadsheet program. Nothing here was changed.",
  tooLarge: "This file is larger than 50 MB, more than this page can hold. Nothing here was changed.",
  untitled: "Workbook",
  leftOut: { merges: "merged cells", images: "pictures", textBoxes: "text boxes", pivotTables: "pivot tables" },
};
