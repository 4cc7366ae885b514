import type { FormOf, RateParts, RateReadings } from "./rate-parts";
import { shareOfRemoval } from "./zone-rate";

/**
 * constant + a × yield + b × test + c × yield × test below the critical level, at least the guide's least rate;
 * nothing at or above it.
 */
export function planeRate(form: FormOf<"plane">, { test, yieldPerAc }: RateReadings): RateParts {
  const atZeroTest = form.constant + form.perYield * yieldPerAc;
  const perTest = form.perTest + form.perYieldTest * yieldPerAc;
  const criticalLevel = form.critical ?? (perTest === 0 ? null : -atZeroTest / perTest);
  const isBelow = criticalLevel === null || test < criticalLevel;
  const maintenance = isBelow ? Math.max(form.least, 0, atZeroTest + perTest * test) : 0;
  return {
    zone: isBelow ? form.zones.below : form.zones.above,
    criticalLevel,
    maintenanceLimit: criticalLevel,
    buildup: 0,
    maintenance,
    droppedBuildup: 0,
  };
}

/** A quadratic in the soil-test index, read on its falling side; 0 past its lowest point or below zero. */
export function indexCurveRate(form: FormOf<"indexCurve">, { test }: RateReadings): RateParts {
  const vertex = -form.linear / (2 * form.square);
  const value = form.square * test ** 2 + form.linear * test + form.constant;
  const maintenance = test >= vertex ? 0 : Math.max(0, value);
  return {
    zone: "",
    criticalLevel: null,
    maintenanceLimit: null,
    buildup: 0,
    maintenance,
    droppedBuildup: 0,
  };
}

/** Rates printed at single tests: straight lines between them, the first below them, removal above them. */
export function pointsRate(form: FormOf<"points">, readings: RateReadings): RateParts {
  const { test } = readings;
  const { points, above } = form;
  const last = points[points.length - 1];
  const isAbove = last !== undefined && test > last[0];
  return {
    zone: "",
    criticalLevel: null,
    maintenanceLimit: null,
    buildup: 0,
    maintenance: isAbove ? shareOfRemoval(above, readings) : alongPoints(points, test),
    droppedBuildup: 0,
    restsOnRemoval: isAbove,
  };
}

function alongPoints(points: FormOf<"points">["points"], test: number): number {
  const next = points.findIndex(([at]) => test <= at);
  const [highAt, high] = points[next] ?? [0, 0];
  const [lowAt, low] = points[next - 1] ?? [highAt, high];
  return highAt === lowAt ? high : low + ((test - lowAt) / (highAt - lowAt)) * (high - low);
}
