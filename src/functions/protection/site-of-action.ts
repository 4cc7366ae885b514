import { siteOfAction as siteOfActionOf } from "../../core/protection/site-of-action";
import { line, worksheetFunction } from "../frame";
import { checkLines } from "../check-lines";
import { herbicide } from "./herbicide-argument";
import { controlIsTheLabels, labelLaw } from "../cautions";

export const siteOfAction = worksheetFunction({
  name: "SITEOFACTION",
  family: "protection",
  summary: "Herbicide group number of an active ingredient, or of a number as an older label prints it.",
  asks: ["what group is atrazine", "herbicide group number", "site of action of a herbicide"],
  args: { activeIngredient: herbicide },
  returns: { shape: "one", unit: "", says: "group number shared by HRAC and WSSA" },
  sources: ["hrac-classification"],
  cautions: [labelLaw, controlIsTheLabels],
  example: { call: ["mesotrione"], gives: 27, because: "printed: group 27 in the Montana State guide" },
  compute: ({ activeIngredient }) => siteOfActionOf(activeIngredient),
  value: (result) => result.site,
  working: (result) => [
    line("Named", result.name),
    line("Group", result.site),
    line("What it does", result.does ?? "not in the list: see the label"),
    ...(result.family ? [line("Chemical family", result.family)] : []),
    ...checkLines(result.cited),
  ],
  cites: (result) => result.cited,
});
