import { needed, refuse } from "../../fault";
import { crops, type CropKey } from "../../../reference/crops";
import type { CecLine, RateForm, ReportClassKey } from "../../../reference/guides";

/** What a rule is read at. */
export interface RateReadings {
  /** Soil test in the guide's unit; NaN where the guide is read at a class. */
  readonly test: number;
  /** The class a laboratory printed, where the guide is read at that; otherwise null. */
  readonly reportClass: ReportClassKey | null;
  /** Yield in the rule's own unit. */
  readonly yieldPerAc: number;
  readonly crop: CropKey | null;
  /** What the crop takes off; null where no removal of the guide's is held for it. */
  readonly removalLbPerAc: number | null;
  readonly cecMeq: number | null;
  readonly withBuildup: boolean;
  /** Years to raise the test over; null: the guide's, where it prints one span only. */
  readonly years: number | null;
}

/** A rate taken apart. buildup + maintenance = rate before rounding. */
export interface RateParts {
  /** "" where the guide names no class. */
  readonly zone: string;
  /** In the test's unit; null where the guide names none. */
  readonly criticalLevel: number | null;
  /** Test from which nothing is recommended; null where rates never end. */
  readonly maintenanceLimit: number | null;
  readonly buildup: number;
  readonly maintenance: number;
  /** The build-up that was left out on request. */
  readonly droppedBuildup: number;
  /** Crop removal is part of the rate. */
  readonly restsOnRemoval?: boolean;
  /** Why there is no rate: none is held for the zone, or the years of build-up are wanted first. */
  readonly missing?: "rate" | "years";
}

/** lb/ac that the crop takes off. Not available where the guide's removal set does not print the crop. */
export function removedByCrop({ removalLbPerAc, crop }: RateReadings): number {
  if (removalLbPerAc !== null) return removalLbPerAc;
  refuse({
    kind: "notPublished",
    where: "the guide's removal set, as far as we hold it,",
    what: `removal for ${crop === null ? "that crop" : crops[crop].label}, which its maintenance rate rests on`,
    instead: "REMOVAL works it out from a set you name.",
  });
}

/** The value of a number that may rise with CEC. Waits for the CEC when it does. */
export function atCec({ base, perCec }: CecLine, cecMeq: number | null): number {
  if (perCec === 0) return base;
  return base + perCec * needed("cec", cecMeq);
}

export type FormOf<Kind extends RateForm["kind"]> = Extract<RateForm, { kind: Kind }>;
