import { refuse } from "../fault";
import { within } from "../limit";
import { hourPerDay, inchPerFoot, secondPerHour, squareFootPerAcre } from "../units/units";
import { pipeKinds, roughnesses, type PipeKindKey } from "../../reference/drainage/pipes";
import type { Cited } from "../../reference/table";
import { drainageLimits } from "./drainage-limits";

/** Roughness typed by the person, or the kind of pipe. */
export type PipeWall = { readonly manningN: number } | { readonly pipe: PipeKindKey };

export interface Roughness {
  readonly manningN: number;
  readonly cited: readonly Cited[];
}

/** Cubic feet a second that an inch a day on one acre makes: 0.042014. */
export const cubicFootPerSecondPerAcreInch = squareFootPerAcre / inchPerFoot / (hourPerDay * secondPerHour);

/** Manning's factor for feet and seconds. */
const manningFactor = 1.486;

/**
 * Roughness of a pipe by its kind and inside diameter. A size between two printed ranges takes the next rougher one.
 *
 * @source asae-ep260, nrcs-neh-650-14
 */
export function roughnessOf(wall: PipeWall, diameterIn: number): Roughness {
  if ("manningN" in wall) {
    within("roughness", wall.manningN, drainageLimits.roughness);
    return { manningN: wall.manningN, cited: [] };
  }
  const rows = roughnesses.rows.filter(({ pipe }) => pipe === wall.pipe);
  const row = rows.find(({ toIn }) => diameterIn <= toIn);
  if (row && diameterIn >= (rows[0]?.fromIn ?? Infinity)) return { manningN: row.manningN, cited: [row] };
  refuse({
    kind: "notPublished",
    what: `roughness of ${pipeKinds[wall.pipe].label} pipe of ${diameterIn} in`,
    where: `"${roughnesses.title}"`,
    instead: "Enter the roughness as a number.",
  });
}

/**
 * Velocity of a round pipe flowing full, ft/s.
 *
 *   1.486 / n × (D / 4)^(2/3) × S^(1/2)      D in feet, S as a share
 *
 * @source manning-full-flow
 */
export function fullFlowVelocity(diameterIn: number, gradePct: number, manningN: number): number {
  return (manningFactor / manningN) * (diameterIn / inchPerFoot / 4) ** (2 / 3) * Math.sqrt(gradePct / 100);
}

/** Flow of a round pipe at a velocity, cubic feet a second. */
export function flowAt(velocityFtPerS: number, diameterIn: number): number {
  return (velocityFtPerS * Math.PI * (diameterIn / inchPerFoot) ** 2) / 4;
}

/** Acres that a flow drains at a rate. */
export function acresAt(flowCuFtPerS: number, rateInPerDay: number): number {
  return flowCuFtPerS / (rateInPerDay * cubicFootPerSecondPerAcreInch);
}

/**
 * Grade that gives a velocity, in percent: Manning turned around.
 *
 * @source manning-full-flow
 */
export function gradeFor(velocityFtPerS: number, diameterIn: number, manningN: number): number {
  return 100 * (velocityFtPerS / fullFlowVelocity(diameterIn, 100, manningN)) ** 2;
}

/**
 * Inside diameter that carries a flow, inches.
 *
 *   D = (Q n 4^(5/3) / (1.486 pi S^(1/2)))^(3/8)
 *
 * @source manning-full-flow
 */
export function diameterFor(flowCuFtPerS: number, gradePct: number, manningN: number): number {
  const feet = (flowCuFtPerS * manningN * 4 ** (5 / 3)) / (manningFactor * Math.PI * Math.sqrt(gradePct / 100));
  return feet ** (3 / 8) * inchPerFoot;
}
