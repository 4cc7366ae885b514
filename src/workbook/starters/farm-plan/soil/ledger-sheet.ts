import { removal } from "../../../../functions/nutrients/removal";
import { rotationBalance } from "../../../../functions/nutrients/rotation-balance";
import { testDrift } from "../../../../functions/nutrients/test-drift";
import { call } from "../../../formula/call";
import { formula, type Expression, type Term } from "../../../formula/expression";
import { less, shown, sumOfAmounts, whenNamed, whenNumbers } from "../../../formula/natives";
import type { Reference } from "../../../formula/reference";
import type { ChartsBlock } from "../../../model/block";
import { formats } from "../../../model/cell";
import { computed, computedWords } from "../../../model/columns";
import { remarks } from "../../../model/paragraphs";
import { tableBlock } from "../../../model/table";
import type { SheetModel } from "../../../model/workbook-model";
import { chartColors } from "../../chart-colors";
import { tabColors } from "../../tab-colors";
import type { FarmContext } from "../farm-context";
import { farmSheets } from "../farm-sheets";
import { fieldOfRow, fromFields, fromSoilTest, wordsFromFields } from "../field-lookup";
import { phosphateLedger, potashLedger } from "../headers";
import { overRotation } from "../fertility/rotation-plan-sheet";

interface Ledger {
  readonly key: "potash-ledger" | "phosphate-ledger";
  readonly headers: typeof potashLedger | typeof phosphateLedger;
  readonly nutrient: "K2O" | "P2O5";
  readonly trade: "potash" | "phosphate";
  readonly putOn: "potashOn" | "phosphateOn";
  readonly soilTest: "potassium" | "phosphorus";
}

export const potash: Ledger = {
  key: "potash-ledger",
  headers: potashLedger,
  nutrient: "K2O",
  trade: "potash",
  putOn: "potashOn",
  soilTest: "potassium",
};

export const phosphate: Ledger = {
  key: "phosphate-ledger",
  headers: phosphateLedger,
  nutrient: "P2O5",
  trade: "phosphate",
  putOn: "phosphateOn",
  soilTest: "phosphorus",
};

/** Within this of even, lb/ac a year, a field holds what it has. */
export const evenWithinLbPerAc = 2;

/** What goes on for two crops, what they take, what is left between them and where the soil test is heading. */
export function ledgerSheet(ledger: Ledger, { rows }: FarmContext): SheetModel {
  const { headers, trade } = ledger;
  return {
    key: ledger.key,
    name: farmSheets[ledger.key].name,
    tabColor: tabColors.answer,
    title: farmSheets[ledger.key].name,
    answers: `Does what goes on cover what two crops take, and what does the ${trade} test do with and without the plan?`,
    blocks: [
      tableBlock(
        headers,
        { rows, wholeLabel: "Whole farm" },
        {
          ...fieldColumns(ledger),
          ...firstCropColumns(ledger),
          ...bothCropColumns(ledger),
          ...testColumns(ledger),
        },
      ),
      chartBlock(ledger),
      remarks(reading(trade)),
    ],
    freeze: { table: headers.table, columns: 1 },
    print: { orientation: "landscape" },
  };
}

function reading(trade: string): string {
  return (
    `Removal is for the grain alone: straw, stover or silage taken off carries more ${trade} away. ` +
    "On a field that tests high, drawing down is a choice and costs nothing for some years; on one that tests low it costs yield."
  );
}

function fieldColumns({ headers }: Ledger) {
  const field = headers.own("field");
  const bushels = { width: 9, format: formats.one };
  return {
    field: computedWords(fieldOfRow(headers), { width: 18 }),
    acres: computed(fromFields(field, "acres"), {
      width: 9,
      format: formats.one,
      whole: sumOfAmounts(headers.all("acres")),
    }),
    lastCrop: computedWords(wordsFromFields(field, "lastCrop"), { width: 10 }),
    nextCrop: computedWords(wordsFromFields(field, "nextCrop"), { width: 10 }),
    lastYield: computed(fromFields(field, "lastYield"), bushels),
    yieldGoal: computed(fromFields(field, "yieldGoal"), bushels),
  };
}

function firstCropColumns({ headers, nutrient, trade, putOn }: Ledger) {
  const { own } = headers;
  const takes = call(removal, { crop: own("lastCrop"), yield: own("lastYield"), nutrient });
  return {
    putOn: computed(fromFields(own("field"), putOn), { width: 9, format: formats.whole }),
    lastTakes: computed(whenNamed(own("field"), takes), {
      width: 10,
      format: formats.whole,
      note: `Pounds of ${nutrient} in the harvested grain: yield times the published removal.`,
    }),
    left: computed(less(own("putOn"), own("lastTakes")), {
      width: 10,
      format: formats.signedWhole,
      note:
        `What the first crop leaves of the ${trade} put on for both. ` +
        "Below zero it has already drawn on the soil before the second crop is planted.",
      rules: [{ kind: "compare", when: "below", value: 0, look: "attention" }],
    }),
  };
}

function bothCropColumns({ headers, nutrient }: Ledger) {
  const { own, span } = headers;
  const takes = call(removal, { crop: own("nextCrop"), yield: own("yieldGoal"), nutrient });
  const balance = call(rotationBalance, {
    crops: span("lastCrop", "nextCrop"),
    yields: span("lastYield", "yieldGoal"),
    nutrient,
    applied: own("putOn"),
  });
  return {
    nextTakes: computed(whenNamed(own("field"), takes), { width: 10, format: formats.whole }),
    balance: computed(whenNamed(own("field"), balance), {
      width: 10,
      format: formats.signedOne,
      note: "Put on less taken, over both crops.",
    }),
    perYear: computed(whenNumbers([own("balance")], formula`${own("balance")}/2`), {
      width: 9,
      format: formats.signedOne,
      rules: [{ kind: "compare", when: "below", value: -evenWithinLbPerAc, look: "attention" }],
    }),
  };
}

/** The soil test as it is, and after two more crops: as before, by the plan, and with nothing put on. */
function testColumns(ledger: Ledger) {
  const { headers, trade, soilTest } = ledger;
  const { own } = headers;
  const field = own("field");
  const lessTaken = formula`-${own("lastTakes")}-${own("nextTakes")}`;
  const taken = [own("lastTakes"), own("nextTakes")];
  const look = { width: 9, format: formats.whole };
  return {
    test: computed(fromSoilTest(field, soilTest), { width: 8, format: formats.whole }),
    asBefore: computed(testAfter(ledger, [own("balance")], own("balance")), {
      ...look,
      note: "Expected after one more round like this one. Soils buffer differently: a direction, not a promise.",
    }),
    planPutsOn: computed(whenNamed(field, overRotation(field, trade)), {
      ...look,
      note: "For the next crop and the one after it, from the rotation plan.",
    }),
    withPlan: computed(testAfter(ledger, [...taken, own("planPutsOn")], formula`${own("planPutsOn")}${lessTaken}`), {
      ...look,
      note: "Expected after the next crop and the one after it, with what the plan puts on.",
    }),
    withNothing: computed(testAfter(ledger, taken, lessTaken), {
      ...look,
      note: "The same with nothing put on for both crops.",
    }),
    words: computedWords(whenNamed(field, meaning(own("perYear"), trade)), { width: 38 }),
  };
}

/** The test after a balance, once everything in it is a number. */
function testAfter({ headers, nutrient }: Ledger, parts: readonly Term[], balance: Term): Expression {
  const { own } = headers;
  const after = call(testDrift, {
    soilTest: own("test"),
    balance,
    nutrient,
    ...(nutrient === "K2O" && { cec: fromSoilTest(own("field"), "cec") }),
  });
  return whenNumbers([own("test"), ...parts], after);
}

function chartBlock({ headers, trade }: Ledger): ChartsBlock {
  return {
    kind: "charts",
    rows: 17,
    charts: [
      {
        kind: "column",
        title: `${trade === "potash" ? "Potassium" : "Phosphorus"} test over the next rotation, ppm`,
        alt: "Three columns for each field: the soil test now, after the next two crops by the plan, and after them with nothing put on.",
        categories: headers.all("field"),
        series: [
          { name: "Now", values: headers.all("test"), color: chartColors.running },
          { name: "By the plan", values: headers.all("withPlan"), color: chartColors.income },
          { name: "Nothing put on", values: headers.all("withNothing"), color: chartColors.all },
        ],
        yTitle: "ppm",
        yFormat: "0",
        columns: { first: 0, last: 15 },
      },
    ],
  };
}

/** "▼ draws potash down by 31 lb/ac a year", or what the row waits for. */
export function meaning(perYear: Reference, trade: Ledger["trade"]): Expression {
  const amount = formula`${shown(formula`ABS(${perYear})`, "0")}&" lb/ac a year"`;
  const down = formula`${`▼ draws ${trade} down by `}&${amount}`;
  const up = formula`${`▲ builds ${trade} by `}&${amount}`;
  const moving = formula`IF(${perYear}<-${evenWithinLbPerAc},${down},IF(${perYear}>${evenWithinLbPerAc},${up},${`● holds its ${trade}`}))`;
  return formula`IF(ISNUMBER(${perYear}),${moving},"● waits for crops, yields and rates")`;
}
