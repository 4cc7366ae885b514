import { allFunctions } from "../../functions";
import type { CalculatedWorkbook } from "../../hosts/calculated-workbook";
import { calculate } from "../../hosts/engine";
import { writeXlsx } from "../../hosts/xlsx/write-xlsx";
import type { AddIn } from "../../hosts/xlsx/parts/web-extension";
import type { WorkbookPlan } from "../../workbook/plan";
import { defaultChoices, type Starter } from "../../workbook/starters";
import { makePlan } from "../../workbook/starters/make-plan";
import { problemsOf } from "./problems";

/** Cells named when a sample is refused. */
const mostNamed = 10;

/** A starter with the demo farm in it, calculated and written. */
export interface Sample {
  readonly starter: Starter;
  readonly plan: WorkbookPlan;
  readonly values: CalculatedWorkbook;
  readonly bytes: Uint8Array;
}

/** Calculates a starter with the demo farm. */
export async function calculateSample(starter: Starter): Promise<Omit<Sample, "bytes">> {
  const plan = makePlan(starter, defaultChoices);
  return { starter, plan, values: await calculate(plan, allFunctions) };
}

/** Calculates and writes a sample; throws with a line for each of the first cells that do not show what they should. */
export async function makeSample(starter: Starter, addIn: AddIn): Promise<Sample> {
  const sample = await calculateSample(starter);
  const problems = problemsOf(sample.plan, sample.values);
  if (problems.length > 0) throw new Error(refusal(starter, problems));
  return { ...sample, bytes: await writeXlsx(sample.plan, sample.values, { addIn }) };
}

function refusal({ title }: Starter, problems: readonly string[]): string {
  const named = problems.slice(0, mostNamed);
  const more = problems.length > named.length ? [`and ${problems.length - named.length} more.`] : [];
  return [`${title} is not written. These cells are not as they should be:`, ...named, ...more].join("\n");
}
