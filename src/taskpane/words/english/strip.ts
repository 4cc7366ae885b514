/** What can be done with the whole workbook in the browser page. */
export const strip = {
  label: "This workbook",
  save: "Save as .xlsx",
  saving: "Writing the file…",
  saved: (name: string) => `${name} is saved where this browser keeps its downloads.`,
  startAnew: "Start with an empty workbook",
  question: (canSave: boolean) =>
    `This replaces the workbook on this page, with everything typed into it.${canSave ? " Save it first if you want to keep it." : ""}`,
  replace: "Replace it",
  keep: "Keep it",
  replacing: "Making an empty workbook…",
  replaced: "The workbook is empty.",
};
