import { refuse } from "../fault";
import { within } from "../limit";
import { inchPerFoot, squareFootPerAcre } from "../units/units";
import {
  leastVelocities,
  mostVelocities,
  roughnesses,
  stockSizesIn,
  type LeastVelocityRow,
  type SedimentKey,
} from "../../reference/drainage/pipes";
import type { Cited } from "../../reference/table";
import { drainageLimits } from "./drainage-limits";
import {
  acresAt,
  cubicFootPerSecondPerAcreInch,
  diameterFor,
  flowAt,
  fullFlowVelocity,
  gradeFor,
  roughnessOf,
  type PipeWall,
} from "./pipe-flow";

export interface PipeRun {
  readonly diameterIn: number;
  readonly gradePct: number;
  readonly rateInPerDay: number;
  readonly wall: PipeWall;
}

export interface PipeCapacity {
  readonly acres: number;
  readonly velocityFtPerS: number;
  readonly flowCuFtPerS: number;
  readonly manningN: number;
  /** Least grade without and with fine sand or silt, %. */
  readonly leastGradePct: number;
  readonly leastGradeSiltPct: number;
  /** What to know about the speed, in words. */
  readonly verdict: string;
  readonly cited: readonly Cited[];
}

/**
 * Acres that a pipe drains when it flows full.
 *
 *   acres = 23.80 × velocity × area / drain rate
 *
 * @source manning-full-flow
 */
export function pipeCapacity(run: PipeRun): PipeCapacity {
  within("diameter", run.diameterIn, drainageLimits.diameter);
  within("grade", run.gradePct, drainageLimits.grade);
  within("drainRate", run.rateInPerDay, drainageLimits.drainRate);
  const { manningN, cited } = roughnessOf(run.wall, run.diameterIn);

  const velocityFtPerS = fullFlowVelocity(run.diameterIn, run.gradePct, manningN);
  const flowCuFtPerS = flowAt(velocityFtPerS, run.diameterIn);
  const [clean, silty] = leastVelocities.rows;
  return {
    acres: acresAt(flowCuFtPerS, run.rateInPerDay),
    velocityFtPerS,
    flowCuFtPerS,
    manningN,
    leastGradePct: gradeFor(clean.feetPerSecond, run.diameterIn, manningN),
    leastGradeSiltPct: gradeFor(silty.feetPerSecond, run.diameterIn, manningN),
    verdict: verdictOn(velocityFtPerS),
    cited: [...cited, ...leastVelocities.rows, ...mostVelocities.rows],
  };
}

function verdictOn(velocityFtPerS: number): string {
  const [clean, silty] = leastVelocities.rows;
  if (velocityFtPerS < clean.feetPerSecond) return "too slow: steeper grade or larger pipe, or it will silt up";
  const washed = mostVelocities.rows.filter(({ feetPerSecond }) => velocityFtPerS > feetPerSecond);
  if (washed.length > 0) return `fast enough to wash soil in around an unprotected pipe: ${soilsOf(washed)}`;
  if (velocityFtPerS < silty.feetPerSecond)
    return "fast enough where no fine sand or silt enters, too slow where it does";
  return "fast enough to keep itself clean";
}

function soilsOf(rows: readonly { readonly soil: string }[]): string {
  return rows.map(({ soil }) => soil).join(", ");
}

export interface PipeNeed {
  readonly acres: number;
  readonly gradePct: number;
  readonly rateInPerDay: number;
  readonly wall: PipeWall;
}

export interface PipeSize {
  readonly sizeIn: number;
  readonly neededFlowCuFtPerS: number;
  /** Diameter that would just do, at the roughness of the chosen size. */
  readonly exactIn: number;
  readonly capacity: PipeCapacity;
}

/**
 * The smallest stock size that drains the acres, each size tried with its own roughness.
 *
 * @source manning-full-flow
 */
export function pipeSize({ acres, gradePct, rateInPerDay, wall }: PipeNeed): PipeSize {
  within("acres", acres, drainageLimits.acres);
  const [first] = sizesOf(wall);
  // Checks the other arguments even where no size is large enough.
  pipeCapacity({ diameterIn: first ?? stockSizesIn[0], gradePct, rateInPerDay, wall });
  for (const sizeIn of sizesOf(wall)) {
    const capacity = pipeCapacity({ diameterIn: sizeIn, gradePct, rateInPerDay, wall });
    if (capacity.acres < acres) continue;
    const neededFlowCuFtPerS = acres * rateInPerDay * cubicFootPerSecondPerAcreInch;
    return {
      sizeIn,
      neededFlowCuFtPerS,
      exactIn: diameterFor(neededFlowCuFtPerS, gradePct, capacity.manningN),
      capacity,
    };
  }
  refuse({
    kind: "noSolution",
    because: "No stock size is large enough: split the area between two mains, or give more grade.",
  });
}

/** Stock sizes that the kind of pipe is on record for. */
function sizesOf(wall: PipeWall): readonly number[] {
  if ("manningN" in wall) return stockSizesIn;
  const rows = roughnesses.rows.filter(({ pipe }) => pipe === wall.pipe);
  const smallest = Math.min(...rows.map(({ fromIn }) => fromIn));
  const largest = Math.max(...rows.map(({ toIn }) => toIn));
  return stockSizesIn.filter((size) => size >= smallest && size <= largest);
}

export interface LeastGrade {
  readonly gradePct: number;
  readonly manningN: number;
  readonly velocity: LeastVelocityRow;
  readonly fallInPer100Ft: number;
  readonly cited: readonly Cited[];
}

/**
 * Least grade at which a drain keeps itself clean.
 *
 *   100 × (V n / (1.486 (D/4)^(2/3)))²      V = 0.5 ft/s, 1.4 where fine sand or silt may enter
 *
 * @source uw-madison-tile, manning-full-flow
 */
export function leastGrade(diameterIn: number, sediment: SedimentKey, wall: PipeWall): LeastGrade {
  within("diameter", diameterIn, drainageLimits.diameter);
  const { manningN, cited } = roughnessOf(wall, diameterIn);
  const velocity = leastVelocities.rows[sediment === "none" ? 0 : 1];
  const gradePct = gradeFor(velocity.feetPerSecond, diameterIn, manningN);
  return { gradePct, manningN, velocity, fallInPer100Ft: gradePct * inchPerFoot, cited: [...cited, velocity] };
}

export interface LongestLateral {
  readonly lengthFt: number;
  readonly capacity: PipeCapacity;
}

/**
 * Longest lateral of one size: the length whose strip makes the acres that the pipe drains.
 *
 *   43,560 × acres / spacing
 *
 * @source manning-full-flow
 */
export function longestLateral(run: PipeRun, spacingFt: number): LongestLateral {
  within("spacing", spacingFt, drainageLimits.spacing);
  const capacity = pipeCapacity(run);
  return { lengthFt: (squareFootPerAcre * capacity.acres) / spacingFt, capacity };
}
