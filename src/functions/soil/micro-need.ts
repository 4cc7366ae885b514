import { limits } from "../../core/limits";
import { microNeed as microNeedOf } from "../../core/soil/micro-need";
import { soilLimits } from "../../core/soil/soil-limits";
import { microGuides, microPlacements } from "../../reference/soil";
import { choice, line, optional, quantity, worksheetFunction } from "../frame";
import { cropWords, microGuideWords, micronutrientWords, microPlacementWords, soilKindWords } from "../words";
import { checkLines } from "../check-lines";
import { seedTouch } from "../cautions";
import { printedEnds } from "./printed-ends";

export const microNeed = worksheetFunction({
  name: "MICRONEED",
  family: "soil",
  summary: "Pounds of a micronutrient, magnesium or chloride that a region recommends for a crop.",
  asks: ["how much zinc", "do I need boron", "manganese for soybeans", "magnesium or chloride need"],
  args: {
    nutrient: choice(micronutrientWords, { says: "Zn, Mn, B, Cu, Fe, Mg or Cl" }),
    crop: choice(cropWords, { says: "crop to be grown" }),
    soilTest: optional(
      quantity(soilLimits.microTest, { says: "soil test by the guide's own extraction and unit" }),
      null,
      "waited for where the guide reads it",
    ),
    pH: optional(quantity(limits.soilPh, { says: "soil pH" }), null, "waited for where the guide reads it"),
    guide: choice(microGuideWords, { says: "region, by its postal code; NC by the equation its report names" }),
    placement: optional(
      choice(microPlacementWords, { says: "broadcast, band or foliar" }),
      null,
      "the printed one; waited for where the guide prints two",
    ),
    soil: optional(choice(soilKindWords, { says: "mineral or organic" }), "mineral", "mineral"),
    cec: optional(quantity(limits.cec, { says: "cation exchange capacity, for Mg" }), null, "waited for there"),
  },
  returns: { shape: "one", unit: "lb/ac", says: "pounds of the nutrient per acre" },
  sources: [
    "umn-micronutrients-2009",
    "umn-boron",
    "unl-zinc",
    "ndsu-costs-2022",
    "ksu-mf2586",
    "isu-pm1688-2013",
    "ipni-zinc-2013",
    "rutgers-soil-lab",
    "psu-boron",
    "ncda-circular1-2014",
    "msu-e2567-1995",
    "ksu-chloride",
    "sdsu-chloride",
    "foliar-manganese",
  ],
  cautions: [
    "Micronutrient tests belong to their extraction: use the guide's own.",
    "A little too much poisons: never above the label.",
    seedTouch,
  ],
  example: {
    call: ["Zn", "corn", 0.4, null, "MN", "band"],
    gives: 2,
    because: "printed: DTPA zinc to 0.50 ppm, 2 lb in a band",
  },
  compute: ({ nutrient, crop, soilTest, pH, guide, placement, soil, cec }) =>
    microNeedOf({ nutrient, crop, soilTest, ph: pH, guide, placement, isOrganicSoil: soil === "organic", cecMeq: cec }),
  value: (result) => result.needLbPerAc,
  working: (result, { guide }) => [
    line("Region", microGuides[guide].label),
    line("Reads", `${result.rule.test}, ${result.rule.unit}`),
    ...(result.index === null ? [] : [line("Availability index", result.index)]),
    ...(result.placement === null ? [] : [line("Placement", microPlacements[result.placement].label)]),
    ...printedEnds(result),
    line("Rate", result.needLbPerAc, "lb/ac"),
    ...checkLines([result.rule]),
  ],
  cites: (result) => [result.rule],
});
