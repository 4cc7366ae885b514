import { harvestLimits } from "../../../../core/harvest/harvest-limits";
import { storageBreakEven, storageCost } from "../../../../functions/harvest/storage-cost";
import { call } from "../../../formula/call";
import { formula } from "../../../formula/expression";
import { orBlank, quiet, whenNamed, whenNumbers } from "../../../formula/natives";
import { formats } from "../../../model/cell";
import { computed, computedWords, pick, typedNumber, typedWords, within } from "../../../model/columns";
import { tableBlock, type TableBlock } from "../../../model/table";
import { storeExamples } from "../../../scenario/harvest-examples";
import { cropList, ofCrop } from "../crop-lookup";
import type { FarmContext } from "../farm-context";
import { named } from "../names";
import { storeTable } from "./harvest-headers";

const own = storeTable.own;
const rows = 4;
const perBushel = { width: 11, format: formats.cents };

/** Hold the grain or sell it now. */
export function storeBlock(context: FarmContext): TableBlock {
  return tableBlock(
    storeTable,
    { title: "Store or sell at harvest", rows },
    { ...typedColumns(context), ...costColumns(), ...answerColumns() },
  );
}

function typedColumns({ crops, withDemo }: FarmContext) {
  const examples = withDemo ? storeExamples.filter(({ crop }) => crops.some((each) => each.crop === crop)) : [];
  const cost = (what: string) => ({ ...perBushel, allow: within(harvestLimits.costPerBushel, what) });
  return {
    crop: typedWords(pick(examples, "crop"), {
      width: 26,
      allow: cropList,
    }),
    months: typedNumber(pick(examples, "months"), {
      width: 11,
      format: formats.one,
      allow: within(harvestLimits.months, "Months in store"),
    }),
    charge: typedNumber(pick(examples, "chargeUsdPerBuMonth"), {
      width: 11,
      format: "$0.000_)",
      allow: within(harvestLimits.costPerBushel, "Storage charge of a month, or the bin's own cost"),
    }),
    handling: typedNumber(
      pick(examples, "handlingUsdPerBu"),
      cost("Hauling and turning into and out of the bin, once"),
    ),
    drying: typedNumber(pick(examples, "extraDryingUsdPerBu"), cost("Drying beyond what selling now asks for")),
    shrink: typedNumber(pick(examples, "extraShrinkPct"), {
      width: 11,
      format: formats.one,
      allow: within(harvestLimits.extraShrink, "Shrink beyond what selling now takes"),
    }),
    expected: typedNumber(pick(examples, "expectedUsdPerBu"), {
      width: 12,
      format: formats.cents,
      allow: within(harvestLimits.price, "Price you can count on then; a forward bid is the surest"),
    }),
  };
}

function costColumns() {
  const terms = {
    price: own("price"),
    months: own("months"),
    rate: named("interestRate"),
    monthlyCharge: orBlank(own("charge")),
    handling: orBlank(own("handling")),
    extraDrying: orBlank(own("drying")),
    extraShrink: orBlank(own("shrink")),
  };
  const known = [own("price"), own("months")];
  return {
    price: computed(whenNamed(own("crop"), quiet(ofCrop(own("crop"), "price"))), perBushel),
    cost: computed(whenNumbers(known, call(storageCost, terms)), {
      width: 12,
      format: formats.cents,
      note: "Interest on the money in the bin at the rate of the plan, storage, handling, drying and shrink.",
    }),
    needed: computed(whenNumbers(known, call(storageBreakEven, terms)), { width: 12, format: formats.cents }),
  };
}

function answerColumns() {
  const left = formula`${own("expected")}-${own("needed")}`;
  return {
    left: computed(whenNumbers([own("expected"), own("needed")], left), {
      width: 15,
      format: formats.cents,
      rules: [{ kind: "compare", when: "below", value: 0, look: "bad" }],
    }),
    words: computedWords(whenNumbers([own("left")], formula`IF(${own("left")}>=0,"▲ pays","▼ sell now")`), {
      width: 12,
    }),
  };
}
