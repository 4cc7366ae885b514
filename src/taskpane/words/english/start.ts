/** States and provinces of the guides, by postal code. */
const regions: Readonly<Record<string, string>> = {
  DE: "Delaware",
  IA: "Iowa",
  IL: "Illinois",
  IN: "Indiana",
  KS: "Kansas",
  KY: "Kentucky",
  MI: "Michigan",
  MN: "Minnesota",
  MO: "Missouri",
  MT: "Montana",
  NC: "North Carolina",
  ND: "North Dakota",
  NE: "Nebraska",
  NJ: "New Jersey",
  OH: "Ohio",
  ON: "Ontario",
  PA: "Pennsylvania",
  SC: "South Carolina",
  SD: "South Dakota",
  WI: "Wisconsin",
};

/** The name behind one part of a guide's code: a region, or the year of an older edition. */
function partName(part: string): string | undefined {
  return /^\d{4}$/.test(part) ? part : regions[part];
}

/** Start a workbook. */
export const start = {
  title: "Start a workbook",
  lead: "Adds ready sheets behind those you have. Nothing that exists is changed.",
  starterLegend: "Which starter?",
  starterHint: (forWhom: string, summary: string) => `For ${forWhom}. ${summary}`,
  starterMissing: "Choose a starter first.",
  guideLegend: "Which guide?",
  guideHint: "The published recommendations your soil tests are read by. Use the one written for where you farm.",
  guideUnchosen: "Choose your region",
  guideLabel: (key: string) => {
    const names = key.split("-").map(partName);
    return names.every((name) => name !== undefined) ? `${names.join(", ")} (${key.replace(/-/g, "\u2011")})` : key;
  },
  guideMissing: "Choose the guide that your soil tests are to be read by.",
  farmName: "Name of the farm or client",
  farmNameHint: "Stands at the head of the sheets.",
  farmNameMissing: "The name is missing. Type what is to stand at the head of the sheets.",
  farmNameLong: (most: number, length: number) =>
    `The name takes up to ${most} letters; got ${length}. Shorten it a little.`,
  cropsLegend: "Crops, with price and yield to plan with",
  cropsHint: "Cash price at the elevator and a yield you can count on. Both can be changed in the workbook.",
  cropMissing: "Tick at least one crop.",
  priceOf: (crop: string) => `price of ${crop}`,
  price: "Price",
  yield: "Yield",
  of: (crop: string) => ` of ${crop}`,
  yieldOf: (crop: string) => `yield of ${crop}`,
  figuresLegend: "Which figures to begin with?",
  demo: "Example figures",
  demoHint: "Ten fields of an invented farm, to look around and overwrite.",
  empty: "Empty rows",
  emptyHint: "For your own fields and soil tests.",
  fields: "Number of fields",
  fieldsName: "number of fields",
  wholeFields: (text: string) => `Number of fields is a whole number; got ${text}.`,
  numberMissing: (name: string, min: number, max: number, unit: string) =>
    `${name.charAt(0).toUpperCase()}${name.slice(1)} is missing. Type a number between ${min} and ${max} ${unit}.`,
  partsLegend: "Which further sheets?",
  partsHint: "Untick what you have no use for. The plan holds together without it.",
  protect: "Protect computed cells",
  protectHint: "Keeps formulas from being typed over. No password; you can lift it at any time.",
  preview: "What will be added",
  fill: "Fill the workbook",
  filling: "Filling the workbook",
  beginning: "Looking at the names already in use…",
  summaryHead: (count: number) => (count === 1 ? "One thing to change first" : `${count} things to change first`),
  added: (count: number) =>
    count === 1 ? "1 sheet added behind those you had." : `${count} sheets added behind those you had.`,
  addedSheets: (names: readonly string[]) => `${names.join(", ")}.`,
  addedHead: "The workbook is filled",
  next: "Begin with the cream-colored cells; everything else follows them.",
  remove: "Remove what was added",
  question: (sheets: readonly string[], names: number) =>
    `This takes away ${sheets.length === 1 ? "the sheet" : "the sheets"} ${sheets.join(", ")}${
      names > 0 ? ` and ${names === 1 ? "1 name" : `${names} names`} they brought` : ""
    }. What you have typed on them goes too. All other sheets stay as they are.`,
  removeNow: "Remove them",
  keep: "Keep them",
  removing: "Taking away what was added…",
  removed: "What was added has been taken away again.",
  removedHead: "Removed",
};
