import { refuse, waitFor } from "../fault";
import { within } from "../limit";
import { crops, type CropKey } from "../../reference/crops";
import { pestThresholds, type ThresholdRow } from "../../reference/protection/pest-thresholds";
import {
  countings,
  pests,
  pestStages,
  type CountingKey,
  type PestKey,
  type PestStage,
  type PestStageKey,
} from "../../reference/protection/pests";
import { coversStage } from "./crop-stage";
import { pestLimits } from "./pest-limits";

/** A stage as a table prints it, or a stage code such as R3. */
export type AskedStage = { readonly printed: PestStageKey } | { readonly code: string };

export interface PestThresholdInput {
  readonly pest: PestKey;
  /** null: every crop, stage or way of counting. */
  readonly crop: CropKey | null;
  readonly stage: AskedStage | null;
  readonly count: number | null;
  readonly per: CountingKey | null;
}

export type Reading = "below" | "in the printed range" | "at or above" | "leave" | "sample more";

export interface ThresholdFound {
  readonly row: ThresholdRow;
  /** Against a count; null where none is given. */
  readonly against: { readonly sharePct: number; readonly reading: Reading } | null;
}

export interface PestThreshold {
  readonly found: readonly ThresholdFound[];
  readonly count: number | null;
}

const stages: Readonly<Record<PestStageKey, PestStage>> = pestStages;

/** Published thresholds for a pest, narrowed by crop, stage and way of counting, and a count held against them. */
export function pestThreshold({ pest, crop, stage, count, per }: PestThresholdInput): PestThreshold {
  const ofPest = pestThresholds.rows.filter((row: ThresholdRow) => row.pest === pest) as readonly ThresholdRow[]; // widened from the literal rows
  const ofCrop = ofPest.filter((row) => crop === null || row.crops.length === 0 || row.crops.includes(crop));
  if (ofCrop.length === 0 && crop !== null) refuseNone(`${pests[pest].label} in ${crops[crop].label}`, cropsOf(ofPest));
  const ofStage = ofCrop.filter((row) => stage === null || isAt(row, stage));
  if (ofStage.length === 0)
    refuseNone(
      `${pests[pest].label} at that stage`,
      unique(ofCrop, (row) => stages[row.stage].label),
    );
  const rows = ofStage.filter((row) => per === null || row.per === per);
  if (rows.length === 0)
    refuseNone(
      `${pests[pest].label} counted that way`,
      unique(ofStage, (row) => countings[row.per].label),
    );
  if (count === null) return { found: rows.map((row) => ({ row, against: null })), count };

  within("count", count, pestLimits.count);
  const ways = unique(rows, (row) => countings[row.per].label);
  if (ways.length > 1) waitFor("per", `how it was counted: ${ways.join(", ")}`);
  return { found: rows.map((row) => ({ row, against: hold(count, row) })), count };
}

function hold(count: number, row: ThresholdRow): ThresholdFound["against"] {
  return { sharePct: (count / row.low) * 100, reading: readingOf(count, row) };
}

function readingOf(count: number, { low, high, leaveAt }: ThresholdRow): Reading {
  if (count >= high) return "at or above";
  if (count >= low) return "in the printed range";
  if (leaveAt === undefined) return "below";
  return count <= leaveAt ? "leave" : "sample more";
}

function isAt(row: ThresholdRow, stage: AskedStage): boolean {
  return "printed" in stage ? row.stage === stage.printed : coversStage(stages[row.stage], stage.code);
}

function cropsOf(rows: readonly ThresholdRow[]): string[] {
  return unique(rows, (row) => row.cropSays);
}

function unique(rows: readonly ThresholdRow[], word: (row: ThresholdRow) => string): string[] {
  return [...new Set(rows.map(word))];
}

function refuseNone(what: string, held: readonly string[]): never {
  refuse({
    kind: "notPublished",
    what: `threshold for ${what}`,
    where: `"${pestThresholds.title}"`,
    instead: `It holds: ${held.join(", ")}.`,
  });
}
