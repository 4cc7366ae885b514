import type { CropKey } from "../crops";
import type { NeedRule } from "./guide";
import type { ExtractantKey } from "./words";

const zones = { below: "below critical", above: "at or above critical" } as const;

/** Classes the northern guides print beside their equations. */
const classNames = ["very low", "low", "medium", "high", "very high"] as const;
export const northernClasses = (upTo: readonly number[]) =>
  classNames.map((zone, place) => [zone, upTo[place] ?? null] as const);
export const olsenClasses = northernClasses([3, 7, 11, 15]);
export const brayClasses = northernClasses([5, 10, 15, 20]);

/** (rise − fall × test) × yield goal, nothing from the level where it crosses zero. */
export function northernRule(
  crops: readonly CropKey[],
  extractant: ExtractantKey,
  rise: number,
  fall: number,
  more: Partial<NeedRule> = {},
): NeedRule {
  return {
    crops,
    extractants: [extractant],
    form: {
      kind: "plane",
      constant: 0,
      perYield: rise,
      perTest: 0,
      perYieldTest: -fall,
      critical: null,
      least: 0,
      zones,
    },
    mark: "M",
    source: "sdsu-ec750",
    ...more,
  };
}

/** Phosphate equations that the northern states share. */
export const sharedPhosphate = {
  cornOlsen: northernRule(["corn"], "olsen", 0.7, 0.044, { classes: olsenClasses }),
  cornBray: northernRule(["corn"], "bray", 0.7, 0.035, { classes: brayClasses }),
  soybeanOlsen: northernRule(["soybean"], "olsen", 1.55, 0.14),
  soybeanBray: northernRule(["soybean"], "bray", 1.55, 0.1),
} as const;
