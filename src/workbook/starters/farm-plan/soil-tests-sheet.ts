import { limits } from "../../../core/limits";
import { formats } from "../../model/cell";
import { oneOf, typedNumber, typedWords, within } from "../../model/columns";
import { tableBlock } from "../../model/table";
import type { SheetModel } from "../../model/workbook-model";
import { tabColors } from "../tab-colors";
import type { FarmContext } from "./farm-context";
import { fieldTable, soilTable } from "./headers";

export function soilTestsSheet({ fields, rows }: FarmContext): SheetModel {
  return {
    key: "soil-tests",
    name: "Soil tests",
    tabColor: tabColors.input,
    title: "Soil tests",
    answers: "What the laboratory found in each field.",
    blocks: [
      tableBlock(
        soilTable,
        { rows },
        {
          field: typedWords(
            fields.map(({ field }) => field),
            {
              width: 18,
              allow: oneOf({ table: fieldTable.table, column: "field" }, "A field from the list of fields."),
              note: "The same name as in the list of fields. The order does not matter.",
            },
          ),
          ph: typedNumber(
            fields.map(({ soilPh }) => soilPh),
            {
              width: 9,
              format: formats.ph,
              allow: within(limits.soilPh, "Soil pH in water"),
            },
          ),
          bufferPh: typedNumber(
            fields.map(({ bufferPh }) => bufferPh),
            {
              width: 9,
              format: formats.ph,
              allow: within(limits.bufferPh, "Buffer pH"),
              note: "As the laboratory prints it. A lime test index of 68 is a buffer pH of 6.8. Leave blank where the laboratory left it out: no lime is called for there.",
            },
          ),
          phosphorus: typedNumber(
            fields.map(({ phosphorusPpm }) => phosphorusPpm),
            {
              width: 9,
              format: formats.whole,
              allow: within(limits.soilTestP, "Soil-test phosphorus"),
              note: "Parts per million of P. Pounds per acre on a report: divide by 2.",
            },
          ),
          potassium: typedNumber(
            fields.map(({ potassiumPpm }) => potassiumPpm),
            {
              width: 9,
              format: formats.whole,
              allow: within(limits.soilTestK, "Soil-test potassium"),
              note: "Parts per million of K. Pounds per acre on a report: divide by 2.",
            },
          ),
          cec: typedNumber(
            fields.map(({ cecMeq }) => cecMeq),
            {
              width: 11,
              format: formats.one,
              allow: within(limits.cec, "Cation exchange capacity"),
            },
          ),
          organicMatter: typedNumber(
            fields.map(({ organicMatterPct }) => organicMatterPct),
            {
              width: 11,
              format: formats.one,
              allow: within(limits.share, "Organic matter"),
            },
          ),
        },
      ),
    ],
    freeze: { table: soilTable.table, columns: 1 },
    print: { orientation: "landscape" },
  };
}
