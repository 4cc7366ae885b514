import { needed, refuse, refuseArgument, waitFor } from "../fault";
import { legumes, oatGroup2, oatMinnesota, previousCrops, type PreviousKey } from "../../reference/nitrogen";
import type { Cited } from "../../reference/table";

interface OatQuestion {
  readonly yieldGoal: number;
  readonly previous: PreviousKey | null;
  readonly organicMatterPct: number | null;
  readonly standPerSqFt: number | null;
}

type OatRow = (typeof oatMinnesota.rows)[number];

/** Rate of the eastern Minnesota oat table. Whole bushels are classified, upper bounds belong to their class. */
export function oatTableRate(question: OatQuestion): { readonly lbPerAc: number; readonly cited: readonly Cited[] } {
  const previous = needed("previousCrop", question.previous);
  const organicPct = needed("organicMatter", question.organicMatterPct);
  const bushels = Math.round(question.yieldGoal);
  if (bushels < oatMinnesota.least) {
    refuse({
      kind: "notPublished",
      where: "the eastern Minnesota table",
      what: `rate below ${oatMinnesota.least} bu/ac of oat`,
    });
  }
  const place = oatMinnesota.upTo.findIndex((bound) => bushels <= bound);
  const { row, cited } = rowOf(previous, question.standPerSqFt);
  const rates: readonly number[] = organicPct < oatMinnesota.lowUnderPct ? row.low : row.high;
  const lbPerAc = rates[place === -1 ? oatMinnesota.upTo.length : place] ?? 0;
  return { lbPerAc, cited: [oatMinnesota, ...cited] };
}

function rowOf(previous: PreviousKey, standPerSqFt: number | null): { row: OatRow; cited: readonly Cited[] } {
  const group2: readonly PreviousKey[] = oatGroup2.crops;
  const isGroup2 = group2.includes(previous);
  const wanted = isGroup2 ? "group2" : previous;
  const row = oatMinnesota.rows.find((candidate) => (candidate.previous as readonly PreviousKey[]).includes(wanted)); // a row's own list, read as any previous crop
  if (!row) return refusePrevious(previous);
  if (previous === "alfalfa" && "fromPlants" in row) checkStand(row.fromPlants, standPerSqFt);
  return { row, cited: isGroup2 ? [oatGroup2] : [] };
}

function checkStand(fromPlants: number, standPerSqFt: number | null): void {
  if (standPerSqFt === null) waitFor("stand");
  if (standPerSqFt < fromPlants) {
    refuse({
      kind: "notPublished",
      where: "the eastern Minnesota table",
      what: `row for alfalfa under ${fromPlants} plants/sq ft`,
      instead: "Thinner stands are in its crop groups: enter group 1 crop or group 2 crop.",
    });
  }
}

function refusePrevious(previous: PreviousKey): never {
  const { label } = previousCrops[previous];
  refuseArgument(
    "previousCrop",
    `the table prints ${label} ${legumes.includes(previous) ? "with a crop group" : "by its crop group"}: enter group 1 crop or group 2 crop.`,
  );
}
