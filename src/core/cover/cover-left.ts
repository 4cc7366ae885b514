import { needed, refuse } from "../fault";
import { within } from "../limit";
import type { CropKey } from "../../reference/crops";
import { coverKept, type CoverPassKey } from "../../reference/cover/tillage-residue";
import { conservationCover } from "../../reference/cover/erosion";
import { cropResidue, type CropResidueRow } from "../../reference/cover/crop-residue";
import { residueClasses, residueKinds, type ResidueKindKey } from "../../reference/cover/residue-kinds";
import type { Cited } from "../../reference/table";
import { coverLimits } from "./cover-limits";

/** Cover to start from: measured, or what a crop usually leaves after harvest. */
export type StartCover = { readonly coverPct: number } | { readonly crop: CropKey };

/** A pass by its name, or the share of cover that it is known to keep. */
export type CoverPass = { readonly pass: CoverPassKey } | { readonly keptPct: number };

/** A share or a cover with both ends of its range, %. */
export interface CoverRange {
  readonly low: number;
  readonly middle: number;
  readonly high: number;
}

export interface CoverStep {
  readonly name: string;
  /** Of the cover before the pass. */
  readonly keptPct: CoverRange;
  /** Cover after the pass. */
  readonly coverPct: CoverRange;
}

export interface CoverLeft {
  readonly startPct: number;
  readonly kind: ResidueKindKey;
  readonly coverPct: CoverRange;
  readonly steps: readonly CoverStep[];
  /** At least 30 % after planting. */
  readonly isConservation: boolean;
  readonly cited: readonly Cited[];
}

export interface CoverLeftInput {
  readonly start: StartCover;
  readonly passes: readonly CoverPass[];
  /** null: that of the crop the cover starts from. */
  readonly kind: ResidueKindKey | null;
}

/**
 * Cover that is left after tillage passes and winter.
 *
 *   start × product of the shares kept, with the low, middle and high share of each pass
 *
 * @source scs-residue-1992
 */
export function coverLeft({ start, passes, kind }: CoverLeftInput): CoverLeft {
  const from = startOf(start);
  const residueKind = kind ?? needed("residueKind", from.published?.kind);
  const steps: CoverStep[] = [];
  let cover: CoverRange = { low: from.coverPct, middle: from.coverPct, high: from.coverPct };
  for (const pass of passes) {
    const keptPct = keptOf(pass, residueKind);
    cover = afterPass(cover, keptPct);
    steps.push({ name: "pass" in pass ? coverKept[pass.pass].label : "own figure", keptPct, coverPct: cover });
  }
  return {
    startPct: from.coverPct,
    kind: residueKind,
    coverPct: cover,
    steps,
    isConservation: cover.middle >= conservationCover.coverPct,
    cited: citedBy(passes, from.published),
  };
}

function startOf(start: StartCover): { coverPct: number; published?: CropResidueRow } {
  if ("coverPct" in start) {
    within("startCover", start.coverPct, coverLimits.cover);
    return start;
  }
  const published = cropResidue.rows.find((row) => row.crop === start.crop);
  if (published) return { coverPct: published.coverPct, published };
  refuse({
    kind: "notPublished",
    what: `cover after harvest for ${start.crop}`,
    where: `"${cropResidue.title}"`,
    instead: "Enter the cover you counted, in percent.",
  });
}

function keptOf(pass: CoverPass, kind: ResidueKindKey): CoverRange {
  if ("keptPct" in pass) {
    within("passes", pass.keptPct, coverLimits.kept);
    return { low: pass.keptPct, middle: pass.keptPct, high: pass.keptPct };
  }
  const [low, high] = coverKept[pass.pass][kind];
  return { low, middle: (low + high) / 2, high };
}

function afterPass(cover: CoverRange, kept: CoverRange): CoverRange {
  return {
    low: (cover.low * kept.low) / 100,
    middle: (cover.middle * kept.middle) / 100,
    high: (cover.high * kept.high) / 100,
  };
}

function citedBy(passes: readonly CoverPass[], published: CropResidueRow | undefined): Cited[] {
  const rows = passes.flatMap((pass): Cited[] => ("pass" in pass ? [coverKept[pass.pass]] : []));
  return [...new Set([...(published ? [published] : []), ...rows, residueClasses])];
}

/** Name of a residue kind, for the working. */
export function residueKindLabel(kind: ResidueKindKey): string {
  return residueKinds[kind].label;
}
