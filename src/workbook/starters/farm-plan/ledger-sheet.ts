import { removal, rotationBalance, testDrift } from "../../../functions/nutrients";
import { call } from "../../formula/call";
import { formula, type Expression } from "../../formula/expression";
import { quiet, shown, whenNamed } from "../../formula/natives";
import { formats } from "../../model/cell";
import { computed, computedWords } from "../../model/columns";
import { tableBlock } from "../../model/table";
import type { SheetModel } from "../../model/workbook-model";
import { tabColors } from "../tab-colors";
import type { FarmContext } from "./farm-context";
import { fieldOfRow, fromFields, fromSoilTest, wordsFromFields } from "./field-rows";
import { phosphateLedger, potashLedger } from "./headers";

interface Ledger {
  readonly key: string;
  readonly name: string;
  readonly headers: typeof potashLedger | typeof phosphateLedger;
  readonly nutrient: "K2O" | "P2O5";
  readonly trade: "potash" | "phosphate";
  readonly putOn: "potashOn" | "phosphateOn";
  readonly soilTest: "potassium" | "phosphorus";
}

export const potash: Ledger = {
  key: "potash-ledger",
  name: "Potash ledger",
  headers: potashLedger,
  nutrient: "K2O",
  trade: "potash",
  putOn: "potashOn",
  soilTest: "potassium",
};

export const phosphate: Ledger = {
  key: "phosphate-ledger",
  name: "Phosphate ledger",
  headers: phosphateLedger,
  nutrient: "P2O5",
  trade: "phosphate",
  putOn: "phosphateOn",
  soilTest: "phosphorus",
};

/** What goes on for two crops, what they take, what is left between them and where the soil test is heading. */
export function ledgerSheet(ledger: Ledger, { rows }: FarmContext): SheetModel {
  const { headers, nutrient, trade } = ledger;
  const field = headers.own("field");
  const inRow = (value: Expression) => whenNamed(field, value);
  return {
    key: ledger.key,
    name: ledger.name,
    tabColor: tabColors.answer,
    title: ledger.name,
    answers: `Does what goes on cover what two crops take, what is left for the second, and where is the ${trade} test heading?`,
    blocks: [
      tableBlock(
        headers,
        { rows },
        {
          field: computedWords(fieldOfRow(headers), { width: 18 }),
          acres: computed(fromFields(field, "acres"), { width: 8, format: formats.one }),
          lastCrop: computedWords(wordsFromFields(field, "lastCrop"), { width: 10 }),
          nextCrop: computedWords(wordsFromFields(field, "nextCrop"), { width: 10 }),
          lastYield: computed(fromFields(field, "lastYield"), { width: 9, format: formats.one }),
          yieldGoal: computed(fromFields(field, "yieldGoal"), { width: 9, format: formats.one }),
          putOn: computed(fromFields(field, ledger.putOn), { width: 9, format: formats.whole }),
          lastTakes: computed(
            inRow(call(removal, { crop: headers.own("lastCrop"), yield: headers.own("lastYield"), nutrient })),
            {
              width: 10,
              format: formats.whole,
              note: `Pounds of ${nutrient} in the harvested grain: yield times the published removal.`,
            },
          ),
          left: computed(quiet(formula`${headers.own("putOn")}-${headers.own("lastTakes")}`), {
            width: 10,
            format: formats.signedWhole,
            note: `What the first crop leaves of the ${trade} put on for both. Below zero it has already drawn on the soil before the second crop is planted.`,
            rules: [{ kind: "compare", when: "below", value: 0, look: "attention" }],
          }),
          nextTakes: computed(
            inRow(call(removal, { crop: headers.own("nextCrop"), yield: headers.own("yieldGoal"), nutrient })),
            { width: 10, format: formats.whole },
          ),
          balance: computed(
            inRow(
              call(rotationBalance, {
                crops: headers.span("lastCrop", "nextCrop"),
                yields: headers.span("lastYield", "yieldGoal"),
                nutrient,
                applied: headers.own("putOn"),
              }),
            ),
            { width: 10, format: formats.signedWhole, note: "Put on less taken, over both crops." },
          ),
          perYear: computed(quiet(formula`${headers.own("balance")}/2`), {
            width: 9,
            format: formats.signedWhole,
            rules: [{ kind: "compare", when: "below", value: -2, look: "bad" }],
          }),
          test: computed(fromSoilTest(field, ledger.soilTest), { width: 8, format: formats.whole }),
          testLater: computed(
            inRow(
              call(testDrift, {
                soilTest: headers.own("test"),
                balance: formula`2*${headers.own("balance")}`,
                nutrient,
                ...(nutrient === "K2O" && { cec: fromSoilTest(field, "cec") }),
              }),
            ),
            {
              width: 9,
              format: formats.whole,
              note: "Expected after two more rounds like this one. Soils buffer differently: a direction, not a promise.",
            },
          ),
          words: computedWords(inRow(meaning(headers, trade)), { width: 34 }),
        },
      ),
    ],
    freeze: { table: headers.table, columns: 1 },
    print: { orientation: "landscape" },
  };
}

/** "▼ draws potash down by 31 lb/ac a year", or what the row waits for. */
function meaning(headers: Ledger["headers"], trade: string): Expression {
  const perYear = headers.own("perYear");
  const amount = shown(formula`ABS(${perYear})`, "0");
  return formula`IF(ISNUMBER(${perYear}),IF(${perYear}<-2,${`▼ draws ${trade} down by `}&${amount}&" lb/ac a year",IF(${perYear}>2,${`▲ builds ${trade} by `}&${amount}&" lb/ac a year",${`● holds its ${trade}`})),"● waits for crops, yields and rates")`;
}
