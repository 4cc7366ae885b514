import type { Cited, ReferenceTable } from "../table";
import type { MaterialKey } from "./materials";

/** The two published generations differ and are kept apart. */
export type SaltIndexList = "older" | "newer";

export interface SaltIndexRow extends Cited {
  readonly material: MaterialKey;
  readonly list: SaltIndexList;
  readonly saltIndex: number;
}

const older = { list: "older", mark: "M", source: "fertilizer-trade-grades" } as const;
const newer = { list: "newer", mark: "V", source: "mortvedt-2001" } as const;

export const saltIndex: ReferenceTable<SaltIndexRow> = {
  title: "Salt index of fertilizer materials",
  units: { saltIndex: "sodium nitrate = 100" },
  basis: "equal weights of material; for comparing materials, not a limit for fertilizer near seed",
  rows: [
    { material: "anhydrousAmmonia", saltIndex: 47.1, ...older },
    { material: "urea", saltIndex: 75.4, ...older },
    { material: "uan28", saltIndex: 63, ...older },
    { material: "uan30", saltIndex: 67, ...older },
    { material: "uan32", saltIndex: 71.1, ...older },
    { material: "ammoniumNitrate", saltIndex: 104.7, ...older },
    { material: "ammoniumSulfate", saltIndex: 69, ...older },
    { material: "ammoniumThiosulfate", saltIndex: 90.4, ...older },
    { material: "monoammoniumPhosphate", saltIndex: 29.9, ...older },
    { material: "diammoniumPhosphate", saltIndex: 34.2, ...older },
    { material: "ammoniumPolyphosphate", saltIndex: 20, ...older },
    { material: "tripleSuperphosphate", saltIndex: 10.1, ...older },
    { material: "potash", saltIndex: 116.3, ...older },
    { material: "potassiumSulfate", saltIndex: 46.1, ...older, note: "Printed in older tables." },
    { material: "potassiumMagnesiumSulfate", saltIndex: 43.2, ...older },
    { material: "potassiumNitrate", saltIndex: 73.6, ...older },
    { material: "potassiumThiosulfate", saltIndex: 68, ...older },
    { material: "starter9189", saltIndex: 16.7, list: "older", mark: "V", source: "starter-note-2012" },
    { material: "calciumNitrate", saltIndex: 52.5, ...older },
    { material: "gypsum", saltIndex: 8.1, ...older },
    { material: "elementalSulfur", saltIndex: 0, ...older },
    { material: "magnesiumSulfate", saltIndex: 44, ...older },
    { material: "urea", saltIndex: 74.4, ...newer },
    { material: "ammoniumNitrate", saltIndex: 104, ...newer },
    { material: "ammoniumSulfate", saltIndex: 88.3, ...newer },
    { material: "monoammoniumPhosphate", saltIndex: 26.7, ...newer },
    { material: "diammoniumPhosphate", saltIndex: 29.2, ...newer },
    { material: "potassiumNitrate", saltIndex: 69.5, ...newer },
    { material: "calciumNitrate", saltIndex: 65, ...newer },
    { material: "potash", saltIndex: 116.2, ...newer },
    { material: "potassiumSulfate", saltIndex: 42.6, ...newer },
    { material: "singleSuperphosphate", saltIndex: 7.8, ...newer },
  ],
};

export interface SaltPerUnitRow extends Cited {
  readonly material: MaterialKey;
  /** The analysis the index was printed for. */
  readonly printedAnalysis: string;
  readonly relativeSaltIndex: number;
}

const eddy = { mark: "V", source: "nmsu-eddy-2017" } as const;

export const saltIndexPerUnit: ReferenceTable<SaltPerUnitRow> = {
  title: "Salt index per unit of plant nutrient",
  units: { relativeSaltIndex: "sodium nitrate = 100 per unit of nutrient" },
  basis: "equal amounts of plant nutrient",
  rows: [
    { material: "ammoniumSulfate", printedAnalysis: "21 % N", relativeSaltIndex: 53.7, ...eddy },
    { material: "ammoniumNitrate", printedAnalysis: "35 % N", relativeSaltIndex: 49.3, ...eddy },
    { material: "potash", printedAnalysis: "50 % K", relativeSaltIndex: 26.7, ...eddy },
    { material: "potassiumSulfate", printedAnalysis: "45 % K", relativeSaltIndex: 14.1, ...eddy },
    { material: "anhydrousAmmonia", printedAnalysis: "82 % N", relativeSaltIndex: 9.4, ...eddy },
    { material: "diammoniumPhosphate", printedAnalysis: "21 % N 23 % P", relativeSaltIndex: 7.5, ...eddy },
    { material: "monoammoniumPhosphate", printedAnalysis: "12 % N 27 % P", relativeSaltIndex: 6.7, ...eddy },
    { material: "singleSuperphosphate", printedAnalysis: "9 % P", relativeSaltIndex: 6.4, ...eddy },
    { material: "tripleSuperphosphate", printedAnalysis: "21 % P", relativeSaltIndex: 3.5, ...eddy },
  ],
};
