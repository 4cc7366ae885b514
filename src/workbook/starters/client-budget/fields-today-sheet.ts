import { breakEvenPrice, breakEvenYield } from "../../../functions/money/break-even";
import { limits } from "../../../core/limits";
import { call } from "../../formula/call";
import { formula, type Term } from "../../formula/expression";
import { less, orBlank, times, whenNamed, whenNumbers } from "../../formula/natives";
import { formats } from "../../model/cell";
import { computed, oneOf, pick, typedNumber, typedWords, within } from "../../model/columns";
import { tableBlock } from "../../model/table";
import type { SheetModel } from "../../model/workbook-model";
import { tabColors } from "../tab-colors";
import type { ClientContext } from "./client-context";
import { clientCrops, clientFields } from "./client-headers";
import { ofClientCrop } from "./client-lookup";
import { clientSheets } from "./client-sheets";

const own = clientFields.own;
const money = { width: 12, format: formats.cents };

export function fieldsTodaySheet(context: ClientContext): SheetModel {
  return {
    key: "today",
    name: clientSheets.today.name,
    tabColor: tabColors.input,
    title: "Fields today",
    answers: "What an acre of each field brings and costs as it is farmed now.",
    blocks: [
      tableBlock(
        clientFields,
        { rows: context.rows, wholeLabel: "All fields" },
        { ...typedColumns(context), ...profitColumns(), ...breakEvenColumns() },
      ),
    ],
    freeze: { table: clientFields.table, columns: 1 },
    print: { orientation: "landscape" },
  };
}

function typedColumns({ fields }: ClientContext) {
  const crop = oneOf({ table: clientCrops.table, column: "crop" }, "One of the client's crops.");
  return {
    field: typedWords(pick(fields, "field"), { width: 18, note: "Each field once, by a name of its own." }),
    acres: typedNumber(pick(fields, "acres"), {
      width: 9,
      format: formats.one,
      allow: within(limits.acres, "Acres farmed"),
      whole: formula`SUM(${clientFields.all("acres")})`,
    }),
    crop: typedWords(pick(fields, "crop"), { width: 11, allow: crop }),
    yield: typedNumber(pick(fields, "yieldBuPerAc"), {
      width: 10,
      format: formats.one,
      allow: within(limits.yieldAny, "Yield expected without any change, in bushels"),
    }),
    cost: typedNumber(pick(fields, "costUsdPerAc"), {
      ...money,
      allow: within(limits.price, "All costs of an acre but hauling and drying"),
      note: "Land and machinery included, unless the talk is about running costs alone; the same for every field.",
    }),
    other: typedNumber([], { ...money, allow: within(limits.price, "Payments, straw, indemnity, an acre") }),
  };
}

function profitColumns() {
  const { yield: bushels, cost } = { yield: own("yield"), cost: own("cost") };
  const price = ofClientCrop(own("crop"), "price");
  const perBushel = ofClientCrop(own("crop"), "costPerBushel");
  const known = (value: Term) => whenNamed(own("crop"), value);
  return {
    income: computed(known(whenNumbers([bushels], formula`${bushels}*${price}+N(${own("other")})`)), money),
    allCosts: computed(known(whenNumbers([bushels, cost], formula`${cost}+${bushels}*${perBushel}`)), money),
    profit: computed(less(own("income"), own("allCosts")), {
      ...money,
      rules: [{ kind: "compare", when: "below", value: 0, look: "bad" }],
    }),
    total: computed(times(own("profit"), own("acres")), {
      width: 12,
      format: formats.dollars,
      whole: formula`SUM(${clientFields.all("total")})`,
    }),
  };
}

function breakEvenColumns() {
  const shared = {
    cost: orBlank(own("cost")),
    otherIncome: own("other"),
    costPerBushel: ofClientCrop(own("crop"), "costPerBushel"),
  };
  return {
    breakEvenPrice: computed(
      whenNamed(own("crop"), call(breakEvenPrice, { ...shared, yield: orBlank(own("yield")) })),
      money,
    ),
    breakEvenYield: computed(
      whenNamed(own("crop"), call(breakEvenYield, { ...shared, price: ofClientCrop(own("crop"), "price") })),
      { width: 12, format: formats.one },
    ),
  };
}
