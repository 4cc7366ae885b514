import { limits } from "../../../../core/limits";
import type { EntriesBlock } from "../../../model/block";
import { formats } from "../../../model/cell";
import { pick, typedNumber, typedWords, within } from "../../../model/columns";
import { typedEntry } from "../../../model/entries";
import { tableBlock, type TableBlock } from "../../../model/table";
import type { SheetModel } from "../../../model/workbook-model";
import { cropExamples, type CropExample } from "../../../scenario/crop-examples";
import { farmExamples } from "../../../scenario/farm-examples";
import { tabColors } from "../../tab-colors";
import type { FarmContext } from "../farm-context";
import { farmSheets } from "../farm-sheets";
import { guideBlock } from "./guide-block";
import { cropTable } from "../headers";
import { limeBlock } from "./lime-block";
import { farmNames } from "../names";

export function assumptionsSheet(context: FarmContext): SheetModel {
  return {
    key: "assumptions",
    name: farmSheets.assumptions.name,
    tabColor: tabColors.input,
    title: "Assumptions",
    answers: "The guide, crops, prices and terms that every other sheet works with. All are examples: write over them.",
    blocks: [farmBlock(context), guideBlock(context), cropsBlock(context), limeBlock(context), moneyBlock()],
    print: { orientation: "landscape", onePage: true },
  };
}

function farmBlock({ farmName }: FarmContext): EntriesBlock {
  const name = { key: "name", label: "Farm", name: farmNames.farmName, says: "Stands on the summary page." };
  const season = {
    key: "season",
    label: "Season",
    name: farmNames.season,
    says: "The crop year this plan is for, in your own words.",
  };
  const entries = [typedEntry(name, farmName), typedEntry(season, "next season")];
  return { kind: "entries", key: "farm", title: "The farm", entries };
}

function cropsBlock({ crops }: FarmContext): TableBlock {
  const examples = crops.map(({ crop }) => cropExamples[crop]);
  return tableBlock(
    cropTable,
    { title: "Crops", rows: crops.length },
    {
      crop: typedWords(pick(crops, "crop"), {
        width: 30,
        note: "Names that the lists of crops on other sheets offer.",
      }),
      price: typedNumber(pick(crops, "priceUsdPerBu"), {
        width: 26,
        format: formats.cents,
        allow: within(limits.price, "Price to plan with, a bushel"),
      }),
      yield: typedNumber(pick(crops, "yieldBuPerAc"), {
        width: 12,
        format: formats.one,
        allow: within(limits.yieldAny, "Usual yield in bushels"),
        note: "Stands in where no field has the crop.",
      }),
      ...cropCostColumns(examples),
      ...seedColumns(examples),
    },
  );
}

function cropCostColumns(examples: readonly CropExample[]) {
  return {
    costPerBushel: typedNumber(pick(examples, "costUsdPerBu"), {
      width: 10,
      format: formats.cents,
      allow: within(limits.price, "Hauling, drying and storing a bushel"),
      note: "Hauling, drying and storing: what each bushel costs after the combine.",
    }),
    nitrogen: typedNumber(pick(examples, "nitrogenLbPerAc"), {
      width: 11,
      format: formats.whole,
      allow: within(limits.ratePounds, "Nitrogen, manure and credits taken off"),
      note: "Use your state's rate for this crop and rotation; credits for manure and clover taken off.",
    }),
    sulfur: typedNumber([], { ...ownRate, allow: within(limits.ratePounds, "Sulfur of your own choice") }),
    zinc: typedNumber([], { ...ownRate, allow: within(limits.ratePounds, "Zinc of your own choice") }),
  };
}

const ownRate = {
  width: 9,
  format: formats.one,
  note: "Blank: the guide's rate, where it holds one. A rate here goes before the guide's.",
};

function seedColumns(examples: readonly CropExample[]) {
  const perCent = { width: 12, format: formats.whole };
  return {
    rowWidth: typedNumber(pick(examples, "rowWidthIn"), {
      width: 10,
      format: formats.one,
      allow: within(limits.rowWidth, "Row width"),
    }),
    targetStand: typedNumber(pick(examples, "targetStandPerAc"), {
      width: 12,
      format: formats.whole,
      allow: { kind: "between", min: 1000, max: 3_000_000, prompt: "Plants per acre wanted at harvest." },
    }),
    germination: typedNumber(pick(examples, "germinationPct"), {
      ...perCent,
      allow: within(limits.germination, "Germination on the seed tag"),
    }),
    fieldSurvival: typedNumber(pick(examples, "fieldSurvivalPct"), {
      ...perCent,
      allow: within(limits.germination, "Share of live seeds that become plants"),
    }),
    seedsPerUnit: typedNumber(pick(examples, "seedsPerUnit"), {
      width: 11,
      format: formats.whole,
      allow: { kind: "between", min: 1000, max: 10_000_000, prompt: "Seeds in one bag or unit, from the tag." },
      note: "Wheat is often sold by the 50 lb bag: seeds per pound on the tag × 50.",
    }),
    unitPrice: typedNumber(pick(examples, "unitPriceUsd"), {
      width: 10,
      format: formats.cents,
      allow: within(limits.price, "Price of one unit"),
    }),
    treatment: typedNumber(pick(examples, "treatmentUsdPerUnit"), {
      width: 11,
      format: formats.cents,
      allow: within(limits.price, "Treatment and inoculant on one unit"),
    }),
  };
}

function moneyBlock(): EntriesBlock {
  return {
    kind: "entries",
    key: "money",
    title: "Operating money",
    entries: [
      typedEntry(
        { key: "rate", label: "Interest", unit: "a year", format: formats.rate, name: farmNames.interestRate },
        farmExamples.interestRate,
        { kind: "between", min: 0, max: 1, prompt: "Interest a year: 8 % is 8% or 0.08." },
      ),
      typedEntry(
        {
          key: "months",
          label: "Months the money is out",
          unit: "months",
          format: formats.whole,
          name: farmNames.interestMonths,
          says: "From buying the inputs to selling the crop.",
        },
        farmExamples.interestMonths,
        { kind: "between", min: 0, max: 36, prompt: "Months from buying inputs to selling the crop." },
      ),
    ],
  };
}
