import { seedLimits } from "../../../../core/seed/seed-limits";
import { seedCurveOptimum, seedOptimum } from "../../../../functions/seed/optimum";
import { populationCurveWords } from "../../../../functions/seed/seed-words";
import { call } from "../../../formula/call";
import { formula, type Expression, type Term } from "../../../formula/expression";
import { lookUp, quiet, whenNamed, whenNumbers, wordsInRow } from "../../../formula/natives";
import { formats } from "../../../model/cell";
import { computed, computedWords, oneOf, typedNumber, typedWords, within } from "../../../model/columns";
import { headersOf, tableBlock, type TableBlock } from "../../../model/table";
import { usualCurves } from "../../../scenario/crop-examples";
import { labelsOf } from "../../word-lists";
import { ofCrop } from "../crop-lookup";
import type { FarmContext } from "../farm-context";
import { cropTable } from "../headers";

const bestStands = headersOf("BestStands", {
  crop: "Crop of the curve",
  curve: "Published curve",
  linear: "Your linear term",
  quadratic: "Your quadratic term",
  seedPrice: "Seed $/1000",
  netPrice: "Net price $/bu",
  survival: "Plants from 100 seeds",
  published: "Best by published curve",
  own: "Best by your terms",
  best: "Stand that pays best",
  seeds: "Seeds for it",
  wanted: "Stand wanted",
});
const own = bestStands.own;

/** A figure of the table of best stands for a crop; nothing where the crop has no curve. */
export function ofBestStand(crop: Term, column: keyof typeof bestStands.headers): Expression {
  const found = lookUp(crop, bestStands.all("crop"), bestStands.all(column));
  return formula`IF(COUNT(${found})=1,${found},"")`;
}

/** The stand that earns most over its seed, crop by crop, beside the stand that is wanted. */
export function bestStandBlock({ crops }: FarmContext): TableBlock {
  const term = { width: 10, format: "0.0###_)" };
  return tableBlock(
    bestStands,
    { title: "The stand that pays best", rows: crops.length },
    {
      crop: computedWords(wordsInRow(cropTable.all("crop"), bestStands.rowNumber), { width: 18 }),
      curve: typedWords(
        crops.map(({ crop }) => usualCurves[crop]),
        {
          width: 17,
          allow: oneOf(labelsOf(populationCurveWords), "A published curve of yield by stand; blank: none."),
          note: "None is held for wheat. Your own terms go before a published curve.",
        },
      ),
      linear: typedNumber([], {
        ...term,
        allow: within(seedLimits.linear, "Bushels for a thousand plants, from your own trials"),
        note: "LOAM.RESPONSEFIT gives both terms from a trial of stands in thousands of plants.",
      }),
      quadratic: typedNumber([], {
        ...term,
        allow: within(seedLimits.quadratic, "Bushels for a thousand plants squared, below 0"),
      }),
      ...priceColumns(),
      ...standColumns(),
    },
  );
}

function priceColumns() {
  const of = (column: keyof typeof cropTable.headers) => ofCrop(own("crop"), column);
  const seed = formula`(${of("unitPrice")}+N(${of("treatment")}))/${of("seedsPerUnit")}*1000`;
  return {
    seedPrice: computed(quiet(seed), { width: 10, format: formats.cents, note: "Seed and treatment." }),
    netPrice: computed(quiet(formula`${of("price")}-N(${of("costPerBushel")})`), { width: 10, format: formats.cents }),
    survival: computed(quiet(formula`${of("germination")}*${of("fieldSurvival")}/100`), {
      width: 10,
      format: formats.one,
    }),
  };
}

function standColumns() {
  const prices = [own("seedPrice"), own("netPrice"), own("survival")];
  const shared = { seedPricePerThousand: own("seedPrice"), grainPrice: own("netPrice"), survival: own("survival") };
  const look = { width: 12, format: formats.whole };
  const published = call(seedCurveOptimum, { curve: own("curve"), fullYield: ofCrop(own("crop"), "yield"), ...shared });
  const yours = call(seedOptimum, { linear: own("linear"), quadratic: own("quadratic"), ...shared });
  return {
    published: computed(whenNamed(own("curve"), whenNumbers(prices, published)), {
      ...look,
      note: "At the usual yield of the crop, planted in good time.",
    }),
    own: computed(whenNumbers([own("linear"), own("quadratic"), ...prices], yours), look),
    best: computed(
      formula`IF(COUNT(${own("own")})=1,${own("own")},IF(COUNT(${own("published")})=1,${own("published")},""))`,
      look,
    ),
    seeds: computed(whenNumbers([own("best"), own("survival")], formula`${own("best")}/${own("survival")}*100`), look),
    wanted: computed(quiet(ofCrop(own("crop"), "targetStand")), look),
  };
}
