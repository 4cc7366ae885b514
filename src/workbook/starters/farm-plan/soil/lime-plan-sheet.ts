import { limeNeed } from "../../../../functions/soil/lime-need";
import { limeRate } from "../../../../functions/soil/lime-material";
import { call } from "../../../formula/call";
import { formula, type Expression } from "../../../formula/expression";
import { orBlank, shown, sumOfAmounts, times, whenNamed, whenNumbers } from "../../../formula/natives";
import { place } from "../../../formula/reference";
import { formats } from "../../../model/cell";
import { computed, computedWords } from "../../../model/columns";
import { remarks } from "../../../model/paragraphs";
import { tableBlock } from "../../../model/table";
import type { SheetModel } from "../../../model/workbook-model";
import { tabColors } from "../../tab-colors";
import type { FarmContext } from "../farm-context";
import { farmSheets } from "../farm-sheets";
import { fieldOfRow, fromFields, fromSoilTest } from "../field-lookup";
import { limePlan } from "../headers";
import { named } from "../names";

const own = limePlan.own;
const field = own("field");

/** Above this, lime works better in two halves, one before and one after tillage. */
const splitAboveTonPerAc = 4;

export function limePlanSheet({ rows, lime }: FarmContext): SheetModel {
  return {
    key: "lime-plan",
    name: farmSheets["lime-plan"].name,
    tabColor: tabColors.answer,
    title: "Lime plan",
    answers: "Which fields call for lime, how much of the lime at hand, and what it costs.",
    blocks: [
      tableBlock(
        limePlan,
        { rows, wholeLabel: "Whole farm" },
        { ...testColumns(), ...rateColumns(lime), ...costColumns() },
      ),
      remarks(
        "Lime takes 6 to 12 months to work: spread it well ahead of the crop that needs it, and test again before liming again. " +
          "Where lime stays on the surface, about 2 ton/ac at a time is enough.",
      ),
    ],
    freeze: { table: limePlan.table, columns: 1 },
    print: { orientation: "landscape" },
  };
}

function testColumns() {
  return {
    field: computedWords(fieldOfRow(limePlan), { width: 18 }),
    acres: computed(fromFields(field, "acres"), {
      width: 9,
      format: formats.one,
      whole: sumOfAmounts(limePlan.all("acres")),
    }),
    ph: computed(fromSoilTest(field, "ph"), { width: 9, format: formats.ph }),
    bufferPh: computed(fromSoilTest(field, "bufferPh"), { width: 9, format: formats.ph }),
  };
}

function rateColumns({ countsMoisture }: FarmContext["lime"]) {
  const isClose = formula`${named("targetPh")}-${own("ph")}<${named("limeTrigger")}-0.001`;
  const rate = call(limeRate, {
    need: own("need"),
    quality: named("limeQuality"),
    ...(!countsMoisture && { moisture: place("lime.moisture") }),
  });
  return {
    need: computed(whenNamed(field, needInWords()), {
      width: 16,
      format: formats.two,
      note: "Tons of fully effective lime to reach the wanted pH; words where the lime table has no number for this test.",
    }),
    rate: computed(whenNumbers([own("ph"), own("need"), named("limeQuality")], formula`IF(${isClose},0,${rate})`), {
      width: 11,
      format: formats.one,
      note: "Tons of the lime at hand, by its effective share; 0 where the pH is close enough to wait for the next test.",
      rules: [{ kind: "formula", formula: formula`AND(ISNUMBER(${own("rate")}),${own("rate")}>0)`, look: "attention" }],
    }),
    tons: computed(times(own("rate"), own("acres")), {
      width: 10,
      format: formats.whole,
      whole: sumOfAmounts(limePlan.all("tons")),
    }),
  };
}

/** The need, or what it waits for. */
function needInWords(): Expression {
  const need = call(limeNeed, {
    pH: own("ph"),
    bufferPH: own("bufferPh"),
    targetPH: named("targetPh"),
    method: named("limeMethod"),
    depthIn: orBlank(named("limeDepth")),
  });
  const missing = formula`IF(COUNT(${own("ph")})=0,"waits for pH",IF(COUNT(${own("bufferPh")})=0,"waits for buffer","not in the table"))`;
  return formula`IFERROR(${need},${missing})`;
}

function costColumns() {
  return {
    perAcre: computed(whenNumbers([own("rate")], formula`${own("rate")}*${named("limePrice")}`), {
      width: 10,
      format: formats.cents,
    }),
    cost: computed(times(own("perAcre"), own("acres")), {
      width: 12,
      format: formats.dollars,
      whole: sumOfAmounts(limePlan.all("cost")),
    }),
    words: computedWords(whenNamed(field, whatToDo()), { width: 36 }),
  };
}

/** "Lime 4.4 ton/ac, in two halves", or why not. */
function whatToDo(): Expression {
  const rate = own("rate");
  const split = formula`IF(${rate}>${splitAboveTonPerAc},", in two halves","")`;
  const amount = formula`"Lime "&${shown(rate, "0.0")}&" ton/ac"&${split}`;
  const none = formula`IF(${own("ph")}<${named("targetPh")},"Close enough: test again","No lime")`;
  return formula`IF(ISNUMBER(${rate}),IF(${rate}>0,${amount},${none}),IF(COUNT(${own("ph")},${own("bufferPh")})=2,"Ask for another lime table","Waits for the soil test"))`;
}
