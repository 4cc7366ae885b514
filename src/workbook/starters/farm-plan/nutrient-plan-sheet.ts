import { productRate } from "../../../functions/materials";
import { phosphateNeed, potashNeed } from "../../../functions/soil";
import { call } from "../../formula/call";
import { formula, type Expression, type Term } from "../../formula/expression";
import { orBlank, sumOfAmounts, whenNamed, whenNumbers } from "../../formula/natives";
import { formats } from "../../model/cell";
import { computed, computedWords } from "../../model/columns";
import { tableBlock } from "../../model/table";
import type { SheetModel } from "../../model/workbook-model";
import { tabColors } from "../tab-colors";
import type { FarmContext } from "./farm-context";
import { farmSheets } from "./farm-sheets";
import { fieldOfRow, fromFields, fromSoilTest, wordsFromFields } from "./field-rows";
import { nutrientPlan } from "./headers";
import { named } from "./names";

const own = nutrientPlan.own;
const field = own("field");
const poundsPerTon = 2000;

export function nutrientPlanSheet({ rows, testUnit }: FarmContext): SheetModel {
  return {
    key: "nutrient-plan",
    name: farmSheets["nutrient-plan"].name,
    tabColor: tabColors.answer,
    title: "Phosphate and potash plan",
    answers: "What the guide asks for the next crop of each field, as pounds of product, tons to order and dollars.",
    blocks: [
      tableBlock(
        nutrientPlan,
        { rows, wholeLabel: "Whole farm" },
        { ...fieldColumns(), ...phosphateColumns(testUnit), ...potashColumns(testUnit), ...costColumns() },
      ),
      {
        kind: "paragraphs",
        style: "says",
        paragraphs: [
          "Below the critical level the guide raises the test over four years as well as feeding the crop; " +
            "that build-up is advised, and it is yours to leave out where money is short or the lease is.",
          "Local rules on rates, setbacks, and spreading on frozen or wet ground come before any guide.",
        ],
      },
    ],
    freeze: { table: nutrientPlan.table, columns: 1 },
    print: { orientation: "landscape" },
  };
}

function fieldColumns() {
  return {
    field: computedWords(fieldOfRow(nutrientPlan), { width: 18 }),
    acres: computed(fromFields(field, "acres"), {
      width: 9,
      format: formats.one,
      whole: sumOfAmounts(nutrientPlan.all("acres")),
    }),
    lastCrop: computedWords(wordsFromFields(field, "lastCrop"), {
      width: 10,
      note: "A wheat or alfalfa crop in the rotation asks for a higher phosphorus test.",
    }),
    nextCrop: computedWords(wordsFromFields(field, "nextCrop"), { width: 10 }),
    yieldGoal: computed(fromFields(field, "yieldGoal"), { width: 10, format: formats.one }),
  };
}

function phosphateColumns(testUnit: FarmContext["testUnit"]) {
  const need = call(phosphateNeed, {
    crop: own("nextCrop"),
    yieldGoal: own("yieldGoal"),
    soilTest: own("phosphorus"),
    guide: named("guide"),
    method: named("phosphorusMethod"),
    rotationCrop: own("lastCrop"),
    ...guideDetails(testUnit),
  });
  return {
    phosphorus: computed(fromSoilTest(field, "phosphorus"), { width: 8, format: formats.whole }),
    phosphateNeed: computed(whenNamed(field, need), { width: 10, format: formats.whole }),
    phosphate: computed(toSpread("ownPhosphate", own("phosphateNeed")), spreadLook),
    phosphateRate: computed(rateOf(own("phosphate"), named("phosphateAnalysis")), {
      width: 13,
      format: formats.whole,
    }),
  };
}

function potashColumns(testUnit: FarmContext["testUnit"]) {
  const need = call(potashNeed, {
    crop: own("nextCrop"),
    yieldGoal: own("yieldGoal"),
    soilTest: own("potassium"),
    guide: named("guide"),
    cec: own("cec"),
    method: named("potassiumMethod"),
    ...guideDetails(testUnit),
  });
  return {
    potassium: computed(fromSoilTest(field, "potassium"), { width: 8, format: formats.whole }),
    cec: computed(fromSoilTest(field, "cec"), { width: 11, format: formats.one }),
    potashNeed: computed(whenNamed(field, need), { width: 10, format: formats.whole }),
    potash: computed(toSpread("ownPotash", own("potashNeed")), spreadLook),
    potashRate: computed(rateOf(own("potash"), named("potashAnalysis")), { width: 10, format: formats.whole }),
  };
}

/** What some guides ask for besides the crop and the test. */
function guideDetails(testUnit: FarmContext["testUnit"]) {
  return {
    approach: named("approach"),
    group: named("soilGroup"),
    years: orBlank(named("buildYears")),
    ...(testUnit !== null && { testUnit }),
  };
}

const spreadLook = {
  width: 10,
  format: formats.whole,
  note: "Your own rate from the list of fields where there is one, the guide's otherwise.",
};

function toSpread(column: "ownPhosphate" | "ownPotash", need: Term): Expression {
  const typed = fromFields(field, column);
  return formula`IF(COUNT(${typed})=1,${typed},${whenNumbers([need], need)})`;
}

function rateOf(need: Term, analysis: Term) {
  return whenNumbers([need, analysis], call(productRate, { need, analysis }));
}

function costColumns() {
  const products = formula`(${own("phosphateRate")}*${named("phosphateTonPrice")}+${own("potashRate")}*${named("potashTonPrice")})/${poundsPerTon}`;
  const spreading = formula`IF(${own("phosphateRate")}+${own("potashRate")}>0,${named("spreadingCost")},0)`;
  const tonsOf = (rate: Term) => whenNumbers([rate, own("acres")], formula`${rate}*${own("acres")}/${poundsPerTon}`);
  return {
    nitrogenInIt: computed(
      whenNumbers([own("phosphateRate")], formula`${own("phosphateRate")}*${named("phosphateNitrogen")}/100`),
      {
        width: 10,
        format: formats.whole,
        note: "Nitrogen in the phosphate product. Take it off the nitrogen you buy.",
      },
    ),
    perAcre: computed(whenNumbers([own("phosphateRate"), own("potashRate")], formula`${products}+${spreading}`), {
      width: 10,
      format: formats.cents,
      note: "Both products and one spreading pass.",
    }),
    phosphateTons: computed(tonsOf(own("phosphateRate")), {
      width: 11,
      format: formats.one,
      whole: sumOfAmounts(nutrientPlan.all("phosphateTons")),
    }),
    potashTons: computed(tonsOf(own("potashRate")), {
      width: 10,
      format: formats.one,
      whole: sumOfAmounts(nutrientPlan.all("potashTons")),
    }),
    cost: computed(whenNumbers([own("perAcre"), own("acres")], formula`${own("perAcre")}*${own("acres")}`), {
      width: 12,
      format: formats.dollars,
      whole: sumOfAmounts(nutrientPlan.all("cost")),
    }),
  };
}
