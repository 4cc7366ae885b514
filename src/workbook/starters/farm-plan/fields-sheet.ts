import { limits } from "../../../core/limits";
import { formula } from "../../formula/expression";
import { oneOf, typedNumber, typedWords, within } from "../../model/columns";
import { formats } from "../../model/cell";
import { tableBlock } from "../../model/table";
import type { SheetModel } from "../../model/workbook-model";
import { tabColors } from "../tab-colors";
import type { FarmContext } from "./farm-context";
import { cropTable, fieldTable } from "./headers";

export function fieldsSheet({ fields, rows }: FarmContext): SheetModel {
  const crop = oneOf({ table: cropTable.table, column: "crop" }, "One of the crops in the list of crops.");
  return {
    key: "fields",
    name: "Fields",
    tabColor: tabColors.input,
    title: "Fields",
    answers: "Which fields there are, what grew on them, what comes next, and what was put on for those two crops.",
    blocks: [
      tableBlock(
        fieldTable,
        { rows, wholeLabel: "Whole farm" },
        {
          field: typedWords(
            fields.map(({ field }) => field),
            {
              width: 18,
              note: "One row a field or management zone. Every other sheet follows the names given here; give each a name of its own.",
            },
          ),
          acres: typedNumber(
            fields.map(({ acres }) => acres),
            {
              width: 9,
              format: formats.one,
              allow: within(limits.acres, "Acres farmed"),
              whole: formula`SUM(${fieldTable.all("acres")})`,
            },
          ),
          lastCrop: typedWords(
            fields.map(({ lastCrop }) => lastCrop),
            { width: 11, allow: crop },
          ),
          lastYield: typedNumber(
            fields.map(({ lastYieldBuPerAc }) => lastYieldBuPerAc),
            {
              width: 11,
              format: formats.one,
              allow: within(limits.yieldAny, "Yield of the last crop, bu/ac"),
              note: "Bushels per acre at market moisture, from the scale rather than the monitor where both are at hand.",
            },
          ),
          nextCrop: typedWords(
            fields.map(({ nextCrop }) => nextCrop),
            { width: 11, allow: crop },
          ),
          yieldGoal: typedNumber(
            fields.map(({ yieldGoalBuPerAc }) => yieldGoalBuPerAc),
            {
              width: 11,
              format: formats.one,
              allow: within(limits.yieldAny, "Yield to plan for, bu/ac"),
              note: "A yield the field reaches in a good ordinary year: the mean of the last five and a little more.",
            },
          ),
          phosphateOn: typedNumber(
            fields.map(({ appliedP2o5LbPerAc }) => appliedP2o5LbPerAc),
            {
              width: 11,
              format: formats.whole,
              allow: within(limits.ratePounds, "P2O5 put on for both crops together"),
              note: "Pounds of P2O5 per acre put on for the last and the next crop together, manure included. Tons of MAP × 1,040, or of DAP × 920, over the acres.",
            },
          ),
          potashOn: typedNumber(
            fields.map(({ appliedK2oLbPerAc }) => appliedK2oLbPerAc),
            {
              width: 11,
              format: formats.whole,
              allow: within(limits.ratePounds, "K2O put on for both crops together"),
              note: "Pounds of K2O per acre put on for the last and the next crop together, manure included. Tons of potash 0-0-60 × 1,200 over the acres.",
            },
          ),
          drainage: typedWords(
            fields.map(({ drainage }) => drainage),
            {
              width: 22,
              note: "Anything worth remembering: drainage, soil, who owns it, where the gate is.",
            },
          ),
        },
      ),
    ],
    freeze: { table: fieldTable.table, columns: 1 },
    print: { orientation: "landscape" },
  };
}
