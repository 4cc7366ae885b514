import type { Limit } from "../../../core/limit";
import { limits } from "../../../core/limits";
import { demoFields, type FieldExample } from "../../scenario/windmill-hollow";
import { formats } from "../../model/cell";
import { oneOf, pick, typedNumber, typedWords, within } from "../../model/columns";
import { headersOf, tableBlock } from "../../model/table";
import type { WorkbookModel } from "../../model/workbook-model";
import { planWorkbook } from "../../plan-workbook";
import type { WorkbookPlan } from "../../plan";
import type { TakenNames } from "../../taken-names";
import { choiceLimits } from "../choices";
import { sampledColumn } from "../sampled-column";
import { tabColors } from "../tab-colors";
import { bushelCropLabels } from "../word-lists";

const clientList = headersOf("ClientList", {
  client: "Client",
  field: "Field",
  acres: "Acres",
  crop: "Crop",
  yield: "Yield goal bu/ac",
  cost: "Costs before hauling $/ac",
  price: "Price $/bu",
  sampled: "Sampled",
  ph: "Soil pH",
  bufferPh: "Buffer pH",
  phosphorus: "P ppm",
  potassium: "K ppm",
  cec: "CEC meq/100 g",
  organicMatter: "Organic matter %",
  note: "Note for the report",
});

export const clientListSheet = { name: "Client list", purpose: "every client's fields, crops and soil tests" };

const rows = 200;

/** Three sides of the invented farm, as if each were a client. */
const demoSides = [
  { client: "Windmill Hollow, home side", fields: demoFields.slice(0, 5) },
  { client: "Windmill Hollow, mill side", fields: demoFields.slice(5, 9) },
  { client: "Windmill Hollow, bottoms", fields: demoFields.slice(9) },
];

/** The sheet that many budgets are made from, ready for any writer. */
export function clientListPlan({ withDemo }: { withDemo: boolean }, taken: TakenNames): WorkbookPlan {
  return planWorkbook(clientListModel(withDemo), taken);
}

function clientListModel(withDemo: boolean): WorkbookModel {
  const sides = withDemo ? demoSides : [];
  const fields = sides.flatMap((side) => side.fields);
  const clients = sides.flatMap((side) => side.fields.map(() => side.client));
  return {
    starter: "client-list",
    title: "Client list",
    sheets: [
      {
        key: "list",
        name: clientListSheet.name,
        tabColor: tabColors.input,
        title: "Client list",
        answers: "One line a field: whose it is, what grows there next and what the soil test says.",
        blocks: [
          tableBlock(
            clientList,
            { rows },
            { ...cropColumns(clients, fields), ...moneyColumns(), ...soilColumns(fields) },
          ),
        ],
        freeze: { table: clientList.table, columns: 2 },
        print: { orientation: "landscape" },
      },
    ],
  };
}

function cropColumns(clients: readonly string[], fields: readonly FieldExample[]) {
  return {
    client: typedWords(clients, { width: 28, note: "The same name on every line of a client." }),
    field: typedWords(pick(fields, "field"), { width: 18, note: "Each field of a client once." }),
    acres: typedNumber(pick(fields, "acres"), {
      width: 9,
      format: formats.one,
      allow: within(limits.acres, "Acres farmed"),
    }),
    crop: typedWords(pick(fields, "nextCrop"), {
      width: 12,
      allow: oneOf(bushelCropLabels, "A crop that is sold by the bushel."),
    }),
    yield: typedNumber(pick(fields, "yieldGoalBuPerAc"), {
      width: 10,
      format: formats.one,
      allow: within(limits.yieldAny, "Yield expected without any change, in bushels"),
    }),
  };
}

function moneyColumns() {
  const money = { width: 13, format: formats.cents };
  return {
    cost: typedNumber([], {
      ...money,
      allow: within(limits.price, "All costs of an acre but hauling and drying"),
      note: "Left blank: the budget begins with an example to write over.",
    }),
    price: typedNumber([], {
      ...money,
      allow: within({ ...choiceLimits.priceUsdPerBu, unit: "$/bu" }, "Price to plan with"),
      note: "One price a crop and client. Left blank: an example to write over.",
    }),
  };
}

function soilColumns(fields: readonly FieldExample[]) {
  const test = (values: readonly (number | null)[], format: string, limit: Limit, what: string) =>
    typedNumber(values, { width: 9, format, allow: within(limit, what) });
  return {
    sampled: sampledColumn(pick(fields, "sampledOn")),
    ph: test(pick(fields, "soilPh"), formats.ph, limits.soilPh, "Soil pH in water"),
    bufferPh: test(pick(fields, "bufferPh"), formats.ph, limits.bufferPh, "Buffer pH"),
    phosphorus: test(pick(fields, "phosphorusPpm"), formats.whole, limits.soilTestP, "Soil-test phosphorus"),
    potassium: test(pick(fields, "potassiumPpm"), formats.whole, limits.soilTestK, "Soil-test potassium"),
    cec: test(pick(fields, "cecMeq"), formats.one, limits.cec, "Cation exchange capacity"),
    organicMatter: test(pick(fields, "organicMatterPct"), formats.one, limits.share, "Organic matter"),
    note: typedWords([], { width: 34, note: "A sentence or two; the first one of a client stands on the report." }),
  };
}
