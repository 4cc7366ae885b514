import { approachWords, extractantWords, guideWords } from "../../../../functions/words";
import type { NeedNutrient } from "../../../../reference/guides";
import { formula, type Expression } from "../../../formula/expression";
import type { EntriesBlock, Entry } from "../../../model/block";
import { formats } from "../../../model/cell";
import { oneOf } from "../../../model/columns";
import { typedEntry, wordsEntry } from "../../../model/entries";
import { labelsOf } from "../../word-lists";
import type { FarmContext } from "../farm-context";
import {
  allGuides,
  asksForYears,
  extractionsOf,
  guidesWhere,
  isOneOf,
  leavesYears,
  splitsByGroup,
  zincExtractions,
  zincTests,
} from "../fertility/guide-facts";
import { farmNames, named, type FarmName } from "../names";

/** Which published guide works out phosphate and potash, and what some guides ask for besides. */
export function guideBlock(context: FarmContext): EntriesBlock {
  return {
    kind: "entries",
    key: "guide",
    title: "The guide",
    entries: [...regionLines(context), ...splitLines(context), ...zincLines(context), ...answerLines()],
  };
}

function regionLines({ guide, methods }: FarmContext): Entry[] {
  const says =
    "Region whose published guide works out phosphate and potash; the laboratory's numbers have to belong to it.";
  const regions = oneOf(labelsOf(guideWords), "Region of the guide, by postal codes.");
  const extractions = oneOf(labelsOf(extractantWords), "Extraction the laboratory used.");
  const method = "Blank where the guide knows only one; numbers from different extractions are not the same numbers.";
  return [
    line("guide", "Guide", says, guide, regions),
    line("phosphorusMethod", "Phosphorus method", method, methods.P2O5, extractions),
    line("potassiumMethod", "Potassium method", "The same for potassium.", methods.K2O, extractions),
  ];
}

function splitLines({ groups }: FarmContext): Entry[] {
  const reckonings = oneOf(labelsOf(approachWords), "build, sufficiency or removal; blank for the guide's own way.");
  return [
    line(
      "approach",
      "Reckoning",
      "Blank: the guide's own. With sufficiency the build-up is left out; with removal what the crop takes is put back.",
      null,
      reckonings,
    ),
    line(
      "soilGroup",
      "Soil group",
      "Only where the guide splits its numbers by soil or region; the cells that wait for it say so.",
      null,
      oneOf(groups, "Soil group or region, as the guide prints it."),
    ),
    {
      ...typedEntry(
        { key: "buildYears", label: "Build-up over", unit: "years", format: formats.whole, name: farmNames.buildYears },
        null,
        { kind: "between", min: 1, max: 20, whole: true, prompt: "Years over which the test is raised." },
      ),
      says: "Only where the guide leaves the choice.",
    },
  ];
}

function zincLines({ zincMethod }: FarmContext): Entry[] {
  const says = "Blank where zinc was not tested. The guide's level belongs to its own extraction.";
  const allow = oneOf(zincExtractions, "Extraction the laboratory used for zinc.");
  return [line("zincMethod", "Zinc method", says, zincMethod, allow)];
}

/** What the guide takes and still waits for. */
function answerLines(): Entry[] {
  const guide = named("guide");
  const zincTest = zincTests.reduceRight<Expression>(
    (rest, [label, test]) => formula`IF(${guide}=${label},${test},${rest})`,
    formula`"no level here"`,
  );
  return [
    wordsEntry({ key: "takesP", label: "Phosphorus tests it takes" }, ofGuide("P2O5")),
    wordsEntry({ key: "takesK", label: "Potassium tests it takes" }, ofGuide("K2O")),
    wordsEntry({ key: "zincTest", label: "Zinc test it takes" }, zincTest),
    wordsEntry({ key: "waits", label: "It still waits for" }, waits()),
  ];
}

function ofGuide(nutrient: NeedNutrient): Expression {
  return allGuides.reduceRight<Expression>(
    (rest, guide) =>
      formula`IF(${named("guide")}=${guide.label},${extractionsOf(guide, nutrient) || "the class on the report"},${rest})`,
    formula`""`,
  );
}

/** "a group", "years" or "nothing". */
function waits(): Expression {
  const guide = named("guide");
  const needsGroup = formula`AND(${isOneOf(guide, guidesWhere(splitsByGroup))},${named("soilGroup")}&""="")`;
  const build = formula`OR(${isOneOf(guide, guidesWhere(asksForYears))},AND(${named("approach")}="build",${isOneOf(guide, guidesWhere(leavesYears))}))`;
  const needsYears = formula`AND(${build},${named("buildYears")}&""="")`;
  return formula`IF(${needsGroup},"a group",IF(${needsYears},"years","nothing"))`;
}

function line(
  name: FarmName,
  label: string,
  says: string,
  start: string | null,
  allow: ReturnType<typeof oneOf>,
): Entry {
  return typedEntry({ key: name, label, says, name: farmNames[name] }, start, allow);
}
