import { limits } from "../../../core/limits";
import { limeNeed } from "../../../functions/soil/lime-need";
import { phosphateNeed, potashNeed } from "../../../functions/soil/nutrient-need";
import { call } from "../../formula/call";
import { formula, type Expression, type Term } from "../../formula/expression";
import { orBlank, quiet, whenNamed } from "../../formula/natives";
import { nameOf } from "../../formula/reference";
import { formats, type Allow } from "../../model/cell";
import { computed, computedWords, pick, typedNumber, typedWords, within } from "../../model/columns";
import { cautions, remarks } from "../../model/paragraphs";
import { tableBlock } from "../../model/table";
import type { SheetModel } from "../../model/workbook-model";
import { sampledColumn } from "../sampled-column";
import { tabColors } from "../tab-colors";
import { clientTests } from "./client-headers";
import { clientFieldList, cropOfClientField, ofClientField } from "./client-lookup";
import { clientSoilSheetFacts } from "./client-sheets";
import { soilNames, type ClientSoil } from "./client-soil";

const own = clientTests.own;
const named = (key: keyof typeof soilNames) => nameOf(soilNames[key]);

/** What the laboratory found in a client's fields, and what the guide asks for with it. */
export function clientSoilSheet(soil: ClientSoil, rows: number): SheetModel {
  return {
    key: "soil",
    name: clientSoilSheetFacts.name,
    tabColor: tabColors.input,
    title: "Soil tests",
    answers: "What the laboratory found in each field, and what the guide asks for with it.",
    blocks: [
      tableBlock(clientTests, { rows }, { ...fieldColumns(soil), ...testColumns(soil), ...needColumns(soil) }),
      remarks(
        `Lime is fully effective lime to pH ${soil.lime.targetPh} by the table of ${soil.lime.method}: divide by the effective share of the lime at hand. ` +
          "Words in place of a number say what is missing, or that the guide prints no rate for that crop or test. Check against the current bulletin.",
      ),
      cautions("State and local rules on nutrient rates, setbacks and records come before any guide."),
    ],
    freeze: { table: clientTests.table, columns: 1 },
    print: { orientation: "landscape" },
  };
}

function fieldColumns({ tests }: ClientSoil) {
  return {
    field: typedWords(pick(tests, "field"), { width: 18, allow: clientFieldList }),
    crop: computedWords(cropOfClientField(own("field")), { width: 11 }),
    goal: computed(ofClientField(own("field"), "yield"), { width: 9, format: formats.one }),
  };
}

function testColumns({ tests }: ClientSoil) {
  const ph = within(limits.soilPh, "Soil pH in water");
  const test = (key: "soilPh" | "bufferPh" | "cecMeq" | "organicMatterPct", format: string, allow: Allow) =>
    typedNumber(pick(tests, key), { width: 10, format, allow });
  return {
    sampled: sampledColumn(pick(tests, "sampledOn")),
    ph: test("soilPh", formats.ph, ph),
    bufferPh: test("bufferPh", formats.ph, within(limits.bufferPh, "Buffer pH")),
    phosphorus: typedNumber(pick(tests, "phosphorusPpm"), {
      width: 9,
      format: formats.whole,
      allow: within(limits.soilTestP, "Soil-test phosphorus"),
    }),
    potassium: typedNumber(pick(tests, "potassiumPpm"), {
      width: 9,
      format: formats.whole,
      allow: within(limits.soilTestK, "Soil-test potassium"),
    }),
    cec: test("cecMeq", formats.one, within(limits.cec, "Cation exchange capacity")),
    organicMatter: test("organicMatterPct", formats.one, within(limits.share, "Organic matter")),
  };
}

function needColumns({ lime: { method, targetPh, depthIn } }: ClientSoil) {
  const crop = own("crop");
  const yieldGoal = orBlank(own("goal"));
  const guide = named("guide");
  const lime = call(limeNeed, {
    pH: orBlank(own("ph")),
    bufferPH: orBlank(own("bufferPh")),
    targetPH: targetPh,
    method,
    ...(depthIn !== null && { depthIn }),
  });
  const phosphate = call(phosphateNeed, {
    crop,
    yieldGoal,
    soilTest: orBlank(own("phosphorus")),
    guide,
    method: named("phosphorusMethod"),
  });
  const potash = call(potashNeed, {
    crop,
    yieldGoal,
    soilTest: orBlank(own("potassium")),
    guide,
    cec: orBlank(own("cec")),
    method: named("potassiumMethod"),
  });
  const pounds = { width: 13, format: formats.whole };
  // At the wanted pH or above it no lime is called for, with or without a buffer reading.
  const enough = formula`AND(COUNT(${own("ph")})=1,${own("ph")}>=${targetPh})`;
  return {
    lime: computed(whenNamed(own("field"), formula`IF(${enough},0,${orMissing(lime, [own("ph"), own("bufferPh")])})`), {
      width: 13,
      format: formats.one,
    }),
    phosphate: computed(whenNamed(own("field"), orMissing(phosphate, [own("phosphorus")], own("goal"))), pounds),
    potash: computed(whenNamed(own("field"), orMissing(potash, [own("potassium")], own("goal"))), pounds),
  };
}

/** The need; otherwise what it waits for. */
function orMissing(need: Expression, tests: readonly Term[], goal?: Term): Expression {
  const found = tests.reduce<Expression>((all, test) => formula`${all}+COUNT(${test})`, formula`0`);
  const missing = formula`IF(${found}<${tests.length},"waits for test","no rate here")`;
  const words = goal === undefined ? missing : formula`IF(COUNT(${goal})=0,"waits for yield",${missing})`;
  return quiet(formula`IFERROR(${need},${words})`);
}
