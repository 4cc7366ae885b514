import { headersOf } from "../../../model/table";

const programHeaders = {
  pass: "Pass",
  ingredient: "Active ingredient",
  group: "Group",
  effective: "Controls driver weed",
  amount: "Product an acre",
  unit: "Unit of product",
  price: "Price $/gal or $/lb",
  cost: "Cost $/ac",
  tank: "In a full tank",
  tankUnit: "Unit",
  last: "Used last season",
} as const;

/** The program of each crop. */
export const programTables = {
  corn: headersOf("CornProgram", programHeaders),
  soybean: headersOf("SoybeanProgram", programHeaders),
  wheat: headersOf("WheatProgram", programHeaders),
} as const;

/** Active ingredients to choose from. */
export const ingredientNames = headersOf("Ingredients", { ingredient: "Active ingredient" });
