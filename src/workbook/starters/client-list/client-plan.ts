import { crops } from "../../../reference/crops";
import type { WorkbookPlan } from "../../plan";
import { planWorkbook } from "../../plan-workbook";
import { cropExamples, type CropExample } from "../../scenario/crop-examples";
import type { TakenNames } from "../../taken-names";
import { clientBudgetOf } from "../client-budget/client-budget";
import type { ClientContext, ClientCrop } from "../client-budget/client-context";
import { clientSoilOf } from "../client-budget/client-soil";
import { starterCrops } from "../choices";
import type { ClientRecord, ListedField } from "./client-records";

/** What stands on the report of every client of a list. */
export interface ListChoices {
  /** Region whose guide reads the soil tests; "" where there are none to read. */
  readonly guide: string;
  readonly preparedBy: string;
  /** A spreadsheet date, or none. */
  readonly preparedOn: number | null;
  /** Where the list has no note of the client's own. */
  readonly note: string;
  /** Whether the sheets stand beside those of other clients, under the client's name. */
  readonly asGroup: boolean;
}

const spareRows = 2;
const proposalRows = 10;

/** The budget of one client of a list, ready for any writer. */
export function clientPlan(client: ClientRecord, choices: ListChoices, taken: TakenNames): WorkbookPlan {
  return planWorkbook(clientBudgetOf(contextOf(client, choices)), taken);
}

function contextOf({ name, fields, note }: ClientRecord, choices: ListChoices): ClientContext {
  const own = [...new Set(fields.map(({ crop }) => crop))].map((crop) => cropOf(crop, fields));
  const soil = choices.guide === "" ? undefined : clientSoilOf(choices.guide, fields);
  return {
    clientName: name,
    ...(choices.asGroup && { group: name }),
    preparedBy: choices.preparedBy || null,
    preparedOn: choices.preparedOn,
    note: note || choices.note || null,
    crops: own,
    rows: fields.length + spareRows,
    fields: fields.map((field) => ({
      ...field,
      costUsdPerAc: field.costUsdPerAc ?? exampleOf(field.crop)?.cost ?? null,
    })),
    proposalRows,
    practices: [],
    withDemo: false,
    ...(soil && { soil }),
  };
}

/** What the list does not say is an example to write over, where there is one for the crop. */
function cropOf(crop: string, fields: readonly ListedField[]): ClientCrop {
  const listed = fields.find((field) => field.crop === crop && field.priceUsdPerBu !== null)?.priceUsdPerBu;
  const example = exampleOf(crop);
  return { crop, priceUsdPerBu: listed ?? example?.price ?? null, costUsdPerBu: example?.perBushel ?? null };
}

function exampleOf(label: string) {
  const key = starterCrops.find((crop) => crops[crop].label === label);
  if (key === undefined) return undefined;
  const { priceUsdPerBu, costUsdPerBu, costBeforeHaulingUsdPerAc }: CropExample = cropExamples[key];
  return { price: priceUsdPerBu, perBushel: costUsdPerBu, cost: costBeforeHaulingUsdPerAc };
}
