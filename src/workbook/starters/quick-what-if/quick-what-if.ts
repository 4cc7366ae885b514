import { removal } from "../../../functions/nutrients/removal";
import { breakEvenPrice, breakEvenYield } from "../../../functions/money/break-even";
import { profitGrid } from "../../../functions/money/profit-grid";
import { limits } from "../../../core/limits";
import { crops } from "../../../reference/crops";
import { call } from "../../formula/call";
import { formula } from "../../formula/expression";
import { quiet } from "../../formula/natives";
import { place } from "../../formula/reference";
import type { EntriesBlock, Entry, PlacedCell, RowsBlock } from "../../model/block";
import { formats } from "../../model/cell";
import { oneOf, within } from "../../model/columns";
import { computedEntry, typedEntry, wordsEntry } from "../../model/entries";
import { remarks } from "../../model/paragraphs";
import { headRow } from "../../model/rows";
import type { WorkbookModel } from "../../model/workbook-model";
import { cropExamples } from "../../scenario/crop-examples";
import { cropChoice, type CropChoice, type StarterChoices } from "../choices";
import { profitGridBlock } from "../profit-grid-block";
import { tabColors } from "../tab-colors";
import { bushelCropLabels } from "../word-lists";
import { quickSheet } from "./quick-sheet";

/** Nutrients that grain tables publish, the three that are bought most first. */
const grainNutrients = ["N", "P2O5", "K2O", "S", "Mg", "Ca", "Zn", "Mn", "Cu"];

const value = (key: string) => place(`quick.${key}`);
const shared = { cost: value("cost"), otherIncome: value("other"), costPerBushel: value("perBushel") };

/** One sheet for one question at the kitchen table. */
export function quickWhatIf(choices: StarterChoices): WorkbookModel {
  const crop = choices.crops[0] ?? cropChoice("soybean");
  return {
    starter: "quick-what-if",
    title: "Quick what if",
    sheets: [
      {
        key: "quick",
        name: quickSheet.name,
        tabColor: tabColors.answer,
        title: "Quick what if",
        answers: "What does an acre of this crop leave, what covers its costs, and what does it take from the soil?",
        blocks: [
          inputs(crop),
          answers(),
          grid(),
          removalBlock(),
          remarks(
            "Prices and costs are examples: write your own over them. Removal is for the grain at market moisture, by published averages; a grain analysis of your own is better.",
          ),
        ],
        widths: [30, 14, 17, 17, 17, 11, 11, 11],
        print: { orientation: "portrait", onePage: true },
      },
    ],
  };
}

function inputs(choice: CropChoice): EntriesBlock {
  const entries = [...cropLines(choice), ...costLines(choice), ...stepLines(choice)];
  return { kind: "entries", key: "quick", title: "Fill in", entries };
}

function cropLines({ crop, priceUsdPerBu, yieldBuPerAc }: CropChoice): Entry[] {
  return [
    typedEntry(
      { key: "crop", label: "Crop", name: "quick_crop" },
      crops[crop].label,
      oneOf(bushelCropLabels, "A crop that is sold by the bushel."),
    ),
    bushels("yield", "Yield", yieldBuPerAc, "Yield to plan for"),
    dollars("price", "Price", "$/bu", priceUsdPerBu, "Price of a bushel"),
  ];
}

function costLines({ crop }: CropChoice): Entry[] {
  const { costBeforeHaulingUsdPerAc, costUsdPerBu } = cropExamples[crop];
  const says = "Land and machinery included, or running costs alone: say which.";
  return [
    { ...dollars("cost", "Costs before hauling", "$/ac", costBeforeHaulingUsdPerAc, "Costs of an acre"), says },
    dollars("perBushel", "Hauling and drying", "$/bu", costUsdPerBu, "Hauling and drying a bushel"),
    dollars("other", "Other income", "$/ac", 0, "Payments, straw, indemnity"),
  ];
}

function stepLines({ yieldBuPerAc }: CropChoice): Entry[] {
  const step = Math.max(1, Math.round(yieldBuPerAc / 15));
  return [
    bushels("yieldStep", "Step from yield to yield", step, "Bushels between two lines of the grid"),
    dollars("priceStep", "Step from price to price", "$/bu", 0.25, "Dollars between two columns of the grid"),
  ];
}

/** Names of the inputs that the pane tries other figures for. */
const inputNames: Readonly<Record<string, string>> = {
  yield: "quick_yield",
  price: "quick_price",
  cost: "quick_cost",
  perBushel: "quick_per_bushel",
  other: "quick_other",
};

function named(key: string): { readonly name?: string } {
  const name = inputNames[key];
  return name === undefined ? {} : { name };
}

function bushels(key: string, label: string, start: number, what: string): Entry {
  const line = { key, label, unit: "bu/ac", format: formats.one, ...named(key) };
  return typedEntry(line, start, within(limits.yieldAny, what));
}

function dollars(key: string, label: string, unit: string, start: number, what: string): Entry {
  return typedEntry({ key, label, unit, format: formats.cents, ...named(key) }, start, within(limits.price, what));
}

function answers(): EntriesBlock {
  const profit = formula`${value("yield")}*(${value("price")}-${value("perBushel")})+${value("other")}-${value("cost")}`;
  const verdict = formula`IF(${place("answer.profit")}>=0,"▲ covers them","▼ falls short")`;
  return {
    kind: "entries",
    key: "answer",
    title: "Answers",
    entries: [
      computedEntry({ key: "profit", label: "An acre leaves", unit: "$/ac", format: formats.cents }, quiet(profit)),
      computedEntry(
        { key: "price", label: "Price that covers the costs", unit: "$/bu", format: formats.cents },
        call(breakEvenPrice, { ...shared, yield: value("yield") }),
      ),
      computedEntry(
        { key: "yield", label: "Yield that covers the costs", unit: "bu/ac", format: formats.one },
        call(breakEvenYield, { ...shared, price: value("price") }),
      ),
      wordsEntry({ key: "words", label: "Against its costs" }, quiet(verdict)),
    ],
  };
}

function grid(): RowsBlock {
  return profitGridBlock({
    title: "What an acre leaves, $",
    profit: (yields, prices) => call(profitGrid, { ...shared, yields, prices }),
    yieldAt: (step) => formula`MAX(0,${value("yield")}+${step}*${value("yieldStep")})`,
    priceAt: (step) => formula`MAX(0,${value("price")}+${step}*${value("priceStep")})`,
  });
}

function removalBlock(): RowsBlock {
  return {
    kind: "rows",
    title: "What the grain takes",
    rows: [headRow("Nutrient", "lb/ac"), ...grainNutrients.map(removalLine)],
  };
}

function removalLine(nutrient: string): PlacedCell[] {
  const taken = call(removal, { crop: value("crop"), yield: value("yield"), nutrient });
  return [
    { content: nutrient, style: "label" },
    { content: formula`IFERROR(${taken},"not published")`, style: "computed", format: formats.upToThree },
  ];
}
