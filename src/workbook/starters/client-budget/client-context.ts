import { cropExamples } from "../../scenario/crop-examples";
import { practiceExamples, type PracticeExample } from "../../scenario/practice-examples";
import { demoFields } from "../../scenario/windmill-hollow";
import type { CropChoice, StarterChoices } from "../choices";

/** A field as it is farmed now. */
export interface ClientField {
  readonly field: string;
  readonly acres: number;
  readonly crop: string;
  readonly yieldBuPerAc: number;
  readonly costUsdPerAc: number;
}

export interface ClientContext {
  readonly clientName: string;
  readonly crops: readonly CropChoice[];
  readonly rows: number;
  readonly fields: readonly ClientField[];
  readonly proposalRows: number;
  readonly practices: readonly PracticeExample[];
  readonly withDemo: boolean;
}

const leastProposalRows = 10;

export function clientContext(choices: StarterChoices): ClientContext {
  const fields = choices.withDemo ? demoClientFields(choices) : [];
  const practices = practiceExamples.filter(({ field }) => fields.some((each) => each.field === field));
  return {
    clientName: choices.farmName,
    crops: choices.crops,
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
