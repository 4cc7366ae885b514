import { refuse } from "../fault";
import {
  customRates,
  customSurveys,
  type CustomRate,
  type CustomRateKey,
  type CustomSurveyKey,
} from "../../reference/machinery/custom-rates";
import type { Cited } from "../../reference/table";

export interface CustomRateResult {
  readonly rateUsdPerAc: number;
  readonly survey: CustomSurveyKey;
  /** Every survey that asked about the operation, oldest first. */
  readonly all: readonly { readonly survey: CustomSurveyKey; readonly rateUsdPerAc: number }[];
  readonly published: Cited;
}

/**
 * What a published survey found neighbors charging for a field operation.
 *
 * @param survey null: the newest that asked about it
 * @source isu-a3-10-2019, isu-a3-10-2023
 */
export function customRate(operation: CustomRateKey, survey: CustomSurveyKey | null): CustomRateResult {
  const { label, rates }: CustomRate = customRates[operation];
  const asked = (["y2019", "y2023"] as const).flatMap((key) => {
    const rateUsdPerAc = rates[key];
    return rateUsdPerAc === undefined ? [] : [{ survey: key, rateUsdPerAc }];
  });
  const found = survey === null ? asked.at(-1) : asked.find((one) => one.survey === survey);
  if (found) return { ...found, all: asked, published: customSurveys[found.survey] };
  refuse({
    kind: "notPublished",
    what: `rate for ${label}`,
    where: `the Iowa survey of ${survey === null ? "any year" : customSurveys[survey].label} as reported`,
    instead: `Leave survey blank for ${asked.map((one) => customSurveys[one.survey].label).join(" or ")}.`,
  });
}
