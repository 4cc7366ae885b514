import { refuse } from "../fault";
import { within } from "../limit";
import { cornEmergence, leafPaces, type LeafGuideKey, type LeafPace } from "../../reference/seed/corn-heat";
import type { Cited } from "../../reference/table";
import { heatLimits } from "./heat-limits";

/** The pace changes at this leaf. */
const tenth = 10;

export interface StageHeat {
  /** From planting. */
  readonly heatUnits: number;
  readonly cited: readonly Cited[];
}

export interface CornLeaves {
  /** null: not emerged. */
  readonly leaves: number | null;
  readonly toNextLeaf: number;
  readonly cited: readonly Cited[];
}

/**
 * Heat units from planting to a leaf stage of corn.
 *
 *   115 to emergence, then so many a leaf to the tenth, fewer from there to the last
 *
 * @source umn-coulter-2021
 */
export function stageHeat({ leaf, guide }: { leaf: number; guide: LeafGuideKey }): StageHeat {
  within("stage", leaf, heatLimits.leaf);
  const pace = paceOf(guide);
  return { heatUnits: heatTo(leaf, pace), cited: [cornEmergence, pace] };
}

/** Whole leaves out after so many heat units from planting, with what the next one wants. */
export function cornLeaves({ heatUnits, guide }: { heatUnits: number; guide: LeafGuideKey }): CornLeaves {
  within("heatUnits", heatUnits, heatLimits.heatUnits);
  const pace = paceOf(guide);
  const cited = [cornEmergence, pace];
  if (heatUnits < cornEmergence.heatUnits) {
    return { leaves: null, toNextLeaf: cornEmergence.heatUnits - heatUnits, cited };
  }
  if (heatUnits > heatTo(heatLimits.leaf.max, pace)) {
    refuse({
      kind: "notPublished",
      what: `leaf past the ${heatLimits.leaf.max}nd`,
      where: "the leaf pace",
      instead: "All leaves are out by then.",
    });
  }
  let leaves = 0;
  while (leaves < heatLimits.leaf.max && heatTo(leaves + 1, pace) <= heatUnits) leaves++;
  return { leaves, toNextLeaf: heatTo(leaves + 1, pace) - heatUnits, cited };
}

function heatTo(leaf: number, { toTenth, pastTenth }: LeafPace): number {
  return cornEmergence.heatUnits + Math.min(leaf, tenth) * toTenth + Math.max(0, leaf - tenth) * pastTenth;
}

function paceOf(guide: LeafGuideKey): LeafPace {
  const pace = leafPaces.find(({ key }) => key === guide);
  return pace ?? refuse({ kind: "notPublished", what: `leaf pace under ${guide}`, where: "the leaf pace" });
}
