import { refuse } from "../fault";
import {
  drainCoefficients,
  illinoisCoefficient,
  soilSpacings,
  type DrainCoefficientRow,
  type DrainCropKey,
  type DrainSoilKey,
  type SoilSpacingRow,
  type SpacingSoilKey,
  type SurfaceInletKey,
} from "../../reference/drainage/rules";
import type { Cited } from "../../reference/table";

export interface DrainCoefficient {
  readonly row: DrainCoefficientRow;
  /** What practice in Illinois takes, where the table is about the same. */
  readonly practice: { readonly lowInPerDay: number; readonly highInPerDay: number } | null;
  readonly cited: readonly Cited[];
}

/**
 * Drainage coefficient in print for a soil, crop and kind of surface inlet.
 *
 * @source umn-drainage-2001, cooke-illinois-2019
 */
export function drainCoefficient(soil: DrainSoilKey, crop: DrainCropKey, inlets: SurfaceInletKey): DrainCoefficient {
  const rows: readonly DrainCoefficientRow[] = drainCoefficients.rows;
  const row = rows.find((one) => one.soil === soil && one.crop === crop && one.inlets === inlets);
  if (!row) {
    refuse({ kind: "notPublished", what: "coefficient for this soil, crop and inlet", where: drainCoefficients.title });
  }
  const isRowCrop = soil === "mineral" && crop === "field" && inlets === "none";
  const practice = isRowCrop ? illinoisCoefficient.rows[0] : null;
  return { row, practice, cited: practice ? [row, practice] : [row] };
}

/**
 * Drain spacing in print for a soil, for three levels of drainage.
 *
 * @source umn-drainage-2001
 */
export function soilSpacing(soil: SpacingSoilKey): SoilSpacingRow {
  const rows: readonly SoilSpacingRow[] = soilSpacings.rows;
  const row = rows.find((one) => one.soil === soil);
  return row ?? refuse({ kind: "notPublished", what: "spacing for this soil", where: soilSpacings.title });
}
