import type { Cited, ReferenceTable } from "../table";

export const pipeKinds = {
  singleWall: { label: "single wall", also: ["corrugated", "corrugated plastic", "tubing", "plastic tubing"] },
  dualWall: { label: "dual wall", also: ["smooth wall", "smooth inside", "smooth"] },
  tile: { label: "clay or concrete tile", also: ["tile", "clay tile", "concrete tile", "clay", "concrete"] },
} as const;
export type PipeKindKey = keyof typeof pipeKinds;

export interface RoughnessRow extends Cited {
  readonly pipe: PipeKindKey;
  readonly fromIn: number;
  readonly toIn: number;
  readonly manningN: number;
}

/** Roughness of drain pipe. Sizes between two rows take the rougher one. */
export const roughnesses = {
  title: "Roughness of drain pipe (Manning n)",
  units: { fromIn: "in", toIn: "in", manningN: "" },
  basis: "inside diameter, pipe flowing full",
  rows: [
    { pipe: "singleWall", fromIn: 3, toIn: 8, manningN: 0.015, mark: "M", source: "asae-ep260" },
    { pipe: "singleWall", fromIn: 10, toIn: 12, manningN: 0.017, mark: "M", source: "asae-ep260" },
    { pipe: "singleWall", fromIn: 15, toIn: 36, manningN: 0.02, mark: "M", source: "asae-ep260" },
    { pipe: "dualWall", fromIn: 4, toIn: 36, manningN: 0.012, mark: "M", source: "dual-wall-practice" },
    { pipe: "tile", fromIn: 4, toIn: 24, manningN: 0.013, mark: "M", source: "nrcs-neh-650-14" },
  ],
} as const satisfies ReferenceTable<RoughnessRow>;

/** Inside diameters that pipe is sold in. */
export const stockSizesIn = [3, 4, 5, 6, 8, 10, 12, 15, 18, 24, 30, 36] as const;

export const sediments = {
  none: { label: "no fine sand or silt", also: ["none", "no silt", "clean", "no"] },
  silt: { label: "fine sand or silt may enter", also: ["silt", "fine sand", "fine sand or silt", "yes"] },
} as const;
export type SedimentKey = keyof typeof sediments;

export interface LeastVelocityRow extends Cited {
  readonly sediment: SedimentKey;
  readonly feetPerSecond: number;
}

/** Slowest flow that keeps a drain clean. */
export const leastVelocities = {
  title: "Least velocity in a drain",
  units: { feetPerSecond: "ft/s" },
  basis: "pipe flowing full",
  rows: [
    { sediment: "none", feetPerSecond: 0.5, mark: "V", source: "uw-madison-tile" },
    { sediment: "silt", feetPerSecond: 1.4, mark: "V", source: "uw-madison-tile" },
  ],
} as const satisfies ReferenceTable<LeastVelocityRow>;

export interface MostVelocityRow extends Cited {
  readonly soil: string;
  readonly feetPerSecond: number;
}

/** Fastest flow that does not wash soil from around an unprotected drain. */
export const mostVelocities = {
  title: "Most velocity in a drain without protection",
  units: { feetPerSecond: "ft/s" },
  basis: "pipe flowing full, by the soil around it",
  rows: [
    { soil: "sand and sandy loam", feetPerSecond: 3.5, mark: "M", source: "nrcs-neh-650-14" },
    { soil: "silt and silt loam", feetPerSecond: 5, mark: "M", source: "nrcs-neh-650-14" },
    { soil: "silty clay loam", feetPerSecond: 6, mark: "M", source: "nrcs-neh-650-14" },
    { soil: "clay and clay loam", feetPerSecond: 7, mark: "M", source: "nrcs-neh-650-14" },
    { soil: "coarse sand or gravel", feetPerSecond: 9, mark: "M", source: "nrcs-neh-650-14" },
  ],
} as const satisfies ReferenceTable<MostVelocityRow>;

export interface TubeRadiusRow extends Cited {
  readonly key: "outside" | "effective";
  readonly radiusIn: number;
}

/** Radius of a lateral as the spacing formula takes it. */
export const tubeRadii = {
  title: "Radius of 4-inch tubing",
  units: { radiusIn: "in" },
  basis: "outside; and the smaller one that stands for the entry loss of its perforations",
  rows: [
    { key: "outside", radiusIn: 2, mark: "M", source: "usual-tube-radius" },
    { key: "effective", radiusIn: 0.2, mark: "M", source: "usual-tube-radius", note: "0.0167 ft, 5 mm." },
  ],
} as const satisfies ReferenceTable<TubeRadiusRow>;
