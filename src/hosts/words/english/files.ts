/** What is said of .xlsx files. */
export const files = {
  unreadable:
    "This file could not be read as an .xlsx workbook: it is damaged, locked with a password, or of another kind. Nothing here was changed.",
  notOurs: "This workbook was not made by Loamsheet, so it is left to a spreadsheet program. Nothing here was changed.",
  tooLarge: "This file is larger than 50 MB, more than this page can hold. Nothing here was changed.",
  untitled: "Workbook",
  leftOut: { merges: "merged cells", images: "pictures", textBoxes: "text boxes", pivotTables: "pivot tables" },
};
