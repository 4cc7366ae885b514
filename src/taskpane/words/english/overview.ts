/** Overview: what the plan in the workbook says, and where to go from here. */
export const overview = {
  title: "Overview",
  example: (farm: string, acres: string) =>
    `${farm} is an invented farm of ${acres} acres. Its plan for next season is filled in, to look around and write over.`,
  examplePending: "The plan of an invented farm is being filled in. You can work meanwhile.",
  own: (farm: string) =>
    farm.trim() === ""
      ? "What the plan says with the figures that stand in it now."
      : `${farm}: what its plan says with the figures that stand in it now.`,
  nothing: "There is no farm plan in this workbook yet. These are the ways to begin.",
  findings: "What matters",
  goTo: "Go to the sheet",
  goToLabel: (sheet: string) => `Go to the sheet ${sheet}`,
  readAgain: "Read the plan again",
  heads: { potash: "Potash", lime: "Lime", price: "Break-even price" },
  waiting: {
    potash: "Waits for fields, yields and what was put on.",
    lime: "Waits for soil tests.",
    price: "Waits for the crop budgets.",
  },
  potash: {
    drawn: (field: string, pounds: string, many: number, of: number) =>
      `${field} is drawing potash down by ${pounds} lb/ac a year; ${many} of ${of} fields draw down.`,
    even: (within: number) => `No field is drawing potash down by more than ${within} lb/ac a year.`,
    soybean: (left: string, takes: string) =>
      `Before soybean, the last crop leaves ${left} lb/ac of the potash put on; soybean takes ${takes}.`,
    then: "Where the test is low this costs yield; where it is high it is a choice.",
  },
  lime: {
    short: (many: number, of: number, most: string, tons: string, dollars: string) =>
      `${many} of ${of} fields are short of lime, ${most} the most: ${tons} tons in all, $${dollars}.`,
    none: "No field calls for lime.",
    then: "Lime takes 6 to 12 months to work.",
  },
  price: {
    noneCovers: "No crop covers all its costs at the price planned.",
    allCover: "Every crop covers all its costs at the price planned.",
    someCover: (many: number, of: number) => `${many} of ${of} crops cover all costs at the price planned.`,
    nearest: (crop: string, needs: string, plan: string) =>
      `${crop} comes nearest: it needs $${needs}/bu, the plan has $${plan}.`,
    farthest: (crop: string, needs: string, plan: string) =>
      `${crop} is farthest off: it needs $${needs}/bu, the plan has $${plan}.`,
    thinnest: (crop: string, needs: string, plan: string) =>
      `${crop} has the least room: it needs $${needs}/bu, the plan has $${plan}.`,
    then: "Land, machinery and your own labor are in it.",
  },
  next: "What next",
  mine: "Make it mine",
  mineHint: "Opens an empty workbook and asks for your farm, guide and crops.",
  start: "Start a workbook",
  whatIf: "Try a what-if",
  empty: "Empty workbook",
  file: "Open a file",
  showExample: "Show the example farm",
  print: {
    head: "Print the summary",
    says: "One page for the kitchen table, the landlord or the lender, from the summary sheet as it stands.",
    preparedBy: "Prepared by",
    date: "Date",
    dateHint: "Year-month-day, such as 2027-01-15. Left blank: today.",
    dateRefused: "The date is written year-month-day, such as 2027-01-15.",
    note: "Note",
    noteHint: "A sentence or two for the reader.",
    button: "Print the summary",
    nothing: "The summary sheet is empty, so there is nothing to print.",
    made: "Made with Loamsheet. The figures are those typed into the workbook on the day of printing.",
  },
  emptied: "An empty workbook is open.",
  stays: "What you type stays on this machine, in this browser. Nothing is sent anywhere.",
  staysExcel: "What you type stays in your workbook. Nothing is sent anywhere.",
};
