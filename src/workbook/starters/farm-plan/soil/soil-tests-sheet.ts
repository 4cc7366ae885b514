import { testRating } from "../../../../functions/soil/test-rating";
import { textureWords } from "../../../../functions/words";
import { limits } from "../../../../core/limits";
import { nitrogenLimits } from "../../../../core/nitrogen/nitrogen-limits";
import { soilLimits } from "../../../../core/soil/soil-limits";
import { call } from "../../../formula/call";
import { formula, type Expression } from "../../../formula/expression";
import { orBlank, whenNamed } from "../../../formula/natives";
import { formats } from "../../../model/cell";
import { computedWords, oneOf, pick, typedNumber, typedWords, within } from "../../../model/columns";
import { remarks } from "../../../model/paragraphs";
import type { ModelRule } from "../../../model/rule";
import { tableBlock } from "../../../model/table";
import type { SheetModel } from "../../../model/workbook-model";
import { labelsOf } from "../../word-lists";
import { sampledColumn } from "../../sampled-column";
import { tabColors } from "../../tab-colors";
import type { FarmContext } from "../farm-context";
import { farmSheets } from "../farm-sheets";
import { fieldList, wordsFromFields } from "../field-lookup";
import { nitrateGuides, sulfateGuides } from "../fertility/guide-facts";
import { soilTable } from "../headers";
import { named } from "../names";

const own = soilTable.own;

const notes = {
  field: "The same name as in the list of fields. The order does not matter.",
  bufferPh:
    "As the laboratory prints it. A lime test index of 68 is a buffer pH of 6.8. " +
    "Leave blank where the laboratory left it out.",
  phosphorus: "Parts per million of P. Pounds per acre on a report: divide by 2.",
  potassium: "Parts per million of K. Pounds per acre on a report: divide by 2.",
  texture: "Sandy, medium or fine, of the plow layer. Some guides turn sulfur, nitrogen and starter limits on it.",
  sulfur: "Sulfate-sulfur of the plow layer, parts per million. Few guides hold a rate for it.",
  zinc: "By the extraction named as zinc method on the sheet of assumptions.",
  nitrate: `Nitrate-nitrogen in the top 2 feet, pounds per acre. Read by the guides of ${nitrateGuides.join(", ")} alone.`,
  sulfate: `Sulfate-sulfur in the top 2 feet, pounds per acre. Read by the guides of ${sulfateGuides.join(", ")} alone.`,
  rating: "The guide's word for this test and the next crop.",
};

export function soilTestsSheet(context: FarmContext): SheetModel {
  return {
    key: "soil-tests",
    name: farmSheets["soil-tests"].name,
    tabColor: tabColors.input,
    title: "Soil tests",
    answers: "What the laboratory found in each field, and the guide's word for it.",
    blocks: [
      tableBlock(
        soilTable,
        { rows: context.rows },
        {
          ...acidityColumns(context),
          ...nutrientColumns(context),
          ...soilColumns(context),
          ...otherTestColumns(context),
          ...profileColumns(context),
          ...ratingColumns(context.testUnit),
        },
      ),
      remarks(
        "Sample to the depth of the guide (8 inches for IN-MI-OH), at the same time of year, and keep the old reports: " +
          "three tests in a row tell more than one.",
      ),
    ],
    freeze: { table: soilTable.table, columns: 1 },
    print: { orientation: "landscape" },
  };
}

function acidityColumns({ fields }: FarmContext) {
  return {
    field: typedWords(pick(fields, "field"), { width: 18, allow: fieldList, note: notes.field }),
    sampled: sampledColumn(pick(fields, "sampledOn")),
    ph: typedNumber(pick(fields, "soilPh"), {
      width: 9,
      format: formats.ph,
      allow: within(limits.soilPh, "Soil pH in water"),
    }),
    bufferPh: typedNumber(pick(fields, "bufferPh"), {
      width: 9,
      format: formats.ph,
      allow: within(limits.bufferPh, "Buffer pH"),
      note: notes.bufferPh,
    }),
  };
}

function nutrientColumns({ fields }: FarmContext) {
  const ppm = { width: 9, format: formats.whole };
  return {
    phosphorus: typedNumber(pick(fields, "phosphorusPpm"), {
      ...ppm,
      allow: within(limits.soilTestP, "Soil-test phosphorus"),
      note: notes.phosphorus,
    }),
    potassium: typedNumber(pick(fields, "potassiumPpm"), {
      ...ppm,
      allow: within(limits.soilTestK, "Soil-test potassium"),
      note: notes.potassium,
    }),
  };
}

function soilColumns({ fields }: FarmContext) {
  return {
    cec: typedNumber(pick(fields, "cecMeq"), {
      width: 13,
      format: formats.one,
      allow: within(limits.cec, "Cation exchange capacity"),
    }),
    organicMatter: typedNumber(pick(fields, "organicMatterPct"), {
      width: 11,
      format: formats.one,
      allow: within(limits.share, "Organic matter"),
    }),
  };
}

function otherTestColumns({ fields }: FarmContext) {
  return {
    texture: typedWords(pick(fields, "texture"), {
      width: 12,
      allow: oneOf(labelsOf(textureWords), "sandy, medium or fine."),
      note: notes.texture,
    }),
    sulfur: typedNumber(pick(fields, "sulfurPpm"), {
      width: 8,
      format: formats.whole,
      allow: within({ ...soilLimits.sulfateTest, unit: "ppm" }, "Sulfate-sulfur of the plow layer"),
      note: notes.sulfur,
    }),
    zinc: typedNumber(pick(fields, "zincPpm"), {
      width: 8,
      format: formats.one,
      allow: within({ ...soilLimits.microTest, unit: "ppm" }, "Soil-test zinc"),
      note: notes.zinc,
    }),
  };
}

/** Deep samples; the invented farm has them only where its guide reads them. */
function profileColumns({ fields, readsProfile }: FarmContext) {
  const sampled = readsProfile ? fields : [];
  const pounds = { width: 11, format: formats.whole };
  return {
    nitrate: typedNumber(pick(sampled, "nitrateLbPerAc"), {
      ...pounds,
      allow: within({ ...nitrogenLimits.nitrate, unit: "lb/ac" }, "Nitrate-nitrogen, 0 to 24 in"),
      note: notes.nitrate,
    }),
    sulfate: typedNumber(pick(sampled, "sulfateLbPerAc"), {
      ...pounds,
      allow: within({ ...soilLimits.sulfateTest, unit: "lb/ac" }, "Sulfate-sulfur, 0 to 24 in"),
      note: notes.sulfate,
    }),
  };
}

function ratingColumns(testUnit: FarmContext["testUnit"]) {
  return {
    phosphorusRating: ratingColumn("P2O5", "phosphorus", testUnit),
    potassiumRating: ratingColumn("K2O", "potassium", testUnit),
  };
}

function ratingColumn(nutrient: "P2O5" | "K2O", test: "phosphorus" | "potassium", testUnit: FarmContext["testUnit"]) {
  const rating = call(testRating, {
    nutrient,
    soilTest: orBlank(own(test)),
    guide: named("guide"),
    crop: wordsFromFields(own("field"), "nextCrop"),
    cec: orBlank(own("cec")),
    method: named(nutrient === "P2O5" ? "phosphorusMethod" : "potassiumMethod"),
    group: named("soilGroup"),
    ...(testUnit !== null && { testUnit }),
  });
  const missing = formula`IF(COUNT(${own(test)})=0,"waits for test","no class held")`;
  return computedWords(whenNamed(own("field"), formula`IFERROR(${rating},${missing})`), {
    width: 14,
    note: notes.rating,
    rules: lowRatings(test),
  });
}

/** Words that guides use for a test that holds the crop back. */
function lowRatings(test: "phosphorus" | "potassium"): ModelRule[] {
  const cell = own(test === "phosphorus" ? "phosphorusRating" : "potassiumRating");
  const isLow: Expression = formula`OR(${cell}="deficient",ISNUMBER(SEARCH("low",${cell})))`;
  return [{ kind: "formula", formula: isLow, look: "attention" }];
}
