/** Ids of the fields, so that the summary can lead to them. */
export const fieldIds = {
  starter: "start-starter",
  guide: "start-guide",
  farmName: "start-farm",
  crops: "start-crops",
  grown: (crop: string) => `start-grown-${crop}`,
  price: (crop: string) => `start-price-${crop}`,
  yieldGoal: (crop: string) => `start-yield-${crop}`,
  figures: "start-figures",
  fields: "start-fields",
  protect: "start-protect",
  summary: "start-summary",
  done: "start-done",
  question: "start-question",
  fill: "start-fill",
  refused: "start-refused",
} as const;
