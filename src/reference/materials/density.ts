import type { Cited, ReferenceTable } from "../table";
import type { MaterialKey } from "./materials";

export interface LiquidDensityRow extends Cited {
  readonly material: MaterialKey;
  readonly lbPerGal: number;
}

const sheet = { mark: "V", source: "fertilizer-physical-sheet" } as const;
const trade = { mark: "M", source: "fertilizer-trade-grades" } as const;

export const liquidDensity: ReferenceTable<LiquidDensityRow> = {
  title: "Weight of a gallon of liquid fertilizer",
  units: { lbPerGal: "lb/gal" },
  basis: "at about 60 F; nitrogen solutions change about 0.03 lb/gal for each 10 F",
  rows: [
    { material: "anhydrousAmmonia", lbPerGal: 5.15, ...trade, note: "Liquid under pressure." },
    { material: "uan28", lbPerGal: 10.67, ...sheet, note: "Field rule: 10.6 to 10.7 lb/gal, 3.0 lb N/gal." },
    {
      material: "uan30",
      lbPerGal: 10.9,
      mark: "V",
      source: "vce-spes199",
      note: "From 10.81 at 90 F to 10.99 at 30 F.",
    },
    { material: "uan32", lbPerGal: 11.06, ...sheet, note: "3.54 lb N/gal." },
    { material: "ammoniumSulfateSolution", lbPerGal: 10.1, ...trade },
    { material: "ammoniumThiosulfate", lbPerGal: 11.04, ...sheet },
    { material: "ammoniumPolyphosphate", lbPerGal: 11.65, ...sheet },
    { material: "potassiumThiosulfate", lbPerGal: 12.2, ...trade },
    { material: "starter7217", lbPerGal: 11.2, ...sheet },
    { material: "starter9189", lbPerGal: 11.1, ...trade, note: "One extension page prints 11.7." },
    { material: "zincAmmonia", lbPerGal: 10.4, ...sheet },
  ],
};

export interface BulkDensityRow extends Cited {
  readonly material: MaterialKey;
  readonly lowLbPerCuFt: number;
  readonly highLbPerCuFt: number;
  readonly kind?: string;
}

export const bulkDensity: ReferenceTable<BulkDensityRow> = {
  title: "Weight of a cubic foot of dry fertilizer",
  units: { lowLbPerCuFt: "lb/cu ft", highLbPerCuFt: "lb/cu ft" },
  basis: "loose, as poured",
  rows: [
    { material: "urea", lowLbPerCuFt: 44, highLbPerCuFt: 48, ...sheet },
    { material: "ammoniumNitrate", lowLbPerCuFt: 54, highLbPerCuFt: 58, ...sheet },
    { material: "ammoniumSulfate", kind: "crystal", lowLbPerCuFt: 63, highLbPerCuFt: 66, ...sheet },
    { material: "ammoniumSulfate", kind: "granular", lowLbPerCuFt: 47, highLbPerCuFt: 53, ...sheet },
    { material: "monoammoniumPhosphate", lowLbPerCuFt: 60, highLbPerCuFt: 65, ...sheet },
    { material: "diammoniumPhosphate", lowLbPerCuFt: 55, highLbPerCuFt: 60, ...sheet },
    { material: "tripleSuperphosphate", lowLbPerCuFt: 65, highLbPerCuFt: 75, ...sheet },
    { material: "singleSuperphosphate", lowLbPerCuFt: 68, highLbPerCuFt: 68, ...trade },
    { material: "potash", lowLbPerCuFt: 58, highLbPerCuFt: 65, ...sheet },
    { material: "potassiumSulfate", lowLbPerCuFt: 75, highLbPerCuFt: 85, ...trade },
    { material: "potassiumMagnesiumSulfate", lowLbPerCuFt: 90, highLbPerCuFt: 98, ...sheet },
    { material: "gypsum", lowLbPerCuFt: 65, highLbPerCuFt: 65, ...trade },
    { material: "elementalSulfur", lowLbPerCuFt: 75, highLbPerCuFt: 75, ...trade },
  ],
};
