import { seedSpacing } from "../../src/functions/seed/planting";
import { call } from "../../src/workbook/formula/call";
import { formula, prose } from "../../src/workbook/formula/expression";
import { place, sheetName } from "../../src/workbook/formula/reference";
import { whenNamed } from "../../src/workbook/formula/natives";
import { computed, typedNumber, typedWords } from "../../src/workbook/model/columns";
import { computedEntry, typedEntry } from "../../src/workbook/model/entries";
import { headersOf, tableBlock } from "../../src/workbook/model/table";
import type { WorkbookModel } from "../../src/workbook/model/workbook-model";

export const fields = headersOf("Fields", {
  field: "Field",
  acres: "Acres",
  rate: "Rate seeds/ac",
  spacing: "Spacing in",
});

/** Two sheets with every kind of reference: a name, a place on another sheet, columns, a span, a sheet in prose. */
export const smallModel: WorkbookModel = {
  starter: "small",
  title: "Small",
  sheets: [
    {
      key: "terms",
      name: "Terms",
      tabColor: "#123456",
      title: "Terms",
      answers: prose`Go on to ${sheetName("fields")}.`,
      blocks: [
        {
          kind: "entries",
          key: "money",
          title: "Money",
          entries: [
            typedEntry({ key: "rate", label: "Interest", unit: "a year", name: "interest" }, 0.08),
            computedEntry({ key: "half", label: "Half of it" }, formula`${{ to: "name", key: "interest" } as const}/2`),
            computedEntry({ key: "acres", label: "Acres", unit: "ac" }, formula`${place("Fields.acres.whole")}`),
          ],
        },
      ],
      print: { orientation: "portrait" },
    },
    {
      key: "fields",
      name: "Field list",
      tabColor: "#654321",
      title: "Fields",
      answers: "Which fields?",
      blocks: [
        tableBlock(
          fields,
          { rows: 2, title: "List", wholeLabel: "All" },
          {
            field: typedWords(["Home"], { width: 12, note: "A name." }),
            acres: typedNumber([10], {
              width: 8,
              whole: formula`SUM(${fields.all("acres")})`,
              allow: { kind: "between", min: 0, max: 1000, prompt: "Acres." },
            }),
            rate: typedNumber([140_000], {
              width: 12,
              rules: [
                { kind: "formula", formula: formula`${fields.own("rate")}>${fields.own("acres")}`, look: "attention" },
              ],
            }),
            spacing: computed(
              whenNamed(fields.own("field"), call(seedSpacing, { rate: fields.own("rate"), rowWidth: 15 })),
              { width: 10 },
            ),
          },
        ),
        {
          kind: "rows",
          rows: [
            [
              {
                content: formula`SUM(${fields.span("acres", "rate")})*${place("money.half")}`,
                style: "computed",
                key: "odd",
              },
            ],
          ],
        },
        { kind: "paragraphs", style: "says", paragraphs: ["one two three four five six seven eight nine ten eleven"] },
      ],
      freeze: { table: "Fields", columns: 1 },
      print: { orientation: "landscape" },
    },
  ],
};
