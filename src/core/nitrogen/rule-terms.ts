import { needed, refuseArgument, waitFor } from "../fault";
import { within } from "../limit";
import type { NitrateTerm, NitrogenRule, TextureKey } from "../../reference/nitrogen";

/** Highest readings that can be real. */
const highest = { ppm: { max: 100, slip: 3.6 }, "lb/ac": { max: 600, slip: 10 } } as const;

/** The yield goal in the rule's own unit. */
export function yieldUnits(rule: NitrogenRule, yieldGoal: number): number {
  return yieldGoal * (rule.yieldUnitsPer ?? 1);
}

interface NitrateRead {
  readonly lbPerAc: number;
  readonly read: number | null;
  readonly isUsual: boolean;
}

/** Nitrogen that the soil nitrate stands for; the guide's own figure where it prints one for a field not tested. */
export function nitrateTerm(
  { nitrate }: NitrogenRule,
  { soilNitrate, soil }: { readonly soilNitrate: number | null; readonly soil: TextureKey | null },
): NitrateRead {
  if (!nitrate) return { lbPerAc: 0, read: null, isUsual: false };
  const read = soilNitrate ?? usualNitrate(nitrate, soil);
  within("soilNitrate", read, { min: 0, ...highest[nitrate.unit], unit: nitrate.unit });
  return { lbPerAc: read * nitrate.lbPerUnit, read, isUsual: soilNitrate === null };
}

function usualNitrate({ usual }: NitrateTerm, soil: TextureKey | null): number {
  if (!usual) waitFor("soilNitrate");
  if (usual.sandy === usual.heavier) return usual.heavier;
  if (soil === null) waitFor("soilNitrate, or soil for the guide's usual nitrate");
  return soil === "sandy" ? usual.sandy : usual.heavier;
}

/** Nitrogen that the guide counts on from organic matter. */
export function organicTerm({ organic }: NitrogenRule, yields: number, organicMatterPct: number | null): number {
  if (!organic) return 0;
  const pct = needed("organicMatter", organicMatterPct);
  const counted = organic.counted ? Math.min(Math.max(pct, organic.counted.min), organic.counted.max) : pct;
  return counted * (organic.lbPerPct + organic.lbPerPctYield * yields);
}

/** Taken off for each full percent of organic matter above a limit. */
export function richOrganicLb({ richOrganic }: NitrogenRule, organicMatterPct: number | null): number {
  if (!richOrganic) return 0;
  const pct = needed("organicMatter", organicMatterPct);
  return Math.max(0, Math.floor(pct - richOrganic.above)) * richOrganic.lbPerPct;
}

/** Other credits as far as the guide counts them. */
export function otherCredits({ otherCreditsUpTo }: NitrogenRule, creditsLbPerAc: number | null): number {
  const credits = creditsLbPerAc ?? 0;
  if (otherCreditsUpTo === 0 && credits > 0) {
    refuseArgument("credits", "this test has read manure, legume and earlier nitrogen already; leave it blank.");
  }
  return Math.min(credits, otherCreditsUpTo ?? credits);
}
