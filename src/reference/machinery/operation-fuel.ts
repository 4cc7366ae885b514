import type { Cited, ReferenceTable } from "../table";

/** Diesel and power of one field operation as published. */
export interface OperationFuel extends Cited {
  readonly label: string;
  readonly also: readonly string[];
  readonly mph: number;
  readonly ptoHpPerFt: number;
  readonly galPerAc: number;
}

const missouri = { mark: "V", source: "missouri-g1208-1993" } as const;

export const operationFuels = {
  moldboardPlow8InDeep: {
    label: "moldboard plow, 8 in deep",
    also: ["moldboard plow", "plow"],
    mph: 4.5,
    ptoHpPerFt: 13.5,
    galPerAc: 1.68,
    ...missouri,
  },
  chiselPlow8InDeep: {
    label: "chisel plow, 8 in deep",
    also: ["chisel plow", "chisel"],
    mph: 5,
    ptoHpPerFt: 9.3,
    galPerAc: 1.1,
    ...missouri,
  },
  tandemDiskInCornStalks: {
    label: "tandem disk, in corn stalks",
    also: [],
    mph: 5,
    ptoHpPerFt: 3.5,
    galPerAc: 0.45,
    ...missouri,
  },
  tandemDiskOnChiseledGround: {
    label: "tandem disk, on chiseled ground",
    also: [],
    mph: 5,
    ptoHpPerFt: 4.3,
    galPerAc: 0.55,
    ...missouri,
  },
  tandemDiskOnPlowedGround: {
    label: "tandem disk, on plowed ground",
    also: [],
    mph: 5,
    ptoHpPerFt: 5.6,
    galPerAc: 0.65,
    ...missouri,
  },
  heavyOffsetDisk: { label: "heavy offset disk", also: [], mph: 5, ptoHpPerFt: 8, galPerAc: 0.95, ...missouri },
  fieldCultivator: { label: "field cultivator", also: [], mph: 5.5, ptoHpPerFt: 5.2, galPerAc: 0.6, ...missouri },
  springToothHarrow: { label: "spring-tooth harrow", also: [], mph: 5.5, ptoHpPerFt: 3.5, galPerAc: 0.4, ...missouri },
  spikeToothHarrow: { label: "spike-tooth harrow", also: [], mph: 6.5, ptoHpPerFt: 2.5, galPerAc: 0.3, ...missouri },
  rowCropCultivator: { label: "row-crop cultivator", also: [], mph: 4.5, ptoHpPerFt: 3.2, galPerAc: 0.45, ...missouri },
  rollingCultivator: { label: "rolling cultivator", also: [], mph: 5.5, ptoHpPerFt: 2.5, galPerAc: 0.35, ...missouri },
  rotaryHoe: { label: "rotary hoe", also: [], mph: 7, ptoHpPerFt: 2.3, galPerAc: 0.25, ...missouri },
  anhydrousApplicator: {
    label: "anhydrous applicator",
    also: [],
    mph: 5,
    ptoHpPerFt: 5.5,
    galPerAc: 0.65,
    ...missouri,
  },
  rowCropPlanterTilledGround: {
    label: "row-crop planter, tilled ground",
    also: ["planter", "plant"],
    mph: 4.5,
    ptoHpPerFt: 3.5,
    galPerAc: 0.5,
    ...missouri,
  },
  rowCropPlanterNoTill: {
    label: "row-crop planter, no-till",
    also: ["no-till planter"],
    mph: 4.5,
    ptoHpPerFt: 2,
    galPerAc: 0.35,
    ...missouri,
  },
} as const satisfies Record<string, OperationFuel>;

export type OperationFuelKey = keyof typeof operationFuels;

/** Tillage systems of the Nebraska table. */
export const tillageSystems = {
  plow: { label: "plow", also: ["moldboard plow", "conventional"] },
  chisel: { label: "chisel", also: ["chisel plow"] },
  disk: { label: "disk", also: ["disc", "double disk"] },
  ridgePlant: { label: "ridge plant", also: ["ridge till", "ridge"] },
  stripTill: { label: "strip till", also: ["strip"] },
  noTill: { label: "no-till", also: ["no till", "zero till"] },
} as const;

export type TillageSystemKey = keyof typeof tillageSystems;

export interface SystemFuelRow extends Cited {
  readonly system: TillageSystemKey;
  readonly operation: string;
  /** Passes over the field that the value holds. */
  readonly passes: number;
  readonly galPerAc: number;
}

const nebraska = { mark: "V", source: "unl-fuel-requirements" } as const;

export const systemFuel = {
  title: "Diesel of row-crop tillage systems",
  units: { passes: "passes", galPerAc: "gal/ac" },
  basis: "corn, fertilizer knifed in; harvest not included",
  rows: [
    { system: "ridgePlant", operation: "shred stalks", passes: 1, galPerAc: 0.55, ...nebraska },
    { system: "plow", operation: "moldboard plow", passes: 1, galPerAc: 2.25, ...nebraska },
    { system: "chisel", operation: "chisel plow", passes: 1, galPerAc: 1.05, ...nebraska },
    { system: "plow", operation: "knife in fertilizer", passes: 1, galPerAc: 0.6, ...nebraska },
    { system: "chisel", operation: "knife in fertilizer", passes: 1, galPerAc: 0.6, ...nebraska },
    { system: "disk", operation: "knife in fertilizer", passes: 1, galPerAc: 0.6, ...nebraska },
    { system: "ridgePlant", operation: "knife in fertilizer", passes: 1, galPerAc: 0.6, ...nebraska },
    { system: "stripTill", operation: "knife in fertilizer", passes: 1, galPerAc: 1.0, ...nebraska },
    { system: "noTill", operation: "knife in fertilizer", passes: 1, galPerAc: 0.6, ...nebraska },
    { system: "plow", operation: "disk", passes: 1, galPerAc: 0.74, ...nebraska },
    { system: "disk", operation: "disk", passes: 1, galPerAc: 0.74, ...nebraska },
    { system: "plow", operation: "disk or field cultivate", passes: 1, galPerAc: 0.74, ...nebraska },
    { system: "chisel", operation: "disk or field cultivate", passes: 1, galPerAc: 0.74, ...nebraska },
    { system: "disk", operation: "disk or field cultivate", passes: 1, galPerAc: 0.74, ...nebraska },
    { system: "plow", operation: "plant", passes: 1, galPerAc: 0.52, ...nebraska },
    { system: "chisel", operation: "plant", passes: 1, galPerAc: 0.52, ...nebraska },
    { system: "disk", operation: "plant", passes: 1, galPerAc: 0.52, ...nebraska },
    { system: "ridgePlant", operation: "plant", passes: 1, galPerAc: 0.68, ...nebraska },
    { system: "stripTill", operation: "plant", passes: 1, galPerAc: 0.52, ...nebraska },
    { system: "noTill", operation: "plant", passes: 1, galPerAc: 0.52, ...nebraska },
    { system: "plow", operation: "row cultivate", passes: 1, galPerAc: 0.43, ...nebraska },
    { system: "chisel", operation: "row cultivate", passes: 1, galPerAc: 0.43, ...nebraska },
    { system: "ridgePlant", operation: "row cultivate", passes: 2, galPerAc: 0.86, ...nebraska },
    { system: "disk", operation: "spray", passes: 1, galPerAc: 0.11, ...nebraska },
    { system: "stripTill", operation: "spray", passes: 2, galPerAc: 0.23, ...nebraska },
    { system: "noTill", operation: "spray", passes: 2, galPerAc: 0.23, ...nebraska },
  ],
} as const satisfies ReferenceTable<SystemFuelRow>;
