/** From a picture of the pane to a sheet of its own. */
export const pictures = {
  put: "Put into the workbook",
  putOf: (name: string) => `Put into the workbook: ${name.toLowerCase()}`,
  putting: "Putting it into a sheet of its own…",
  added: (sheet: string) =>
    `It stands on the new sheet ${sheet}, with its numbers and what they are tied to. No other sheet was touched.`,
  gone: "What this picture was drawn from is not in the workbook any more. Draw it again first.",
  take: "Take it away again",
  takeOf: (sheet: string) => `Take it away again: the sheet ${sheet}`,
  question: (sheet: string) =>
    `This takes away the sheet ${sheet}. What you have typed on it goes too. All other sheets stay as they are.`,
  takeNow: "Take it away",
  keep: "Keep it",
  taking: "Taking it away…",
  taken: (sheet: string) => `The sheet ${sheet} is taken away.`,
  names: {
    grid: "Profit grid",
    tornado: "What moves profit most",
    trial: "Strip differences",
  },
};
