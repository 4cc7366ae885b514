import { phosphateNeed, potashNeed } from "../../../../functions/soil/nutrient-need";
import { extractantWords } from "../../../../functions/words";
import { groups, type Guide, type NeedNutrient } from "../../../../reference/guides";
import { call } from "../../../formula/call";
import { formula, type Expression, type Term } from "../../../formula/expression";
import { orBlank } from "../../../formula/natives";
import { place } from "../../../formula/reference";
import type { EntriesBlock, PlacedCell, RowsBlock } from "../../../model/block";
import { formats } from "../../../model/cell";
import { oneOf } from "../../../model/columns";
import { computedEntry, typedEntry, wordsEntry } from "../../../model/entries";
import { cautions, remarks } from "../../../model/paragraphs";
import { headRow } from "../../../model/rows";
import type { SheetModel } from "../../../model/workbook-model";
import { labelsOf } from "../../word-lists";
import { tabColors } from "../../tab-colors";
import type { FarmContext } from "../farm-context";
import { farmSheets } from "../farm-sheets";
import { fieldList, fromFields, fromSoilTest, wordsFromFields } from "../field-lookup";
import { allGuides, asksForYears, extractionsOf, readsPpm, splitsByGroup, turnsOnCec } from "./guide-facts";
import { named } from "../names";

const value = (key: string) => place(`compare.${key}`);

const trades = { P2O5: "Phosphate", K2O: "Potash" } as const;
const methods = { P2O5: "phosphorusMethod", K2O: "potassiumMethod" } as const;
const tests = { P2O5: "phosphorus", K2O: "potassium" } as const;

export function guidesSheet(context: FarmContext): SheetModel {
  return {
    key: "guides",
    name: farmSheets.guides.name,
    tabColor: tabColors.answer,
    title: "Guides side by side",
    answers: "What each published guide in this workbook asks for the next crop of one field.",
    blocks: [
      fieldBlock(context),
      cautions(
        "A guide, its extraction and its depth of sample belong together. A number is only right for a test that the guide's own laboratory method made; " +
          "none of these numbers is better for being larger or smaller. Plan by the guide of your own region.",
      ),
      guideRows("P2O5"),
      guideRows("K2O"),
      remarks(
        "Every guide by its own way of reckoning: some raise the soil test, some only feed the crop. Only parts of some bulletins are in this workbook: no number does not mean " +
          "that the bulletin prints none. Check against the current bulletin.",
      ),
    ],
    widths: [24, 22, 11, 13, 19, 82],
    print: { orientation: "portrait", onePage: true },
  };
}

function fieldBlock({ fields, comparedMethods }: FarmContext): EntriesBlock {
  const start = fields.find(({ field }) => field === "Mill Road") ?? fields[0];
  const field = value("field");
  const extraction = oneOf(labelsOf(extractantWords), "Extraction the laboratory used.");
  const ppm = { unit: "ppm", format: formats.whole };
  return {
    kind: "entries",
    key: "compare",
    title: "The field",
    entries: [
      typedEntry({ key: "field", label: "Field", says: "Any field of the list." }, start?.field ?? null, fieldList),
      wordsEntry({ key: "crop", label: "Next crop" }, wordsFromFields(field, "nextCrop")),
      wordsEntry({ key: "before", label: "Crop before it" }, wordsFromFields(field, "lastCrop")),
      computedEntry(
        { key: "goal", label: "Yield goal", unit: "bu/ac", format: formats.one },
        fromFields(field, "yieldGoal"),
      ),
      computedEntry({ key: "phosphorus", label: "Phosphorus test", ...ppm }, fromSoilTest(field, "phosphorus")),
      typedEntry({ key: "phosphorusMethod", label: "It was extracted by" }, comparedMethods.P2O5, extraction),
      computedEntry({ key: "potassium", label: "Potassium test", ...ppm }, fromSoilTest(field, "potassium")),
      typedEntry({ key: "potassiumMethod", label: "It was extracted by" }, comparedMethods.K2O, extraction),
      computedEntry({ key: "cec", label: "CEC", unit: "meq/100 g", format: formats.one }, fromSoilTest(field, "cec")),
    ],
  };
}

/** A line for each guide: year, depth, the rate, a soil group where it asks for one, and what it takes. */
function guideRows(nutrient: NeedNutrient): RowsBlock {
  const waits = "The extraction it takes, and what it waits for";
  return {
    kind: "rows",
    title: trades[nutrient],
    rows: [
      headRow("Guide", "Year", "Depth in", `${nutrient} lb/ac`, "Soil group", waits),
      ...allGuides.map((guide, index) => guideRow(guide, nutrient, `${nutrient}.${index + 1}`)),
    ],
  };
}

function guideRow(guide: Guide, nutrient: NeedNutrient, key: string): PlacedCell[] {
  const label: PlacedCell = { key: `${key}.guide`, content: guide.label, style: "label" };
  return [
    label,
    { content: yearOf(guide), style: "unit" },
    { content: guide[nutrient].depthIn ?? "not stated", style: "computed" },
    { key: `${key}.rate`, content: rateBy(guide, nutrient, key), style: "computed", format: formats.whole },
    groupCell(guide, nutrient, `${key}.group`),
    { content: inWords(guide, nutrient, key), style: "computedText" },
  ];
}

/** A year as a number where it is one; "undated" and spans of years as they are. */
function yearOf({ year }: Guide): number | string {
  return /^\d+$/.test(year) ? Number(year) : year;
}

/** Where a guide splits its numbers, a list of its own groups to choose from. */
function groupCell(guide: Guide, nutrient: NeedNutrient, key: string): PlacedCell {
  if (!splitsByGroup(guide, nutrient) || !readsPpm(guide, nutrient)) return { key, style: "unit" };
  const own = new Set(
    guide[nutrient].rules.flatMap(({ group }) => (group === undefined ? [] : (groups[group]?.label ?? []))),
  );
  return { key, style: "inputText", allow: oneOf([...own], `Soil group or region, as ${guide.label} prints it.`) };
}

/** The rate, or a dash. Asked only for a test of the guide's own kind. */
function rateBy(guide: Guide, nutrient: NeedNutrient, key: string): Expression {
  if (!readsPpm(guide, nutrient)) return formula`"–"`;
  const common = {
    crop: value("crop"),
    yieldGoal: value("goal"),
    soilTest: value(tests[nutrient]),
    guide: place(`${key}.guide`),
    method: value(methods[nutrient]),
    ...(splitsByGroup(guide, nutrient) && { group: place(`${key}.group`) }),
    ...(asksForYears(guide, nutrient) && { years: orBlank(named("buildYears")) }),
    testUnit: "ppm",
  };
  const need =
    nutrient === "P2O5"
      ? call(phosphateNeed, { ...common, rotationCrop: value("before") })
      : call(potashNeed, { ...common, cec: value("cec") });
  return formula`IF(${value("field")}&""="","",IFERROR(${need},"–"))`;
}

/** "takes Bray P1; this field has Mehlich-3", or what else keeps the guide from answering. */
function inWords(guide: Guide, nutrient: NeedNutrient, key: string): Expression {
  const system = guide[nutrient];
  if (system.testUnit === "class") return formula`"takes the class that its laboratory prints, not ppm"`;
  const takes = extractionsOf(guide, nutrient)
    .replace(/; /g, ", ")
    .replace(/, ([^,]*)$/, " or $1");
  if (system.testUnit === "index") return formula`${`takes ${takes} as its laboratory's index, not ppm`}`;
  const method = value(methods[nutrient]);
  const isTaken = formula`ISNUMBER(SEARCH("; "&${method}&";",${`; ${extractionsOf(guide, nutrient)};`}))`;
  const other = formula`${`takes ${takes}; this field has `}&${method}`;
  const reasons = waitsOf(guide, nutrient, key).reduceRight<Expression>(
    (rest, [isMissing, words]) => formula`IF(${isMissing},${`takes ${takes}; waits for ${words}`},${rest})`,
    formula`${`takes ${takes}; no rate held for this crop and test`}`,
  );
  const without = formula`IF(AND(${method}&""<>"",${isTaken}=FALSE),${other},${reasons})`;
  return formula`IF(ISNUMBER(${place(`${key}.rate`)}),${takes},${without})`;
}

/** What may be missing, in the order it is asked for. */
function waitsOf(guide: Guide, nutrient: NeedNutrient, key: string): (readonly [Expression, string])[] {
  const isBlank = (cell: Term) => formula`${cell}&""=""`;
  const method = value(methods[nutrient]);
  return [
    [isBlank(value("field")), "a field"],
    [isBlank(value("crop")), "the next crop"],
    [isBlank(value("goal")), "the yield goal"],
    [isBlank(value(tests[nutrient])), "the soil test"],
    ...(guide[nutrient].extractants.length > 1 ? ([[isBlank(method), "the extraction"]] as const) : []),
    ...(turnsOnCec(guide, nutrient) ? ([[isBlank(value("cec")), "the CEC"]] as const) : []),
    ...(splitsByGroup(guide, nutrient) ? ([[isBlank(place(`${key}.group`)), "a soil group"]] as const) : []),
    ...(asksForYears(guide, nutrient)
      ? ([[isBlank(named("buildYears")), "build-up years (Assumptions)"]] as const)
      : []),
  ];
}
