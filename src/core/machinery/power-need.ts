import { waitFor } from "../fault";
import { within } from "../limit";
import { drafts, type DraftKey, type DraftRow, type DraftSoilKey } from "../../reference/machinery/draft";
import { machineryLimits } from "./machinery-limits";

export interface PowerNeedInput {
  readonly implement: DraftKey;
  /** Feet, tools or rows, as the implement is counted. */
  readonly width: number;
  readonly mph: number;
  readonly soil: DraftSoilKey;
  /** null where the implement's draft does not turn on depth. */
  readonly depthIn: number | null;
}

export interface PowerNeed {
  readonly drawbarHp: number;
  readonly draftLb: number;
  readonly draftLbPerWidth: number;
  readonly published: DraftRow;
}

/** Pounds of pull times miles an hour that make one horsepower: 550 ft·lb/s over 88/60 ft/s. */
const poundMphPerHp = 375;

/**
 * Power at the drawbar that pulls an implement.
 *
 *   draft = soil factor × (constant + linear mph + square mph²) × width × depth;  hp = draft × mph / 375
 *
 * @source asabe-d497
 */
export function powerNeed({ implement, width, mph, soil, depthIn }: PowerNeedInput): PowerNeed {
  within("width", width, machineryLimits.count);
  within("mph", mph, machineryLimits.mph);
  if (depthIn !== null) within("depth", depthIn, machineryLimits.depth);
  const published: DraftRow = drafts[implement];
  if (published.countsDepth && depthIn === null) waitFor("depth");

  const pull = published.constant + published.linear * mph + published.square * mph ** 2;
  const draftLbPerWidth = published[soil] * pull * (published.countsDepth ? (depthIn ?? Number.NaN) : 1);
  const draftLb = draftLbPerWidth * width;
  return { drawbarHp: (draftLb * mph) / poundMphPerHp, draftLb, draftLbPerWidth, published };
}
