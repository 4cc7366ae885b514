import { refuseArgument, waitFor } from "../fault";
import { within } from "../limit";
import type { LossCropKey } from "../../reference/harvest/loss-crops";
import { bushelCount, type BushelCount } from "./harvest-loss";
import { harvestLimits } from "./harvest-limits";

export interface PlaceCounts {
  readonly crop: LossCropKey;
  /** Seeds per square foot under the standing crop. */
  readonly standingPerSqFt: number;
  /** Between the cutterbar and the discharge, where only the header has passed. */
  readonly headerPerSqFt: number;
  /** Behind the machine, where it drops its residue. */
  readonly behindPerSqFt: number;
  readonly seedsPerLb: number | null;
  /** null for either: the residue is spread over the whole width. */
  readonly headerWidthFt: number | null;
  readonly residueWidthFt: number | null;
}

export interface LossByPlace {
  readonly beforeHarvestBuPerAc: number;
  readonly headerBuPerAc: number;
  readonly machineBuPerAc: number;
  readonly totalBuPerAc: number;
  /** How many times narrower than the header the residue falls. */
  readonly narrowing: number;
  readonly count: BushelCount;
}

/**
 * Where the seeds on the ground were lost: before harvest, at the header, or in the machine.
 *
 *   header = header zone - standing
 *   machine = (behind - header zone) / (header width / residue width)
 *
 * @source hofman-grain-losses
 */
export function lossByPlace(counts: PlaceCounts): LossByPlace {
  within("standing", counts.standingPerSqFt, harvestLimits.seedsOnGround);
  within("header", counts.headerPerSqFt, harvestLimits.seedsOnGround);
  within("behind", counts.behindPerSqFt, harvestLimits.seedsOnGround);
  if (counts.headerPerSqFt < counts.standingPerSqFt) refuseOrder("header", "under the standing crop");
  if (counts.behindPerSqFt < counts.headerPerSqFt) refuseOrder("behind", "in the header zone");
  const count = bushelCount(counts.crop, counts.seedsPerLb);
  const narrowing = narrowingOf(counts);

  const beforeHarvestBuPerAc = counts.standingPerSqFt / count.seedsPerSqFt;
  const headerBuPerAc = (counts.headerPerSqFt - counts.standingPerSqFt) / count.seedsPerSqFt;
  const machineBuPerAc = (counts.behindPerSqFt - counts.headerPerSqFt) / narrowing / count.seedsPerSqFt;
  return {
    beforeHarvestBuPerAc,
    headerBuPerAc,
    machineBuPerAc,
    totalBuPerAc: beforeHarvestBuPerAc + headerBuPerAc + machineBuPerAc,
    narrowing,
    count,
  };
}

function narrowingOf({ headerWidthFt, residueWidthFt }: PlaceCounts): number {
  if (headerWidthFt === null && residueWidthFt === null) return 1;
  if (headerWidthFt === null) return waitFor("headerWidth");
  if (residueWidthFt === null) return waitFor("residueWidth");
  within("headerWidth", headerWidthFt, harvestLimits.machineWidth);
  within("residueWidth", residueWidthFt, { ...harvestLimits.machineWidth, max: headerWidthFt });
  return headerWidthFt / residueWidthFt;
}

function refuseOrder(argument: string, where: string): never {
  refuseArgument(argument, `fewer seeds than ${where}: count both again.`);
}
