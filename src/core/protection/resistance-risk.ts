import { refuseArgument } from "../fault";
import { resistanceChecklist, type ChecklistRow } from "../../reference/protection/resistance-checklist";

export type RiskAnswer = "low" | "moderate" | "high";

export interface ResistanceRisk {
  readonly rows: readonly { readonly row: ChecklistRow; readonly answer: RiskAnswer | null }[];
  readonly counts: Readonly<Record<RiskAnswer, number>>;
  readonly open: number;
}

/**
 * The management checklist with a person's answers counted. The counts are not added up: no weights are published.
 *
 * @param answers in the order of the checklist; null where one is open
 * @source hrac-guideline
 */
export function resistanceRisk(answers: readonly (RiskAnswer | null)[]): ResistanceRisk {
  const { rows } = resistanceChecklist;
  if (answers.slice(rows.length).some((answer) => answer !== null)) {
    refuseArgument("answers", `the checklist has ${rows.length} rows; got ${answers.length} cells.`);
  }
  const answered = rows.map((row, index) => ({ row, answer: answers[index] ?? null }));
  const countOf = (wanted: RiskAnswer | null) => answered.filter(({ answer }) => answer === wanted).length;
  return {
    rows: answered,
    counts: { low: countOf("low"), moderate: countOf("moderate"), high: countOf("high") },
    open: countOf(null),
  };
}
