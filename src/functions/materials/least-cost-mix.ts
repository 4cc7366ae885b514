import { limits } from "../../core/limits";
import { leastCostMix as leastCostMixOf } from "../../core/materials/least-cost-mix";
import { materialLimits } from "../../core/materials/material-limits";
import { materialAnalysis } from "../../reference/materials";
import { line, listWithGaps, optional, quantity, worksheetFunction } from "../frame";
import { mixAnalyses } from "./mix-analyses";
import { mixLimits } from "./mix-limits";
import { mixNeeds } from "./mix-needs";
import { mixOffer } from "./mix-offer";
import { bindingWords, mixTable } from "./mix-table";
import { nutrientRules, seedTouch } from "../cautions";
import { checkLine } from "../check-lines";

export const leastCostMix = worksheetFunction({
  name: "LEASTCOSTMIX",
  family: "materials",
  summary: "The cheapest mix of materials that meets every need, and what holds its price up.",
  asks: ["cheapest fertilizer blend", "least-cost mix", "which products to buy for my needs"],
  args: {
    needs: mixNeeds(),
    analyses: mixAnalyses(),
    prices: listWithGaps(quantity(materialLimits.pricePerTon, { says: "price" }), {
      says: "price of a ton of each material, in the order of analyses; a material without a price is left out",
    }),
    limits: optional(mixLimits(), null, "any amount of each material"),
    overshoot: optional(
      listWithGaps(quantity(limits.ratePounds, { says: "overshoot" }), {
        says: "pounds allowed beyond each need, in the order of needs; one cell stands for all",
      }),
      null,
      "a need may be passed by any amount",
    ),
    saltLimit: optional(
      quantity(materialLimits.saltWithSeed, { says: "most N + K2O where the mix goes with or near the seed" }),
      null,
      "the mix does not go near the seed",
    ),
    totalLimit: optional(
      quantity(limits.ratePounds, { says: "most pounds of all materials together" }),
      null,
      "any weight",
    ),
  },
  returns: {
    shape: "table",
    unit: "lb/ac",
    says: "a row per material with lb/ac and $/ac, the total, then the pounds of each nutrient and what one more pound costs",
  },
  sources: [...new Set(materialAnalysis.rows.map(({ source }) => source))],
  cautions: [
    "The label of the product at hand gives its analysis.",
    nutrientRules,
    "Not every mix keeps: urea with ammonium nitrate turns wet, urea with superphosphate cakes, and calcium materials with sulfates or phosphates in solution drop out. Ask the blender. Check against the current bulletin.",
    seedTouch,
    "Dry soil stands less beside the seed than the salt limit.",
  ],
  example: {
    call: [
      [
        ["N", "P2O5", "K2O"],
        [120, 60, 60],
      ],
      [
        ["urea", 46, 0, 0],
        ["DAP", 18, 46, 0],
        ["MAP", 11, 52, 0],
        ["potash", 0, 0, 60],
      ],
      [[500], [700], [750], [420]],
    ],
    gives: [
      ["Item", "lb/ac", "$/ac", "What holds it"],
      ["urea", 209.83, 52.457, ""],
      ["DAP", 130.435, 45.652, ""],
      ["MAP", 0, 0, "not used"],
      ["potash", 100, 21, ""],
      ["All materials", 440.265, 119.109, ""],
      ["N supplied", 120, "", "just the need of 120; one more lb of N costs $0.54"],
      ["P2O5 supplied", 60, "", "just the need of 60; one more lb of P2O5 costs $0.55"],
      ["K2O supplied", 60, "", "just the need of 60; one more lb of K2O costs $0.35"],
    ],
    because:
      "by hand: DAP 60 / 0.46 = 130.43 lb brings 23.48 lb N, urea (120 − 23.48) / 0.46 = 209.83, potash 60 / 0.60; N costs 0.25 / 0.46, P2O5 (0.35 − 0.18 × 0.543) / 0.46, K2O 0.21 / 0.60",
  },
  compute: ({ needs, analyses, prices, limits: materialLimit, overshoot, saltLimit, totalLimit }) => {
    const offer = mixOffer({
      needs,
      analyses,
      pricesUsdPerTon: prices,
      limits: materialLimit,
      overshootLbPerAc: overshoot,
      saltLimitLbPerAc: saltLimit,
      totalLimitLbPerAc: totalLimit,
    });
    return { offer, mix: leastCostMixOf(offer.request) };
  },
  value: ({ offer, mix }) => mixTable(mix, offer.rows),
  working: ({ offer, mix }) => [
    ...mix.materials
      .filter(({ rateLbPerAc }) => rateLbPerAc > 0)
      .map((one) => line(one.name, one.rateLbPerAc, "lb/ac")),
    line("Cost of the mix", mix.costUsdPerAc, "$/ac"),
    ...bindingWords(mix).map(([what, words]) => line(what, words)),
    ...offer.rows.flatMap(({ name, leftOut }) => (leftOut ? [line(name, leftOut)] : [])),
    line("How the price of one more pound is found", "the mix is worked again with one pound more"),
    ...checkLine(offer.cited),
  ],
  cites: ({ offer }) => offer.cited,
});
