/** The sheets of a client budget in order: what each is called and what it is for. */
export const clientSheets = {
  client: { name: "Client", purpose: "whose plan this is, prices, and how to read the sheets" },
  today: { name: "Fields today", purpose: "what each field brings and costs as it is farmed now" },
  changes: { name: "Proposed changes", purpose: "a partial budget for every change, with the gain that pays for it" },
  compare: { name: "Now and then", purpose: "each field today against the same field with the changes agreed" },
  report: { name: "Client report", purpose: "one page to hand over: what changes, what it brings, what to test first" },
} as const;

/** The sheet that stands among them where there are soil tests. */
export const clientSoilSheetFacts = {
  name: "Soil tests",
  purpose: "what the laboratory found, and what the guide asks for",
} as const;
