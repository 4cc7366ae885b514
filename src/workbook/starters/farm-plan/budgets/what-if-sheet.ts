import { breakEvenPrice, breakEvenYield } from "../../../../functions/money/break-even";
import { profitGrid } from "../../../../functions/money/profit-grid";
import { limits } from "../../../../core/limits";
import { moneyLimits } from "../../../../core/money/money-limits";
import { call } from "../../../formula/call";
import { formula } from "../../../formula/expression";
import { place } from "../../../formula/reference";
import type { EntriesBlock } from "../../../model/block";
import { formats } from "../../../model/cell";
import { within } from "../../../model/columns";
import { computedEntry, typedEntry } from "../../../model/entries";
import { remarks } from "../../../model/paragraphs";
import type { SheetModel } from "../../../model/workbook-model";
import { profitGridBlock } from "../../profit-grid-block";
import { tabColors } from "../../tab-colors";
import { ofBudget } from "./budget-rows";
import { cropList, ofCrop } from "../crop-lookup";
import type { FarmContext } from "../farm-context";
import { farmSheets } from "../farm-sheets";

const value = (key: string) => place(`whatif.${key}`);
const tried = (key: string) => place(`try.${key}`);

export function whatIfSheet({ crops }: FarmContext): SheetModel {
  const crop = crops.find(({ crop: name }) => name === "soybean")?.crop ?? crops[0]?.crop ?? "";
  return {
    key: "what-if",
    name: farmSheets["what-if"].name,
    tabColor: tabColors.answer,
    title: "What if yield or price turns out otherwise?",
    answers: "Profit per acre over all costs, for yields and prices around those planned.",
    blocks: [
      { kind: "entries", key: "plan", title: "The crop as planned", entries: planLines(crop) },
      { kind: "entries", key: "try", title: "Other figures to try", entries: triedLines() },
      { kind: "entries", key: "whatif", title: "Reckoned with", entries: [...usedLines(), ...answerLines()] },
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
        yieldAt: (step) => formula`MAX(0,${value("yield")}+${step}*${tried("yieldStep")})`,
        priceAt: (step) => formula`MAX(0,${value("price")}+${step}*${tried("priceStep")})`,
      }),
      remarks("High yields often come with low prices: the middle of the grid is not the profit to expect."),
    ],
    widths: [30, 13, 11, 11, 11, 11, 11, 11],
    print: { orientation: "landscape", onePage: true },
  };
}

const planned = (key: string) => place(`plan.${key}`);
const budgeted = (line: string) => ofBudget(line, planned("crop"));
const bushels = { unit: "bu/ac", format: formats.one } as const;
const perBushel = { unit: "$/bu", format: formats.cents } as const;
const perAcre = { unit: "$/ac", format: formats.cents } as const;

function planLines(crop: string): EntriesBlock["entries"] {
  return [
    typedEntry({ key: "crop", label: "Crop", name: "whatif_crop" }, crop, cropList),
    computedEntry(
      { key: "acres", label: "Acres planned", unit: "ac", format: formats.one, name: "whatif_acres" },
      budgeted("acres"),
    ),
    computedEntry({ key: "yield", label: "Yield planned", ...bushels }, budgeted("yield")),
    computedEntry({ key: "price", label: "Price planned", ...perBushel }, budgeted("price")),
    computedEntry(
      { key: "cost", label: "Costs before hauling", ...perAcre },
      formula`${budgeted("total")}-${budgeted("hauling")}`,
    ),
  ];
}

/** The plan itself stays as it is: these take its place on this sheet only. */
function triedLines(): EntriesBlock["entries"] {
  const says = "Blank: as planned.";
  return [
    typedEntry(
      { key: "yield", label: "Yield to try", ...bushels, says, name: "whatif_yield_try" },
      null,
      within(limits.yieldAny, "Yield to reckon with in place of the planned one"),
    ),
    typedEntry(
      { key: "price", label: "Price to try", ...perBushel, says, name: "whatif_price_try" },
      null,
      within(limits.price, "Price to reckon with in place of the planned one"),
    ),
    typedEntry(
      { key: "cost", label: "Costs to try", ...perAcre, says, name: "whatif_cost_try" },
      null,
      within(moneyLimits.costPerAc, "Costs to reckon with in place of the planned ones"),
    ),
    typedEntry(
      { key: "yieldStep", label: "Step from yield to yield", ...bushels },
      4,
      within(limits.yieldAny, "Bushels between two lines of the grid"),
    ),
    typedEntry(
      { key: "priceStep", label: "Step from price to price", ...perBushel },
      0.5,
      within(limits.price, "Dollars between two columns of the grid"),
    ),
  ];
}

function usedLines(): EntriesBlock["entries"] {
  const used = (key: string) => formula`IF(ISNUMBER(${tried(key)}),${tried(key)},${planned(key)})`;
  return [
    computedEntry({ key: "yield", label: "Yield", ...bushels, name: "whatif_yield" }, used("yield")),
    computedEntry({ key: "price", label: "Price", ...perBushel, name: "whatif_price" }, used("price")),
    computedEntry(
      { key: "cost", label: "Costs", ...perAcre, says: "Before hauling.", name: "whatif_cost" },
      used("cost"),
    ),
    computedEntry(
      { key: "perBushel", label: "Hauling and drying", ...perBushel, name: "whatif_per_bushel" },
      ofCrop(planned("crop"), "costPerBushel"),
    ),
    computedEntry({ key: "other", label: "Other income", ...perAcre, name: "whatif_other" }, budgeted("other")),
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
