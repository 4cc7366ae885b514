import type { Cited, ReferenceTable } from "../table";

export const storageTables = {
  midwest: { label: "Midwest", also: ["Midwest table"] },
  ndsu: { label: "North Dakota", also: ["NDSU", "ND"] },
  arkansas: { label: "Arkansas", also: ["AR"] },
} as const;
export type StorageTableKey = keyof typeof storageTables;

export interface StorageTimeRow extends Cited {
  readonly table: StorageTableKey;
  readonly moisturePct: number;
  readonly temperatureF: number;
  readonly days: number;
}

const midwest = { table: "midwest", mark: "V", source: "midwest-storage-time" } as const;
const ndsu = { table: "ndsu", mark: "V", source: "ndsu-storage-2010" } as const;
const arkansas = { table: "arkansas", mark: "V", source: "arkansas-storage-2014" } as const;

/** Days that shelled corn keeps until it has lost half a percent of its dry matter. */
export const storageTimes = {
  title: "Storage time of shelled corn",
  units: { moisturePct: "%", temperatureF: "°F", days: "days" },
  basis: "to 0.5 % loss of dry matter, at the moisture and temperature of the grain",
  rows: [
    { moisturePct: 13, temperatureF: 40, days: 4500, ...midwest },
    { moisturePct: 13, temperatureF: 50, days: 2520, ...midwest },
    { moisturePct: 13, temperatureF: 60, days: 1410, ...midwest },
    { moisturePct: 13, temperatureF: 70, days: 780, ...midwest },
    { moisturePct: 13, temperatureF: 80, days: 450, ...midwest },
    { moisturePct: 14, temperatureF: 40, days: 1800, ...midwest },
    { moisturePct: 14, temperatureF: 50, days: 1020, ...midwest },
    { moisturePct: 14, temperatureF: 60, days: 570, ...midwest },
    { moisturePct: 14, temperatureF: 70, days: 330, ...midwest },
    { moisturePct: 14, temperatureF: 80, days: 180, ...midwest },
    { moisturePct: 15, temperatureF: 40, days: 864, ...midwest },
    { moisturePct: 15, temperatureF: 50, days: 384, ...midwest },
    { moisturePct: 15, temperatureF: 60, days: 225, ...midwest },
    { moisturePct: 15, temperatureF: 70, days: 125, ...midwest },
    { moisturePct: 15, temperatureF: 80, days: 69, ...midwest },
    { moisturePct: 16, temperatureF: 40, days: 763, ...midwest },
    { moisturePct: 16, temperatureF: 50, days: 339, ...midwest },
    { moisturePct: 16, temperatureF: 60, days: 151, ...midwest },
    { moisturePct: 16, temperatureF: 70, days: 85, ...midwest },
    { moisturePct: 16, temperatureF: 80, days: 47, ...midwest },
    { moisturePct: 18, temperatureF: 40, days: 291, ...midwest },
    { moisturePct: 18, temperatureF: 50, days: 130, ...midwest },
    { moisturePct: 18, temperatureF: 60, days: 58, ...midwest },
    { moisturePct: 18, temperatureF: 70, days: 32, ...midwest },
    { moisturePct: 18, temperatureF: 80, days: 18, ...midwest },
    { moisturePct: 20, temperatureF: 40, days: 144, ...midwest },
    { moisturePct: 20, temperatureF: 50, days: 64, ...midwest },
    { moisturePct: 20, temperatureF: 60, days: 29, ...midwest },
    { moisturePct: 20, temperatureF: 70, days: 16, ...midwest },
    { moisturePct: 20, temperatureF: 80, days: 9, ...midwest },
    { moisturePct: 22, temperatureF: 40, days: 85, ...midwest },
    { moisturePct: 22, temperatureF: 50, days: 38, ...midwest },
    { moisturePct: 22, temperatureF: 60, days: 17, ...midwest },
    { moisturePct: 22, temperatureF: 70, days: 10, ...midwest },
    { moisturePct: 22, temperatureF: 80, days: 6, ...midwest },
    { moisturePct: 24, temperatureF: 40, days: 57, ...midwest },
    { moisturePct: 24, temperatureF: 50, days: 26, ...midwest },
    { moisturePct: 24, temperatureF: 60, days: 11, ...midwest },
    { moisturePct: 24, temperatureF: 70, days: 7, ...midwest },
    { moisturePct: 24, temperatureF: 80, days: 4, ...midwest },
    { moisturePct: 28, temperatureF: 40, days: 33, ...midwest },
    { moisturePct: 28, temperatureF: 50, days: 15, ...midwest },
    { moisturePct: 28, temperatureF: 60, days: 7, ...midwest },
    { moisturePct: 28, temperatureF: 70, days: 4, ...midwest },
    { moisturePct: 28, temperatureF: 80, days: 3, ...midwest },
    { moisturePct: 20, temperatureF: 60, days: 25, ...ndsu },
    { moisturePct: 20, temperatureF: 50, days: 50, ...ndsu },
    { moisturePct: 20, temperatureF: 40, days: 90, ...ndsu },
    { moisturePct: 20, temperatureF: 30, days: 300, ...ndsu },
    { moisturePct: 19, temperatureF: 60, days: 35, ...ndsu },
    { moisturePct: 18, temperatureF: 60, days: 50, ...ndsu },
    { moisturePct: 17, temperatureF: 60, days: 75, ...ndsu },
    { moisturePct: 16, temperatureF: 70, days: 70, ...ndsu },
    { moisturePct: 16, temperatureF: 60, days: 120, ...ndsu },
    { moisturePct: 16, temperatureF: 50, days: 230, ...ndsu },
    { moisturePct: 15, temperatureF: 60, days: 275, ...arkansas },
    { moisturePct: 17, temperatureF: 60, days: 88, ...arkansas },
    { moisturePct: 19, temperatureF: 60, days: 39, ...arkansas },
  ],
} as const satisfies ReferenceTable<StorageTimeRow>;

export interface SafeMoistureRow extends Cited {
  /** Longest time it is for; null: no end. */
  readonly monthsAtMost: number | null;
  readonly moisturePct: number;
}

/** Moisture at which corn keeps for a number of months. */
export const safeMoistures = {
  title: "Corn moisture for storage",
  units: { monthsAtMost: "months", moisturePct: "%" },
  basis: "sound shelled corn, cooled and aerated",
  rows: [
    { monthsAtMost: 6, moisturePct: 15.5, mark: "V", source: "purdue-storage-moisture" },
    { monthsAtMost: 12, moisturePct: 14, mark: "V", source: "purdue-storage-moisture" },
    { monthsAtMost: null, moisturePct: 13, mark: "V", source: "purdue-storage-moisture" },
  ],
} as const satisfies ReferenceTable<SafeMoistureRow>;

/** Constants of the Chung-Pfost equation for shelled corn. */
export const cornEquilibrium = {
  title: "Chung-Pfost constants of shelled corn",
  units: { scale: "", moistureFactor: "per % of dry weight", temperatureShiftC: "°C" },
  basis: "moisture in percent of dry weight, temperature in °C",
  rows: [{ scale: 312.4, moistureFactor: 0.169_58, temperatureShiftC: 30.205, mark: "M", source: "asabe-d245" }],
} as const satisfies ReferenceTable<
  Cited & { readonly scale: number; readonly moistureFactor: number; readonly temperatureShiftC: number }
>;

export const peakGrains = {
  corn: { label: "corn", also: ["shelled corn", "maize"] },
  soybean: { label: "soybean", also: ["soy", "bean"] },
  wheat: { label: "wheat", also: ["winter wheat", "spring wheat"] },
} as const;
export type PeakGrainKey = keyof typeof peakGrains;

export interface PeakRow extends Cited {
  readonly grain: PeakGrainKey;
  /** Height of the peak over the radius of the bin. */
  readonly shareOfRadius: number;
}

/** Height of the peak that grain makes under the spout. */
export const grainPeaks = {
  title: "Height of the peak in a round bin",
  units: { shareOfRadius: "of the radius" },
  basis: "dry, clean grain filled from the middle",
  rows: [
    { grain: "corn", shareOfRadius: 0.4, mark: "V", source: "iowa-grain-warehouse" },
    { grain: "soybean", shareOfRadius: 0.5, mark: "V", source: "iowa-grain-warehouse" },
    { grain: "wheat", shareOfRadius: 0.47, mark: "M", source: "grain-angle" },
  ],
} as const satisfies ReferenceTable<PeakRow>;
