import { harvestLimits } from "../../../../core/harvest/harvest-limits";
import { lossByPlace } from "../../../../functions/harvest/losses";
import { call } from "../../../formula/call";
import { formula, type Expression } from "../../../formula/expression";
import { whenNamed, whenNumbers } from "../../../formula/natives";
import { formats } from "../../../model/cell";
import { computed, pick, typedNumber, typedWords, within } from "../../../model/columns";
import { tableBlock, type TableBlock } from "../../../model/table";
import { lossExamples } from "../../../scenario/harvest-examples";
import { cropList, ofCrop } from "../crop-lookup";
import type { FarmContext } from "../farm-context";
import { fieldList } from "../field-lookup";
import { lossTable } from "./harvest-headers";

const own = lossTable.own;
const rows = 4;

/** Where a harvest loses grain, field by field. */
export function lossBlock({ fields }: FarmContext): TableBlock {
  const examples = lossExamples.filter(({ field }) => fields.some((each) => each.field === field));
  const seeds = { width: 11, format: formats.one };
  return tableBlock(
    lossTable,
    { title: "Losses: seeds counted on the ground", rows },
    {
      field: typedWords(pick(examples, "field"), {
        width: 26,
        allow: fieldList,
      }),
      crop: typedWords(pick(examples, "crop"), {
        width: 11,
        allow: cropList,
      }),
      standing: typedNumber(pick(examples, "standing"), {
        ...seeds,
        allow: within(harvestLimits.seedsOnGround, "Seeds on a square foot under the standing crop"),
      }),
      header: typedNumber(pick(examples, "header"), {
        ...seeds,
        allow: within(harvestLimits.seedsOnGround, "Seeds on a square foot behind the cutterbar, before the residue"),
        note: "Stop, back up a machine's length, shut off the engine, and count where no residue fell yet.",
      }),
      behind: typedNumber(pick(examples, "behind"), {
        ...seeds,
        allow: within(harvestLimits.seedsOnGround, "Seeds on a square foot behind the machine, over its whole width"),
      }),
      ...lostColumns(),
    },
  );
}

function lostColumns() {
  const look = { width: 11, format: formats.two };
  return {
    before: computed(lost(2), look),
    atHeader: computed(lost(3), look),
    inMachine: computed(lost(4), look),
    all: computed(lost(5), look),
    worth: computed(whenNumbers([own("all")], formula`${own("all")}*${ofCrop(own("crop"), "price")}`), {
      width: 11,
      format: formats.cents,
    }),
  };
}

/** A line of the table of losses: 2 to 5 are before harvest, header, machine and total. */
function lost(line: number): Expression {
  const { standing, header, behind } = { standing: own("standing"), header: own("header"), behind: own("behind") };
  const table = call(lossByPlace, { crop: own("crop"), standing, header, behind });
  return whenNamed(own("crop"), whenNumbers([standing, header, behind], formula`INDEX(${table},${line},2)`));
}
