import { organicRelease, type ReleaseKey, type ReleaseRow } from "../../reference/nitrogen";

export interface OrganicNitrogen {
  readonly releasedLbPerAc: number;
  readonly lowLbPerAc: number;
  readonly highLbPerAc: number;
  readonly row: ReleaseRow;
}

/** Nitrogen that organic matter releases in a season, lb/ac: percent × published pounds per percent. */
export function organicNitrogen(organicMatterPct: number, region: ReleaseKey): OrganicNitrogen {
  const row: ReleaseRow = organicRelease[region];
  return {
    releasedLbPerAc: organicMatterPct * row.lbPerPct,
    lowLbPerAc: organicMatterPct * row.low,
    highLbPerAc: organicMatterPct * row.high,
    row,
  };
}
