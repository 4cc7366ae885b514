import { limits } from "../../../core/limits";
import { formats } from "../../model/cell";
import { typedNumber, typedWords, within } from "../../model/columns";
import { tableBlock, type TableBlock } from "../../model/table";
import type { SheetModel } from "../../model/workbook-model";
import { cropExamples } from "../../scenario/crop-examples";
import { materialExamples } from "../../scenario/farm-examples";
import { tabColors } from "../tab-colors";
import type { FarmContext } from "./farm-context";
import { cropTable, materialTable } from "./headers";

export function assumptionsSheet(context: FarmContext): SheetModel {
  return {
    key: "assumptions",
    name: "Assumptions",
    tabColor: tabColors.input,
    title: "Assumptions",
    answers: "Prices, crops, materials and terms that every other sheet works with. All are examples: write over them.",
    blocks: [cropsBlock(context), materialsBlock()],
    print: { orientation: "landscape", onePage: true },
  };
}

function cropsBlock({ crops }: FarmContext): TableBlock {
  const of = (take: (example: (typeof cropExamples)[keyof typeof cropExamples]) => number) =>
    crops.map(({ crop }) => take(cropExamples[crop]));
  return tableBlock(
    cropTable,
    { title: "Crops", rows: crops.length },
    {
      crop: typedWords(
        crops.map(({ crop }) => crop),
        { width: 30 },
      ),
      price: typedNumber(
        crops.map(({ priceUsdPerBu }) => priceUsdPerBu),
        { width: 14, format: formats.cents, allow: within(limits.price, "Price at the elevator, $/bu") },
      ),
      yield: typedNumber(
        crops.map(({ yieldBuPerAc }) => yieldBuPerAc),
        { width: 10, format: formats.one, allow: within(limits.yieldAny, "Usual yield, bu/ac") },
      ),
      costPerBushel: typedNumber(
        of(({ costUsdPerBu }) => costUsdPerBu),
        { width: 10, format: formats.cents, allow: within(limits.price, "Hauling, drying and storing, $/bu") },
      ),
      nitrogen: typedNumber(
        of(({ nitrogenLbPerAc }) => nitrogenLbPerAc),
        { width: 10, format: formats.whole, allow: within(limits.ratePounds, "Nitrogen") },
      ),
      rowWidth: typedNumber(
        of(({ rowWidthIn }) => rowWidthIn),
        { width: 9, format: formats.one, allow: within(limits.rowWidth, "Row width") },
      ),
      targetStand: typedNumber(
        of(({ targetStandPerAc }) => targetStandPerAc),
        { width: 12, format: formats.whole },
      ),
      germination: typedNumber(
        of(({ germinationPct }) => germinationPct),
        { width: 12, format: formats.whole, allow: within(limits.germination, "Germination on the tag") },
      ),
      fieldSurvival: typedNumber(
        of(({ fieldSurvivalPct }) => fieldSurvivalPct),
        { width: 10, format: formats.whole },
      ),
      seedsPerUnit: typedNumber(
        of(({ seedsPerUnit }) => seedsPerUnit),
        { width: 10, format: formats.whole },
      ),
      unitPrice: typedNumber(
        of(({ unitPriceUsd }) => unitPriceUsd),
        { width: 9, format: formats.cents },
      ),
      treatment: typedNumber(
        of(({ treatmentUsdPerUnit }) => treatmentUsdPerUnit),
        { width: 11, format: formats.cents },
      ),
    },
  );
}

function materialsBlock(): TableBlock {
  const percentages = { width: 10, format: formats.one, allow: within(limits.share, "Analysis") };
  return tableBlock(
    materialTable,
    { title: "Fertilizer", rows: materialExamples.length },
    {
      material: typedWords(
        materialExamples.map(({ material }) => material),
        { width: 30 },
      ),
      nitrogen: typedNumber(
        materialExamples.map(({ nitrogenPct }) => nitrogenPct),
        percentages,
      ),
      phosphate: typedNumber(
        materialExamples.map(({ phosphatePct }) => phosphatePct),
        percentages,
      ),
      potash: typedNumber(
        materialExamples.map(({ potashPct }) => potashPct),
        percentages,
      ),
      sulfur: typedNumber(
        materialExamples.map(({ sulfurPct }) => sulfurPct),
        percentages,
      ),
      price: typedNumber(
        materialExamples.map(({ priceUsdPerTon }) => priceUsdPerTon),
        { width: 10, format: formats.dollars },
      ),
    },
  );
}
