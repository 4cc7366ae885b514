import { refuse, refuseArgument } from "../fault";
import { within } from "../limit";
import { inchPerFoot } from "../units/units";
import { tubeRadii } from "../../reference/drainage/pipes";
import type { Cited } from "../../reference/table";
import { conductivityOf, type SoilConductivity } from "./conductivity";
import { drainFlow, spacingFor, type DrainedSoil } from "./drain-flow";
import { drainageLimits } from "./drainage-limits";

export interface DrainSite {
  /** Depths below the surface. */
  readonly drainDepthFt: number;
  readonly midwayTableFt: number;
  readonly depthToBarrierFt: number;
  readonly conductivity: SoilConductivity;
  /** null: as above the drains. */
  readonly conductivityBelow: SoilConductivity | null;
  /** null: the outside of 4-inch tubing. */
  readonly radiusIn: number | null;
}

interface ReadSite {
  readonly soil: DrainedSoil;
  readonly cited: readonly Cited[];
}

export interface TileSpacing {
  readonly spacingFt: number;
  readonly equivalentDepthFt: number;
  readonly tableOverDrainFt: number;
  readonly barrierBelowDrainFt: number;
  readonly conductivityFtPerDay: number;
  readonly radiusIn: number;
  /** Spacing with the smaller radius that stands for entry loss, and with half and twice the conductivity; null: none. */
  readonly entryLossFt: number | null;
  readonly halfConductivityFt: number | null;
  readonly twiceConductivityFt: number | null;
  readonly cited: readonly Cited[];
}

/**
 * Distance between parallel drains that carry off a rate.
 *
 *   spacing² = (8 Kb d h + 4 Ka h²) / rate      h = drain depth - midway table, d from the depth to the barrier
 *
 * @source hooghoudt-1940, van-der-molen-wesseling-1991
 */
export function tileSpacing(site: DrainSite, rateInPerDay: number): TileSpacing {
  within("drainRate", rateInPerDay, drainageLimits.drainRate);
  const { soil, cited } = readSite(site);
  const solve = (of: DrainedSoil) =>
    spacingFor(of, rateInPerDay / inchPerFoot, drainageLimits.spacing.min, drainageLimits.spacing.max);

  const spacingFt = solve(soil);
  if (Number.isNaN(spacingFt)) refuseSpacing();
  const atEffective = { ...soil, radius: effectiveRadius.radiusIn / inchPerFoot };
  return {
    spacingFt,
    equivalentDepthFt: drainFlow(soil, spacingFt).equivalentDepth,
    tableOverDrainFt: soil.tableOverDrain,
    barrierBelowDrainFt: soil.barrierBelowDrain,
    conductivityFtPerDay: soil.conductivityAbove,
    radiusIn: soil.radius * inchPerFoot,
    entryLossFt: orNull(solve(atEffective)),
    halfConductivityFt: orNull(solve(faster(soil, 0.5))),
    twiceConductivityFt: orNull(solve(faster(soil, 2))),
    cited: [...cited, effectiveRadius],
  };
}

export interface DrainRate {
  readonly rateInPerDay: number;
  readonly equivalentDepthFt: number;
  readonly tableOverDrainFt: number;
  readonly barrierBelowDrainFt: number;
  readonly conductivityFtPerDay: number;
  readonly cited: readonly Cited[];
}

/**
 * Water that drains at a given spacing carry off, inches a day.
 *
 * @source hooghoudt-1940, van-der-molen-wesseling-1991
 */
export function drainRate(site: DrainSite, spacingFt: number): DrainRate {
  within("spacing", spacingFt, drainageLimits.spacing);
  const { soil, cited } = readSite(site);
  const flow = drainFlow(soil, spacingFt);
  if (Number.isNaN(flow.rate)) refuseSpacing();
  return {
    rateInPerDay: flow.rate * inchPerFoot,
    equivalentDepthFt: flow.equivalentDepth,
    tableOverDrainFt: soil.tableOverDrain,
    barrierBelowDrainFt: soil.barrierBelowDrain,
    conductivityFtPerDay: soil.conductivityAbove,
    cited,
  };
}

const [outsideRadius, effectiveRadius] = tubeRadii.rows;

function readSite(site: DrainSite): ReadSite {
  within("depth", site.drainDepthFt, drainageLimits.drainDepth);
  within("midwayTable", site.midwayTableFt, drainageLimits.midwayTable);
  within("depthToBarrier", site.depthToBarrierFt, drainageLimits.depthToBarrier);
  if (site.radiusIn !== null) within("radius", site.radiusIn, drainageLimits.radius);
  if (site.midwayTableFt >= site.drainDepthFt) refuseTable();
  if (site.depthToBarrierFt < site.drainDepthFt) refuseBarrier();
  const above = conductivityOf(site.conductivity, "conductivity");
  const below = site.conductivityBelow ? conductivityOf(site.conductivityBelow, "conductivityBelow") : above;
  return {
    soil: {
      tableOverDrain: site.drainDepthFt - site.midwayTableFt,
      barrierBelowDrain: site.depthToBarrierFt - site.drainDepthFt,
      conductivityAbove: above.ftPerDay,
      conductivityBelow: below.ftPerDay,
      radius: (site.radiusIn ?? outsideRadius.radiusIn) / inchPerFoot,
    },
    cited: [...new Set([...above.cited, ...below.cited, ...(site.radiusIn === null ? [outsideRadius] : [])])],
  };
}

function faster(soil: DrainedSoil, times: number): DrainedSoil {
  return {
    ...soil,
    conductivityAbove: soil.conductivityAbove * times,
    conductivityBelow: soil.conductivityBelow * times,
  };
}

function orNull(value: number): number | null {
  return Number.isNaN(value) ? null : value;
}

function refuseTable(): never {
  refuseArgument("midwayTable", "the water table midway has to lie above the drains: less deep than depth.");
}

function refuseBarrier(): never {
  refuseArgument(
    "depthToBarrier",
    "the barrier lies at the drains or below them: give its depth below the surface, at least depth.",
  );
}

function refuseSpacing(): never {
  const { min, max } = drainageLimits.spacing;
  refuse({
    kind: "noSolution",
    because: `No spacing from ${min} to ${max} ft fits: check conductivity, drainRate and radius.`,
  });
}
