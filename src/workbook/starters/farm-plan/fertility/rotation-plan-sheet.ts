import { formula, type Expression, type Term } from "../../../formula/expression";
import { lookUpNumber, whenNamed, whenNumbers } from "../../../formula/natives";
import { formats } from "../../../model/cell";
import { computed, computedWords } from "../../../model/columns";
import { remarks } from "../../../model/paragraphs";
import { tableBlock } from "../../../model/table";
import type { SheetModel } from "../../../model/workbook-model";
import { tabColors } from "../../tab-colors";
import type { FarmContext } from "../farm-context";
import { farmSheets } from "../farm-sheets";
import { fieldOfRow, fromFields, wordsFromFields } from "../field-lookup";
import { byGuideLook, limeOf, plannedFor, plannedForCrop } from "./fertility-plan-sheet";
import {
  nitrogenByGuide,
  phosphateByGuide,
  potashByGuide,
  sulfurByGuide,
  zincByGuide,
  type Asked,
} from "./guide-needs";
import { rotationPlan, type PlannedNutrient } from "../headers";

const own = rotationPlan.own;
const field = own("field");
const asked: Asked = { field, crop: own("afterCrop"), goal: own("afterYield"), before: own("nextCrop") };

export function rotationPlanSheet({ rows, testUnit }: FarmContext): SheetModel {
  return {
    key: "rotation-plan",
    name: farmSheets["rotation-plan"].name,
    tabColor: tabColors.answer,
    title: "Rotation plan",
    answers:
      "What the crop after the next one asks for, and what the two take together until the soil is tested again.",
    blocks: [
      tableBlock(rotationPlan, { rows }, { ...fieldColumns(), ...afterColumns(testUnit), ...bothColumns() }),
      remarks(
        "The crop after the next one is the last crop coming round again, at the yield it made. Both are read from the same soil test, " +
          "as guides mean it between two tests: test again after the rotation and plan anew. Lime is counted once.",
        "Phosphate and potash for both crops may go on in one pass where the guide and the rules allow it; nitrogen never does.",
      ),
    ],
    freeze: { table: rotationPlan.table, columns: 1 },
    print: { orientation: "landscape" },
  };
}

/** What the plan puts on over the rotation, for other sheets; nothing while the row waits. */
export function overRotation(ofField: Term, column: "phosphate" | "potash"): Expression {
  return lookUpNumber(ofField, rotationPlan.all("field"), rotationPlan.all(column));
}

function fieldColumns() {
  return {
    field: computedWords(fieldOfRow(rotationPlan), { width: 18 }),
    nextCrop: computedWords(wordsFromFields(field, "nextCrop"), { width: 10 }),
    afterCrop: computedWords(wordsFromFields(field, "lastCrop"), {
      width: 10,
      note: "The last crop of the field, coming round again.",
    }),
    afterYield: computed(fromFields(field, "lastYield"), { width: 9, format: formats.one }),
  };
}

function afterColumns(testUnit: FarmContext["testUnit"]) {
  const ask = (need: Expression) => whenNamed(field, need);
  return {
    nitrogenNeed: computed(ask(nitrogenByGuide(asked)), byGuideLook),
    phosphateNeed: computed(ask(phosphateByGuide(asked, testUnit)), byGuideLook),
    potashNeed: computed(ask(potashByGuide(asked, testUnit)), byGuideLook),
    sulfurNeed: computed(ask(sulfurByGuide(asked)), byGuideLook),
    zincNeed: computed(ask(zincByGuide(asked)), { ...byGuideLook, format: formats.one }),
  };
}

function bothColumns() {
  const both = (column: PlannedNutrient, after: Expression) => {
    const next = plannedFor(field, column);
    return computed(whenNumbers([next, after], formula`${next}+${after}`), {
      width: 11,
      format: column === "zinc" ? formats.one : formats.whole,
      note: bothNote,
    });
  };
  return {
    lime: computed(limeOf(field), { width: 11, format: formats.one }),
    nitrogen: both("nitrogen", plannedForCrop(asked.crop, "nitrogen", own("nitrogenNeed"))),
    phosphate: both("phosphate", formula`${own("phosphateNeed")}`),
    potash: both("potash", formula`${own("potashNeed")}`),
    sulfur: both("sulfur", plannedForCrop(asked.crop, "sulfur", own("sulfurNeed"))),
    zinc: both("zinc", plannedForCrop(asked.crop, "zinc", own("zincNeed"))),
  };
}

const bothNote =
  "What is planned for the next crop and for the one after it. Blank while one of the two has no number.";
