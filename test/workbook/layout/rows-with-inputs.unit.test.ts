import { formula } from "../../../src/workbook/formula/expression";
import type { WorkbookModel } from "../../../src/workbook/model/workbook-model";
import { planWorkbook } from "../../../src/workbook/plan-workbook";
import { nothingTaken } from "../../../src/workbook/taken-names";
import { fields, smallModel } from "../small-model";

const named = { to: "name", key: "chosen_rate" } as const;

/** The small model with a sheet of free rows: an input with a list, a named figure, and one over several columns. */
const model: WorkbookModel = {
  ...smallModel,
  sheets: [
    ...smallModel.sheets,
    {
      key: "free",
      name: "Free",
      tabColor: "#123456",
      title: "Free rows",
      answers: "What stands where?",
      blocks: [
        {
          kind: "rows",
          rows: [
            [
              {
                content: "good",
                style: "inputText",
                allow: { kind: "list", words: ["good", "poor"], prompt: "A word." },
              },
              { content: 7, style: "computed", named: { name: "chosen_rate", says: "Rate" } },
              { content: formula`SUM(${fields.block("acres", "rate")})*${named}`, style: "computed" },
            ],
          ],
        },
      ],
      widths: [12, 12, 12],
      print: { orientation: "portrait" },
    },
  ],
};

describe("free rows", () => {
  it("hold inputs with their list, named cells, and formulas over neighbouring columns", () => {
    const plan = planWorkbook(model, nothingTaken);
    const free = plan.sheets.find(({ name }) => name === "Free");
    expect(free?.validations).toEqual([
      {
        kind: "list",
        area: { top: 3, left: 0, bottom: 3, right: 0 },
        words: ["good", "poor"],
        prompt: "A word.",
        refusal: "Choose one of the words in the list.",
      },
    ]);
    expect(plan.names).toContainEqual({
      name: "chosen_rate",
      says: "Rate",
      sheet: "Free",
      area: { top: 3, left: 1, bottom: 3, right: 1 },
    });
    expect(free?.cells.find(({ column, row }) => row === 3 && column === 2)?.content).toEqual({
      formula: "=SUM(Fields[[Acres]:[Rate seeds/ac]])*chosen_rate",
    });
  });

  it("step aside with their names when one is taken", () => {
    const plan = planWorkbook(model, { ...nothingTaken, names: ["CHOSEN_RATE"] });
    expect(plan.names.map(({ name }) => name)).toContain("chosen_rate_2");
    expect(plan.sheets.map(({ name }) => name)).toContain("Free 2");
  });
});
