import type { CropKey } from "../crops";
import type { Cited } from "../table";

/** How a region reckons sulfur, lb S/ac. */
export type SulfurForm =
  /** perYield × goal − perPct × organic matter − profile sulfate − other credits. */
  | { readonly kind: "line"; readonly perYield: number; readonly perPct: number }
  | { readonly kind: "fixed"; readonly lb: number; readonly low: number; readonly high: number }
  /** A rate below a percentage of organic matter, none from it up. */
  | {
      readonly kind: "organic";
      readonly underPct: number;
      readonly lb: number;
      readonly low: number;
      readonly high: number;
    }
  /** Says only where a crop responds: sand, little organic matter, a test below this. */
  | { readonly kind: "respondsBelow"; readonly testPpm: number; readonly upToPct: number };

export interface SulfurRule extends Cited {
  readonly guide: SulfurGuideKey;
  readonly crops: readonly CropKey[];
  /** Holds on sand only, or on all other soils only; left out: on any. */
  readonly on?: "sand" | "other";
  readonly form: SulfurForm;
}

export const sulfurGuides = {
  IA: { label: "IA", also: ["Iowa"] },
  KS: { label: "KS", also: ["Kansas"] },
  MN: { label: "MN", also: ["Minnesota"] },
  ND: { label: "ND", also: ["North Dakota"] },
  NE: { label: "NE", also: ["Nebraska"] },
} as const;

export type SulfurGuideKey = keyof typeof sulfurGuides;

export const sulfurRules: readonly SulfurRule[] = [
  {
    guide: "KS",
    crops: ["wheat"],
    form: { kind: "line", perYield: 0.6, perPct: 2.5 },
    mark: "V",
    source: "ksu-wheat-sulfur",
  },
  {
    guide: "KS",
    crops: ["corn", "sorghum"],
    form: { kind: "line", perYield: 0.2, perPct: 2.5 },
    mark: "M",
    source: "ksu-mf2586",
  },
  {
    guide: "KS",
    crops: ["soybean"],
    form: { kind: "line", perYield: 0.4, perPct: 2.5 },
    mark: "M",
    source: "ksu-mf2586",
  },
  {
    guide: "MN",
    crops: ["corn", "wheat", "springWheat"],
    on: "sand",
    form: { kind: "fixed", lb: 25, low: 25, high: 25 },
    mark: "V",
    source: "umn-sulfur",
    note: "Every year, broadcast.",
  },
  {
    guide: "MN",
    crops: ["corn"],
    on: "other",
    form: { kind: "organic", underPct: 4, lb: 12.5, low: 10, high: 15 },
    mark: "V",
    source: "umn-sulfur",
  },
  {
    guide: "NE",
    crops: ["corn", "sorghum"],
    form: { kind: "respondsBelow", testPpm: 8, upToPct: 1 },
    mark: "V",
    source: "unl-postpone-2016",
  },
  {
    guide: "NE",
    crops: ["alfalfa"],
    form: { kind: "respondsBelow", testPpm: 5, upToPct: 1 },
    mark: "V",
    source: "unl-postpone-2016",
  },
  {
    guide: "ND",
    crops: ["springWheat", "corn"],
    form: { kind: "fixed", lb: 10, low: 10, high: 10 },
    mark: "V",
    source: "ndsu-costs-2022",
    note: "At least this, as sulfate. The sulfate soil test has little value there.",
  },
  {
    guide: "ND",
    crops: ["canola"],
    form: { kind: "fixed", lb: 25, low: 20, high: 30 },
    mark: "M",
    source: "ndsu-costs-2022",
    note: "Always, and as sulfate: elemental sulfur does not work in time.",
  },
  {
    guide: "IA",
    crops: ["alfalfa"],
    form: { kind: "fixed", lb: 25, low: 20, high: 30 },
    mark: "M",
    source: "isu-alfalfa-sulfur",
    note: "On fields that are short of sulfur.",
  },
];
