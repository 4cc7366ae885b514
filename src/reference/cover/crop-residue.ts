import type { CropKey } from "../crops";
import type { Cited, ReferenceTable } from "../table";
import type { ResidueKindKey } from "./residue-kinds";

/** Residue that a crop leaves, and how well a pound of it covers the ground. */
export interface CropResidueRow extends Cited {
  readonly crop: CropKey;
  readonly kind: ResidueKindKey;
  /** Residue for each bushel of yield. */
  readonly poundsPerBushel: number;
  /** Area a pound covers, in cover% = 100 (1 - e^(-coefficient × lb/ac)). */
  readonly coverAcPerLb: number;
  /** Cover right after harvest. */
  readonly coverPct: number;
}

const rusleDocument = { mark: "M", source: "usda-ah703-1997" } as const;

export const cropResidue = {
  title: "Residue by crop",
  units: { poundsPerBushel: "lb/bu", coverAcPerLb: "ac/lb", coverPct: "%" },
  basis: "all residue left by the harvester, dry; cover right after harvest",
  rows: [
    { crop: "corn", kind: "nonFragile", poundsPerBushel: 56, coverAcPerLb: 0.000_38, coverPct: 95, ...rusleDocument },
    {
      crop: "sorghum",
      kind: "nonFragile",
      poundsPerBushel: 56,
      coverAcPerLb: 0.000_34,
      coverPct: 80,
      ...rusleDocument,
    },
    { crop: "soybean", kind: "fragile", poundsPerBushel: 90, coverAcPerLb: 0.000_58, coverPct: 70, ...rusleDocument },
    { crop: "wheat", kind: "nonFragile", poundsPerBushel: 102, coverAcPerLb: 0.000_45, coverPct: 85, ...rusleDocument },
    {
      crop: "springWheat",
      kind: "nonFragile",
      poundsPerBushel: 78,
      coverAcPerLb: 0.0006,
      coverPct: 85,
      ...rusleDocument,
    },
    { crop: "oat", kind: "nonFragile", poundsPerBushel: 64, coverAcPerLb: 0.0006, coverPct: 80, ...rusleDocument },
  ],
} as const satisfies ReferenceTable<CropResidueRow>;

/** Stover or straw that can be baled for each bushel of yield. */
export interface BaledResidueRow extends Cited {
  readonly crop: CropKey;
  readonly poundsPerBushel: number;
}

export const baledResidue = {
  title: "Stover and straw by crop",
  units: { poundsPerBushel: "lb/bu" },
  basis: "what can be harvested; corn and soybean at about 10 % moisture, wheat straw dry",
  rows: [
    {
      crop: "corn",
      poundsPerBushel: 50,
      mark: "V",
      source: "unl-g1846",
      note: "Printed as 1 ton for 40 bushels, about 10 % moisture.",
    },
    {
      crop: "soybean",
      poundsPerBushel: 67,
      mark: "V",
      source: "unl-g1846",
      note: "Printed as 1 ton for 30 bushels, about 10 % moisture.",
    },
    {
      crop: "wheat",
      poundsPerBushel: 52,
      mark: "V",
      source: "illinois-straw",
      note: "Dry straw only: about a pound of straw for a pound of dry grain, 51.9 lb to the bushel.",
    },
  ],
} as const satisfies ReferenceTable<BaledResidueRow>;

/** What the pounds of residue are wanted for. */
export const residuePurposes = {
  cover: { label: "cover", also: ["ground cover", "erosion", "all residue"] },
  baling: { label: "baling", also: ["bale", "stover", "straw", "harvest"] },
} as const;

export type ResiduePurposeKey = keyof typeof residuePurposes;
