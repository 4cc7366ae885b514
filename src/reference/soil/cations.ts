import type { Cited } from "../table";

/** ppm of a cation in one meq/100 g: half the lb/ac figures 400, 240, 782 and 460. */
export const cationPpmPerMeq = {
  calcium: 200,
  magnesium: 120,
  potassium: 391,
  sodium: 230,
  mark: "V",
  source: "clemson-cec",
} as const satisfies Cited & Record<string, unknown>;

/** Acidity from a buffer, meq/100 g: slope × (neutral − buffer pH). */
export const acidityBuffers = {
  adamsEvans: {
    label: "Adams-Evans",
    also: ["Adams Evans", "AE"],
    slope: 8,
    neutral: 8,
    mark: "V",
    source: "clemson-cec",
  },
  smp: {
    label: "SMP",
    also: ["Shoemaker", "lime test index buffer"],
    slope: 12,
    neutral: 7,
    mark: "V",
    source: "ohio-valley-cec",
    note: "Printed for soil pH to 6.4.",
  },
} as const satisfies Record<string, Cited & { label: string; also: readonly string[]; slope: number; neutral: number }>;

export type AcidityBufferKey = keyof typeof acidityBuffers;
