import { limits } from "../../core/limits";
import { publishedDensity } from "../../core/materials/liquid-density";
import { liquidRate as liquidRateOf, type GallonWeight } from "../../core/materials/liquid-rate";
import { materialLimits } from "../../core/materials/material-limits";
import { liquidDensity, type MaterialKey } from "../../reference/materials";
import { line, quantity, worksheetFunction } from "../frame";
import { orWord } from "../number-or-word";
import { analysisArgument } from "./analysis-argument";
import { liquidWords } from "./material-words";
import { ammonia } from "../cautions";
import { checkLines } from "../check-lines";

const gallonArgument = orWord<MaterialKey, GallonWeight>(
  quantity(materialLimits.lbPerGal, {
    says: "weight of a gallon, as on the label; or the name of a liquid such as UAN 28 to take the published weight",
  }),
  liquidWords,
  {
    ofNumber: (lbPerGal) => ({ lbPerGal, cited: null }),
    ofWord: (material) => {
      const row = publishedDensity(material);
      return { lbPerGal: row.lbPerGal, cited: row };
    },
  },
);

export const liquidRate = worksheetFunction({
  name: "LIQUIDRATE",
  family: "materials",
  summary: "Gallons of a liquid fertilizer that carry the nutrient an acre needs.",
  asks: ["how many gallons of 28 %", "gallons of UAN per acre", "gallons of 10-34-0"],
  args: {
    need: quantity(limits.ratePounds, { says: "pounds of the nutrient wanted per acre" }),
    analysis: analysisArgument,
    lbPerGallon: gallonArgument,
  },
  returns: { shape: "one", unit: "gal/ac", says: "gallons of product per acre" },
  sources: [...new Set(liquidDensity.rows.map(({ source }) => source))],
  cautions: [
    "A gallon weighs less when it is warm: nitrogen solutions change about 0.03 lb/gal for each 10 F from 60 F.",
    ammonia,
  ],
  example: {
    call: [120, 28, 10.67],
    gives: 40.166,
    because: "by hand: 10.67 × 0.28 = 2.9876 lb N/gal; 120 / 2.9876",
  },
  compute: ({ need, analysis, lbPerGallon }) =>
    liquidRateOf({ needLbPerAc: need, analysisPct: analysis, gallon: lbPerGallon }),
  value: (result) => result.rateGalPerAc,
  working: (result) => [
    line("A gallon weighs", result.gallon.lbPerGal, "lb/gal"),
    line("Nutrient in a gallon", result.nutrientLbPerGal, "lb/gal"),
    line("Product", result.productLbPerAc, "lb/ac"),
    line("Product", result.rateGalPerAc, "gal/ac"),
    ...checkLines(citedOf(result.gallon)),
  ],
  cites: ({ gallon }) => citedOf(gallon),
});

function citedOf({ cited }: GallonWeight) {
  return cited ? [cited] : [];
}
