/** The frame of the pane: name, navigation, and what no part of it could foresee. */
export const pane = {
  name: "Loamsheet",
  navigation: "Parts of the pane",
  views: {
    overview: "Overview",
    start: "Start a workbook",
    find: "Find a function",
    working: "Show the working",
    "what-if": "What if",
    trial: "Strip trials",
    check: "Check this workbook",
    clients: "Many clients",
    sources: "Sources",
    about: "About",
  },
  dismiss: "Close this message",
  tooLong: "That is more text than this field can take at once, and nothing was put in. Paste only what belongs in it.",
  unforeseen: (detail: string) =>
    `Something in Loamsheet itself went wrong (${detail}). Nothing you typed is lost. Try once more; if it stays, report it with this sentence.`,
};
