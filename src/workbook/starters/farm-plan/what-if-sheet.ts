import { breakEvenPrice, breakEvenYield, profitGrid } from "../../../functions/money";
import { limits } from "../../../core/limits";
import { call } from "../../formula/call";
import { formula, type Expression } from "../../formula/expression";
import { place } from "../../formula/reference";
import type { EntriesBlock } from "../../model/block";
import { formats } from "../../model/cell";
import { oneOf, within } from "../../model/columns";
import { computedEntry, typedEntry } from "../../model/entries";
import type { SheetModel } from "../../model/workbook-model";
import { profitGridBlock } from "../profit-grid-block";
import { tabColors } from "../tab-colors";
import { ofCrop } from "./crop-lookup";
import type { FarmContext } from "./farm-context";
import { farmSheets } from "./farm-sheets";
import { cropTable } from "./headers";

const value = (key: string) => place(`whatif.${key}`);

export function whatIfSheet({ crops }: FarmContext): SheetModel {
  const crop = crops.find(({ crop: name }) => name === "soybean")?.crop ?? crops[0]?.crop ?? "";
  return {
    key: "what-if",
    name: farmSheets["what-if"].name,
    tabColor: tabColors.answer,
    title: "What if yield or price turns out otherwise?",
    answers: "Profit per acre over all costs, for yields and prices around those planned.",
    blocks: [
      { kind: "entries", key: "whatif", title: "The crop", entries: [...planLines(crop), ...answerLines()] },
      profitGridBlock({
        title: "Profit, $/ac",
        profit: (yields, prices) =>
          call(profitGrid, {
            yields,
            prices,
            cost: value("cost"),
            otherIncome: value("other"),
            costPerBushel: value("perBushel"),
          }),
        yieldAt: (step) => formula`MAX(0,${value("yield")}+${step}*${value("yieldStep")})`,
        priceAt: (step) => formula`MAX(0,${value("price")}+${step}*${value("priceStep")})`,
      }),
      {
        kind: "paragraphs",
        style: "says",
        paragraphs: ["High yields often come with low prices: the middle of the grid is not the profit to expect."],
      },
    ],
    widths: [30, 13, 11, 11, 11, 11, 11, 11],
    print: { orientation: "landscape", onePage: true },
  };
}

function planLines(crop: string): EntriesBlock["entries"] {
  return [
    typedEntry(
      { key: "crop", label: "Crop" },
      crop,
      oneOf({ table: cropTable.table, column: "crop" }, "One of the crops of the plan."),
    ),
    computedEntry({ key: "yield", label: "Yield planned", unit: "bu/ac", format: formats.one }, ofBudget("yield")),
    computedEntry({ key: "price", label: "Price planned", unit: "$/bu", format: formats.cents }, ofBudget("price")),
    computedEntry(
      { key: "cost", label: "Costs before hauling", unit: "$/ac", format: formats.cents },
      formula`${ofBudget("total")}-${ofBudget("hauling")}`,
    ),
    computedEntry(
      { key: "perBushel", label: "Hauling and drying", unit: "$/bu", format: formats.cents },
      ofCrop(value("crop"), "costPerBushel"),
    ),
    computedEntry({ key: "other", label: "Other income", unit: "$/ac", format: formats.cents }, ofBudget("other")),
    typedEntry(
      { key: "yieldStep", label: "Step from yield to yield", unit: "bu/ac", format: formats.one },
      4,
      within(limits.yieldAny, "Bushels between two lines of the grid"),
    ),
    typedEntry(
      { key: "priceStep", label: "Step from price to price", unit: "$/bu", format: formats.cents },
      0.5,
      within(limits.price, "Dollars between two columns of the grid"),
    ),
  ];
}

function answerLines(): EntriesBlock["entries"] {
  const shared = { cost: value("cost"), otherIncome: value("other"), costPerBushel: value("perBushel") };
  return [
    computedEntry(
      { key: "breakEvenPrice", label: "Price that covers all costs", unit: "$/bu", format: formats.cents },
      call(breakEvenPrice, { ...shared, yield: value("yield") }),
    ),
    computedEntry(
      { key: "breakEvenYield", label: "Yield that covers all costs", unit: "bu/ac", format: formats.one },
      call(breakEvenYield, { ...shared, price: value("price") }),
    ),
  ];
}

/** A line of the crop budgets for the crop chosen here. */
function ofBudget(line: string): Expression {
  return formula`INDEX(${place(`budget.${line}`)},MATCH(${value("crop")},${place("budget.heads")},0))`;
}
