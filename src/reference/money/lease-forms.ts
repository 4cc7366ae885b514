import type { Cited } from "../table";

/** How a flexible cash rent follows the crop. */
export interface LeaseForm extends Cited {
  readonly label: string;
  readonly also: readonly string[];
  /** Share of the crop, or of what lies above the base, that leases usually name; fractions. */
  readonly usual?: { readonly from: number; readonly to: number; readonly where: string };
}

/** Flexible cash rents: the rent is settled after harvest by a rule in the lease. */
export const leaseForms = {
  shareOfGross: {
    label: "share of gross",
    also: ["share", "percent of gross", "share of gross revenue", "gross share"],
    usual: { from: 0.25, to: 0.4, where: "Iowa leases, share of gross crop value or revenue" },
    mark: "V",
    source: "iowa-c2-21-2023",
    locator: "Option A",
  },
  basePlusBonus: {
    label: "base plus bonus",
    also: ["base and bonus", "bonus", "base rent plus bonus"],
    usual: { from: 1 / 3, to: 1 / 2, where: "Iowa leases, share of the revenue above the base" },
    mark: "V",
    source: "iowa-c2-21-2023",
    locator: "Option B",
    note: "The rent does not fall below the base unless the lease says so.",
  },
  priceAndYield: {
    label: "price and yield",
    also: ["price and yield indexed", "indexed", "yield and price"],
    mark: "M",
    source: "iowa-c2-21-2023",
  },
  priceOnly: { label: "price only", also: ["price", "price indexed"], mark: "M", source: "iowa-c2-21-2023" },
  yieldOnly: { label: "yield only", also: ["yield", "yield indexed"], mark: "M", source: "iowa-c2-21-2023" },
} as const satisfies Record<string, LeaseForm>;

export type LeaseFormKey = keyof typeof leaseForms;
