import type { Cited, ReferenceTable } from "../table";
import type { SinglePart } from "./parts";

/** Dry straw or stover that grows with a pound of dry grain. */
export interface DryResidueRow extends Cited {
  readonly crop: "corn" | "soybean" | "wheat" | "springWheat";
  readonly part: Extract<SinglePart, "straw" | "stover">;
  readonly residuePerGrain: number;
}

export const dryResidue: ReferenceTable<DryResidueRow> = {
  title: "Dry residue left by a grain crop",
  units: { residuePerGrain: "lb dry residue per lb dry grain" },
  basis: "dry matter; the grain at its market moisture",
  rows: [
    { crop: "corn", part: "stover", residuePerGrain: 1, mark: "V", source: "uiuc-residue" },
    { crop: "wheat", part: "straw", residuePerGrain: 1, mark: "V", source: "uiuc-wheat-straw" },
    {
      crop: "springWheat",
      part: "straw",
      residuePerGrain: 1,
      mark: "V",
      source: "uiuc-wheat-straw",
      note: "Printed for wheat.",
    },
    {
      crop: "soybean",
      part: "stover",
      residuePerGrain: (1 - 0.42) / 0.42,
      mark: "M",
      source: "residue-harvest-index",
      note: "Harvest index 0.42.",
    },
  ],
};
