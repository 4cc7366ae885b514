import { limits } from "../../../core/limits";
import { formula } from "../../formula/expression";
import { formats } from "../../model/cell";
import { oneOf, pick, typedNumber, typedWords, within } from "../../model/columns";
import { tableBlock } from "../../model/table";
import type { SheetModel } from "../../model/workbook-model";
import { tabColors } from "../tab-colors";
import type { FarmContext } from "./farm-context";
import { farmSheets } from "./farm-sheets";
import { cropTable, fieldTable } from "./headers";

const notes = {
  field:
    "One row a field or management zone. Every other sheet follows the names given here; give each a name of its own.",
  lastYield: "Bushels per acre at market moisture, from the scale rather than the monitor where both are at hand.",
  yieldGoal: "A yield the field reaches in a good ordinary year: the mean of the last five and a little more.",
  phosphateOn:
    "Pounds of P2O5 per acre put on for the last and the next crop together, manure included. " +
    "Tons of MAP × 1,040, or of DAP × 920, over the acres.",
  potashOn:
    "Pounds of K2O per acre put on for the last and the next crop together, manure included. " +
    "Tons of potash 0-0-60 × 1,200 over the acres.",
  own: "Blank: the guide's rate. A rate here goes before the guide's, and stands in where the guide prints none.",
  drainage: "Anything worth remembering: drainage, soil, who owns it, where the gate is.",
};

export function fieldsSheet(context: FarmContext): SheetModel {
  return {
    key: "fields",
    name: farmSheets.fields.name,
    tabColor: tabColors.input,
    title: "Fields",
    answers: "Which fields there are, what grew on them, what comes next, and what was put on for those two crops.",
    blocks: [
      tableBlock(
        fieldTable,
        { rows: context.rows, wholeLabel: "Whole farm" },
        { ...landColumns(context), ...cropColumns(context), ...fertilizerColumns(context), ...ownRateColumns() },
      ),
    ],
    freeze: { table: fieldTable.table, columns: 1 },
    print: { orientation: "landscape" },
  };
}

function landColumns({ fields }: FarmContext) {
  return {
    field: typedWords(pick(fields, "field"), { width: 18, note: notes.field }),
    acres: typedNumber(pick(fields, "acres"), {
      width: 10,
      format: formats.one,
      allow: within(limits.acres, "Acres farmed"),
      whole: formula`SUM(${fieldTable.all("acres")})`,
    }),
    drainage: typedWords(pick(fields, "drainage"), { width: 22, note: notes.drainage }),
  };
}

function cropColumns({ fields }: FarmContext) {
  const crop = oneOf({ table: cropTable.table, column: "crop" }, "One of the crops on the sheet of assumptions.");
  const bushels = { width: 12, format: formats.one };
  return {
    lastCrop: typedWords(pick(fields, "lastCrop"), { width: 11, allow: crop }),
    lastYield: typedNumber(pick(fields, "lastYieldBuPerAc"), {
      ...bushels,
      allow: within(limits.yieldAny, "Yield of the last crop in bushels"),
      note: notes.lastYield,
    }),
    nextCrop: typedWords(pick(fields, "nextCrop"), { width: 11, allow: crop }),
    yieldGoal: typedNumber(pick(fields, "yieldGoalBuPerAc"), {
      ...bushels,
      allow: within(limits.yieldAny, "Yield to plan for in bushels"),
      note: notes.yieldGoal,
    }),
  };
}

function fertilizerColumns({ fields }: FarmContext) {
  const pounds = { width: 12, format: formats.whole };
  return {
    phosphateOn: typedNumber(pick(fields, "appliedP2o5LbPerAc"), {
      ...pounds,
      allow: within(limits.ratePounds, "P2O5 put on for both crops together"),
      note: notes.phosphateOn,
    }),
    potashOn: typedNumber(pick(fields, "appliedK2oLbPerAc"), {
      ...pounds,
      allow: within(limits.ratePounds, "K2O put on for both crops together"),
      note: notes.potashOn,
    }),
  };
}

function ownRateColumns() {
  const pounds = { width: 12, format: formats.whole, note: notes.own };
  return {
    ownPhosphate: typedNumber([], { ...pounds, allow: within(limits.ratePounds, "P2O5 to spread for the next crop") }),
    ownPotash: typedNumber([], { ...pounds, allow: within(limits.ratePounds, "K2O to spread for the next crop") }),
  };
}
