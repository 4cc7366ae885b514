import type { PickedPractice, PickReason, PracticePick } from "../../core/practices/practice-pick";
import type { Matrix } from "../frame";
import type { OfferedPractice } from "./pick-offer";
import { dollars } from "./practice-arguments";

type Row = readonly (string | number)[];

/** The choice as it spills: a row for each practice of the sheet, then the set. */
export function pickTable(pick: PracticePick, rows: readonly OfferedPractice[]): Matrix<string | number> {
  return [
    ["Practice", "Pick", "Cost, $/ac", "Gain alone, bu/ac", "Adds to the set, $/ac", "Why"],
    ...rows.map(({ name, place }) => practiceRow(name, place === null ? undefined : pick.practices[place])),
    ["The set", pick.picked, pick.costUsdPerAc, pick.gainBuPerAc, pick.netUsdPerAc, setNote(pick)],
  ];
}

/** Names of the picked practices, in the order of the sheet. */
export function pickedNames({ practices }: PracticePick): string {
  const names = practices.filter(({ isPicked }) => isPicked).map(({ name }) => name);
  return names.length === 0 ? "none" : names.join(", ");
}

function practiceRow(name: string, practice: PickedPractice | undefined): Row {
  if (!practice) return [name, "", "", "", "", "left out: it needs a cost and a gain"];
  const { isPicked, costUsdPerAc, gainBuPerAc, addsUsdPerAc, reason } = practice;
  return [name, isPicked ? "yes" : "no", costUsdPerAc, gainBuPerAc, addsUsdPerAc, reasonWords(reason)];
}

function reasonWords(reason: PickReason): string {
  switch (reason.kind) {
    case "picked":
      return "";
    case "excluded":
      return `does not go with ${reason.by}`;
    case "missing":
      return `needs ${reason.needs}, which is not picked`;
    case "noGain":
      return "brings less than it costs beside the others";
    case "overBudget":
      return `budget is ${dollars(reason.shortUsdPerAc)}/ac short`;
    case "numberReached":
      return "the number of practices is reached";
    case "otherwiseUsed":
      return "would pay only in place of others";
  }
}

function setNote({ budgetLeftUsdPerAc, picked, gainBuPerAc, plainSumBuPerAc }: PracticePick): string {
  if (picked === 0) return "nothing pays within this budget at this price";
  const left = `${dollars(budgetLeftUsdPerAc)}/ac of the budget left`;
  const apart = gainBuPerAc - plainSumBuPerAc;
  if (Math.abs(apart) < 0.005) return left;
  return `${left}; together ${Math.abs(apart).toFixed(2)} bu/ac ${apart < 0 ? "less" : "more"} than the sum of their gains`;
}
