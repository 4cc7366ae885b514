import { cropExamples } from "../../scenario/crop-examples";
import { practiceExamples, type PracticeExample } from "../../scenario/practice-examples";
import { demoFields } from "../../scenario/windmill-hollow";
import type { StarterChoices } from "../choices";
import type { ClientSoil } from "./client-soil";

/** A field as it is farmed now; null: not known yet. */
export interface ClientField {
  readonly field: string;
  readonly acres: number | null;
  readonly crop: string;
  readonly yieldBuPerAc: number | null;
  readonly costUsdPerAc: number | null;
}

/** A crop of the client's, with price and cost a bushel. */
export interface ClientCrop {
  readonly crop: string;
  readonly priceUsdPerBu: number | null;
  readonly costUsdPerBu: number | null;
}

export interface ClientContext {
  readonly clientName: string;
  /** Stands before the sheet names, where several clients share a workbook. */
  readonly group?: string;
  readonly preparedBy: string | null;
  /** A spreadsheet date. */
  readonly preparedOn: number | null;
  readonly note: string | null;
  readonly crops: readonly ClientCrop[];
  readonly rows: number;
  readonly fields: readonly ClientField[];
  readonly proposalRows: number;
  readonly practices: readonly PracticeExample[];
  readonly withDemo: boolean;
  /** Soil tests with the guide that reads them, where there are any. */
  readonly soil?: ClientSoil;
}

const leastProposalRows = 10;

export function clientContext(choices: StarterChoices): ClientContext {
  const fields = choices.withDemo ? demoClientFields(choices) : [];
  const practices = practiceExamples.filter(({ field }) => fields.some((each) => each.field === field));
  return {
    clientName: choices.farmName,
    preparedBy: null,
    preparedOn: null,
    note: null,
    crops: choices.crops.map(({ crop, priceUsdPerBu }) => ({
      crop,
      priceUsdPerBu,
      costUsdPerBu: cropExamples[crop].costUsdPerBu,
    })),
    rows: choices.numberOfFields,
    fields,
    proposalRows: Math.max(leastProposalRows, choices.numberOfFields),
    practices,
    withDemo: choices.withDemo,
  };
}

/** The invented fields whose next crop is among those chosen. */
function demoClientFields({ crops, numberOfFields }: StarterChoices): ClientField[] {
  return demoFields.slice(0, numberOfFields).flatMap(({ field, acres, nextCrop, yieldGoalBuPerAc }) => {
    const chosen = crops.find(({ crop }) => crop === nextCrop);
    if (chosen === undefined) return [];
    const costUsdPerAc = cropExamples[chosen.crop].costBeforeHaulingUsdPerAc;
    return [{ field, acres, crop: chosen.crop, yieldBuPerAc: yieldGoalBuPerAc, costUsdPerAc }];
  });
}
