import { formula, type Expression, type Term } from "../../../formula/expression";
import { lookUpNumber, orBlank, quiet, sumOfAmounts, whenNamed, whenNumbers } from "../../../formula/natives";
import { formats } from "../../../model/cell";
import { computed, computedWords } from "../../../model/columns";
import { cautions, remarks } from "../../../model/paragraphs";
import { tableBlock } from "../../../model/table";
import type { SheetModel } from "../../../model/workbook-model";
import { tabColors } from "../../tab-colors";
import { ofCrop } from "../crop-lookup";
import type { FarmContext } from "../farm-context";
import { farmSheets } from "../farm-sheets";
import { fieldOfRow, fromFields, wordsFromFields } from "../field-lookup";
import { sulfurLabels } from "./guide-facts";
import {
  nitrogenByGuide,
  phosphateByGuide,
  potashByGuide,
  sulfurByGuide,
  whyInWords,
  zincByGuide,
  type Asked,
} from "./guide-needs";
import { fertilityPlan, limePlan, type PlannedNutrient } from "../headers";

const own = fertilityPlan.own;
const field = own("field");
const asked: Asked = {
  field,
  crop: own("nextCrop"),
  goal: own("yieldGoal"),
  before: wordsFromFields(field, "lastCrop"),
};

export function fertilityPlanSheet({ rows, testUnit }: FarmContext): SheetModel {
  return {
    key: "fertility-plan",
    name: farmSheets["fertility-plan"].name,
    tabColor: tabColors.answer,
    title: "Fertility plan",
    answers: "What the guide asks for the next crop of each field, and what you plan to put on.",
    blocks: [
      tableBlock(
        fertilityPlan,
        { rows, wholeLabel: "Whole farm" },
        { ...fieldColumns(), ...mainColumns(testUnit), ...otherColumns() },
      ),
      remarks(
        whyInWords,
        "Below the critical level the guide raises the test over some years as well as feeding the crop; " +
          "that build-up is advised, and it is yours to leave out where money is short or the lease is.",
      ),
      cautions(
        "Local rules on rates, setbacks, and spreading on frozen or wet ground come before any guide. Nitrogen credits of manure and cover crops are yours to take off.",
      ),
    ],
    freeze: { table: fertilityPlan.table, columns: 1 },
    print: { orientation: "landscape" },
  };
}

/** What the plan puts on a field, by nutrient. */
export function plannedFor(field: Term, nutrient: PlannedNutrient): Expression {
  return lookUpNumber(field, fertilityPlan.all("field"), fertilityPlan.all(nutrient));
}

/** Lime at hand that the lime plan gives a field. */
export function limeOf(field: Term): Expression {
  return lookUpNumber(field, limePlan.all("field"), limePlan.all("rate"));
}

/** The rate that the table of crops gives, where one is typed there; the guide's where it is a number. */
export function plannedForCrop(crop: Term, column: "nitrogen" | "sulfur" | "zinc", need: Term): Expression {
  return firstNumber(quiet(orBlank(ofCrop(crop, column))), need);
}

/** Looks of a column that shows the guide's number or why there is none. */
export const byGuideLook = { width: 14, format: formats.whole } as const;

function fieldColumns() {
  return {
    field: computedWords(fieldOfRow(fertilityPlan), { width: 18 }),
    acres: computed(fromFields(field, "acres"), {
      width: 9,
      format: formats.one,
      whole: sumOfAmounts(fertilityPlan.all("acres")),
    }),
    nextCrop: computedWords(wordsFromFields(field, "nextCrop"), { width: 10 }),
    yieldGoal: computed(fromFields(field, "yieldGoal"), { width: 9, format: formats.one }),
    lime: computed(limeOf(field), {
      width: 9,
      format: formats.one,
      note: "From the lime plan: tons of the lime at hand.",
    }),
  };
}

function mainColumns(testUnit: FarmContext["testUnit"]) {
  return {
    nitrogenNeed: computed(whenNamed(field, nitrogenByGuide(asked)), {
      ...byGuideLook,
      note: "By the guide's own formula for this crop, where it has one; credits of manure are not in it.",
    }),
    nitrogen: computed(plannedForCrop(asked.crop, "nitrogen", own("nitrogenNeed")), {
      ...plannedLook,
      note: ownByCrop("nitrogen"),
    }),
    phosphateNeed: computed(whenNamed(field, phosphateByGuide(asked, testUnit)), {
      ...byGuideLook,
      note: "A wheat or alfalfa crop in the rotation asks for a higher phosphorus test in IN-MI-OH.",
    }),
    phosphate: computed(firstNumber(fromFields(field, "ownPhosphate"), own("phosphateNeed")), {
      ...plannedLook,
      note: ownByField,
    }),
    potashNeed: computed(whenNamed(field, potashByGuide(asked, testUnit)), byGuideLook),
    potash: computed(firstNumber(fromFields(field, "ownPotash"), own("potashNeed")), {
      ...plannedLook,
      note: ownByField,
    }),
  };
}

function otherColumns() {
  return {
    sulfurNeed: computed(whenNamed(field, sulfurByGuide(asked)), {
      ...byGuideLook,
      note: `Sulfur rules are held here for ${sulfurLabels.join(", ")} alone.`,
    }),
    sulfur: computed(plannedForCrop(asked.crop, "sulfur", own("sulfurNeed")), {
      ...plannedLook,
      note: ownByCrop("sulfur"),
    }),
    zincNeed: computed(whenNamed(field, zincByGuide(asked)), {
      ...byGuideLook,
      format: formats.one,
      note: "Broadcast. The zinc test has to be by the extraction that the guide reads.",
    }),
    zinc: computed(plannedForCrop(asked.crop, "zinc", own("zincNeed")), {
      ...plannedLook,
      format: formats.one,
      note: ownByCrop("zinc"),
    }),
  };
}

const plannedLook = { width: 11, format: formats.whole } as const;
const ownByField = "Your own rate from the list of fields where there is one, the guide's otherwise.";
const ownByCrop = (nutrient: string) =>
  `Your ${nutrient} rate from the table of crops where there is one, the guide's otherwise.`;

/** The typed value where there is one, otherwise the need where that is a number. */
function firstNumber(typed: Expression, need: Term): Expression {
  return formula`IF(COUNT(${typed})=1,${typed},${whenNumbers([need], need)})`;
}
