import type { Cited, ReferenceTable } from "../table";

/** Soil textures whose conductivity is on record. */
export const conductivityTextures = {
  sand: { label: "sand", also: [] },
  loamySand: { label: "loamy sand", also: [] },
  sandyLoam: { label: "sandy loam", also: [] },
  siltLoam: { label: "silt loam", also: [] },
  loam: { label: "loam", also: [] },
  sandyClayLoam: { label: "sandy clay loam", also: [] },
  siltyClayLoam: { label: "silty clay loam", also: [] },
  clayLoam: { label: "clay loam", also: [] },
  sandyClay: { label: "sandy clay", also: [] },
  siltyClay: { label: "silty clay", also: [] },
  clay: { label: "clay", also: [] },
} as const;
export type ConductivityTextureKey = keyof typeof conductivityTextures;

export interface ConductivityRow extends Cited {
  readonly texture: ConductivityTextureKey;
  readonly metersPerSecond: number;
}

const clapp = { mark: "M", source: "clapp-hornberger-1978" } as const;

/** How fast water moves through a saturated soil, on average of its texture. One field may be ten times another. */
export const conductivities = {
  title: "Saturated conductivity by soil texture",
  units: { metersPerSecond: "m/s" },
  basis: "averages over many soils; a hole bored and timed in the field is better",
  rows: [
    { texture: "sand", metersPerSecond: 176e-6, ...clapp },
    { texture: "loamySand", metersPerSecond: 156e-6, ...clapp },
    { texture: "sandyLoam", metersPerSecond: 34.7e-6, ...clapp },
    { texture: "siltLoam", metersPerSecond: 7.2e-6, ...clapp },
    { texture: "loam", metersPerSecond: 6.95e-6, ...clapp },
    { texture: "sandyClayLoam", metersPerSecond: 6.3e-6, ...clapp },
    { texture: "siltyClayLoam", metersPerSecond: 1.7e-6, ...clapp },
    { texture: "clayLoam", metersPerSecond: 2.45e-6, ...clapp },
    { texture: "sandyClay", metersPerSecond: 2.17e-6, ...clapp },
    { texture: "siltyClay", metersPerSecond: 1.03e-6, ...clapp },
    { texture: "clay", metersPerSecond: 1.28e-6, ...clapp },
  ],
} as const satisfies ReferenceTable<ConductivityRow>;
