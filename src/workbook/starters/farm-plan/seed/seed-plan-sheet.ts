import { seedCost, seedUnits } from "../../../../functions/seed/buying";
import { seedRate, seedSpacing } from "../../../../functions/seed/planting";
import { call } from "../../../formula/call";
import type { Expression, Term } from "../../../formula/expression";
import { quiet, sumOfAmounts, times, whenNamed } from "../../../formula/natives";
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
import { seedPlan } from "../headers";
import { bestStandBlock, ofBestStand } from "./best-stand-block";

const own = seedPlan.own;
const field = own("field");
const crop = own("nextCrop");

export function seedPlanSheet(context: FarmContext): SheetModel {
  return {
    key: "seed-plan",
    name: farmSheets["seed-plan"].name,
    tabColor: tabColors.answer,
    title: "Seed plan",
    answers: "How many seeds to plant for the stand you want, what they cost, and the stand that would pay best.",
    blocks: [
      tableBlock(
        seedPlan,
        { rows: context.rows, wholeLabel: "Whole farm" },
        { ...fieldColumns(), ...rateColumns(), ...costColumns(), ...bestColumns() },
      ),
      bestStandBlock(context),
      remarks(
        "The stand that pays best earns most over its seed on the curve chosen; near it an acre earns almost the same. Check the curve against the current bulletin.",
      ),
      cautions(
        "Treated seed never goes into grain, feed or oil. Its label says what to wear and what to do with leftovers.",
      ),
    ],
    freeze: { table: seedPlan.table, columns: 1 },
    print: { orientation: "landscape" },
  };
}

/** Seeds to plant per acre for the stand, germination and survival that the table of crops gives. */
export function seedRateOf(cropName: Term): Expression {
  return call(seedRate, {
    targetStand: ofCrop(cropName, "targetStand"),
    germination: ofCrop(cropName, "germination"),
    fieldSurvival: ofCrop(cropName, "fieldSurvival"),
  });
}

/** Seed and treatment per acre at a rate. */
export function seedCostOf(cropName: Term, rate: Term): Expression {
  return call(seedCost, {
    rate,
    unitPrice: ofCrop(cropName, "unitPrice"),
    seedsPerUnit: ofCrop(cropName, "seedsPerUnit"),
    treatmentPerUnit: ofCrop(cropName, "treatment"),
  });
}

function fieldColumns() {
  return {
    field: computedWords(fieldOfRow(seedPlan), { width: 18 }),
    acres: computed(fromFields(field, "acres"), {
      width: 9,
      format: formats.one,
      whole: sumOfAmounts(seedPlan.all("acres")),
    }),
    nextCrop: computedWords(wordsFromFields(field, "nextCrop"), { width: 10 }),
    rowWidth: computed(quiet(ofCrop(crop, "rowWidth")), { width: 10, format: formats.one }),
    stand: computed(quiet(ofCrop(crop, "targetStand")), { width: 12, format: formats.whole }),
  };
}

function rateColumns() {
  const whenCropKnown = (value: Expression) => whenNamed(crop, value);
  return {
    rate: computed(whenCropKnown(seedRateOf(crop)), {
      width: 12,
      format: formats.whole,
      note: "Stand wanted over germination and field survival.",
    }),
    spacing: computed(whenCropKnown(call(seedSpacing, { rate: own("rate"), rowWidth: own("rowWidth") })), {
      width: 10,
      format: formats.two,
      note: "What to find when digging behind the planter.",
    }),
    units: computed(
      whenCropKnown(
        call(seedUnits, { rate: own("rate"), acres: own("acres"), seedsPerUnit: ofCrop(crop, "seedsPerUnit") }),
      ),
      { width: 9, format: formats.whole, note: "Whole units for this field; no reserve for replanting." },
    ),
  };
}

function costColumns() {
  return {
    perAcre: computed(whenNamed(crop, seedCostOf(crop, own("rate"))), { width: 10, format: formats.cents }),
    cost: computed(times(own("perAcre"), own("acres")), {
      width: 12,
      format: formats.dollars,
      whole: sumOfAmounts(seedPlan.all("cost")),
    }),
  };
}

function bestColumns() {
  const look = { width: 13, format: formats.whole };
  return {
    bestStand: computed(quiet(ofBestStand(crop, "best")), { ...look, note: "By the curve of the crop, below." }),
    bestRate: computed(quiet(ofBestStand(crop, "seeds")), look),
  };
}
