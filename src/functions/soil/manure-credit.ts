import { manureCredit as manureCreditOf, type ManureCredit } from "../../core/nutrients/manure-credit";
import { soilLimits } from "../../core/soil/soil-limits";
import { manures, type Manure } from "../../reference/manure";
import { choice, line, optional, percent, quantity, worksheetFunction, type WorkingLine } from "../frame";
import { manureGuideWords, manureNutrientWords, manurePlacementWords, manureWords } from "../words";
import { checkLines } from "../check-lines";
import { nutrientRules } from "../cautions";

export const manureCredit = worksheetFunction({
  name: "MANURECREDIT",
  family: "soil",
  summary: "Pounds of a nutrient of spread manure that this season's crop can use.",
  asks: [
    "how much nitrogen is in manure",
    "manure nutrient credit",
    "potash from hog manure",
    "how much of the manure is available this year",
  ],
  args: {
    manure: choice(manureWords, { says: "kind of manure" }),
    nutrient: choice(manureNutrientWords, { says: "N, P2O5 or K2O" }),
    rate: quantity(soilLimits.manureRate, { says: "rate: liquids in 1,000 gal/ac, solids in ton/ac" }),
    placement: optional(
      choice(manurePlacementWords, { says: "how it was spread" }),
      null,
      "waited for where the guide reads it",
    ),
    yearsSince: optional(
      quantity(soilLimits.yearsSince, {
        says: "0 for this season's manure, 1 for last season's, 2 for the one before",
      }),
      0,
      "this season's",
    ),
    guide: choice(manureGuideWords, {
      says: "IA and MN work on total nitrogen, NY on ammonium and organic nitrogen",
    }),
    content: optional(
      quantity(soilLimits.manureContent, {
        says: "laboratory analysis of that nutrient, total; a percentage as is × 83.4 is lb per 1,000 gal, × 20 lb per ton",
      }),
      null,
      "the typical content of that manure",
    ),
    ammoniumN: optional(
      quantity(soilLimits.manureContent, { says: "ammonium nitrogen by the laboratory, for NY" }),
      null,
      "typical where content is, or waited for",
    ),
    ammoniumLoss: optional(
      percent({ min: 0, max: 100, unit: "%", slip: 0.01 }, { says: "share of the ammonium lost to the air, for NY" }),
      null,
      "waited for there",
    ),
    dryMatter: optional(
      percent(soilLimits.dryMatter, { says: "dry matter of the manure, for NY" }),
      null,
      "liquids under 18 %; waited for with solids",
    ),
  },
  returns: { shape: "one", unit: "lb/ac", says: "pounds per acre; the middle of printed ranges" },
  sources: [
    "isu-manure-2021",
    "isu-pmr1003-2016",
    "mu-manure-regional",
    "cornell-manure-release",
    "mwps-18",
    "mid-atlantic-manure",
  ],
  cautions: [
    "A laboratory analysis comes before typical contents: manures differ by half and more.",
    "Take it off once: enter it under credits of a need, and not at all where a late-spring test has read it.",
    "A rate set by nitrogen usually brings more phosphate than crops remove: look at P2O5 too.",
    nutrientRules,
    "Gas over stirred manure kills: keep people and animals out and air moving.",
  ],
  example: {
    call: ["swine finishing", "N", 3, "injected", 0, "IA", 50],
    gives: 141.075,
    because: "by hand: 3 × 50 = 150 lb; middle of 90 to 100 % is 0.95, of 0.98 to 1.00 is 0.99; 150 × 0.95 × 0.99",
  },
  compute: (values) =>
    manureCreditOf({
      manure: values.manure,
      nutrient: values.nutrient,
      ratePerAc: values.rate,
      placement: values.placement,
      yearsSince: values.yearsSince,
      guide: values.guide,
      contentLb: values.content,
      ammoniumLb: values.ammoniumN,
      ammoniumLossPct: values.ammoniumLoss,
      dryMatterPct: values.dryMatter,
    }),
  value: (result) => result.creditLbPerAc,
  working: (result, { manure, nutrient, rate, yearsSince }) => [
    line(`Content, ${result.isTypical ? "typical" : "by analysis"}`, result.contentLb, `lb per ${result.unit}`),
    line("Spread", result.suppliedLbPerAc, "lb/ac"),
    ...partLines(result),
    line("Lowest printed", result.lowLbPerAc, "lb/ac"),
    line("Highest printed", result.highLbPerAc, "lb/ac"),
    line("Credit", result.creditLbPerAc, "lb/ac"),
    ...(nutrient === "N" ? alsoSpread(manures[manure], rate) : []),
    ...(nutrient !== "N" && yearsSince > 0 ? [line("Later seasons", "the soil test shows what is left of it")] : []),
    ...checkLines(result.cited),
  ],
  cites: (result) => result.cited,
});

function partLines({ split, availablePct, keptPct }: ManureCredit): WorkingLine[] {
  if (split) {
    return [
      line("Ammonium nitrogen left", split.ammonium, "lb/ac"),
      line(`Organic nitrogen, ${availablePct[0]} % set free`, split.organic, "lb/ac"),
    ];
  }
  return [
    line("Available this season", `${availablePct[0]} to ${availablePct[1]} %`),
    ...(keptPct ? [line("Kept from the air", `${keptPct[0]} to ${keptPct[1]} %`)] : []),
  ];
}

/** Typical phosphate and potash that come along with a nitrogen rate. */
function alsoSpread({ P2O5, K2O }: Manure, rate: number): WorkingLine[] {
  return P2O5 === undefined || K2O === undefined
    ? []
    : [
        line("P2O5 spread with it, typical", P2O5 * rate, "lb/ac"),
        line("K2O spread with it, typical", K2O * rate, "lb/ac"),
      ];
}
