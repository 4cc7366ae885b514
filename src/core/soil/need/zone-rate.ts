import type { RemovalShare, ZoneRate } from "../../../reference/guides";
import { removedByCrop, type FormOf, type RateParts, type RateReadings } from "./rate-parts";

/**
 * Reads a printed class: the test is rounded to a whole number, and a class's upper bound belongs to it.
 *
 * Nothing is recommended from the first class that prints 0, where there is one.
 */
export function classTable(form: FormOf<"classes">, readings: RateReadings): RateParts {
  const { classes, criticalZone } = form;
  const whole = Math.round(readings.test);
  const place = classes.findIndex(([zone, upTo]) =>
    readings.reportClass === null ? upTo === null || whole <= upTo : zone === readings.reportClass,
  );
  const [zone, , rate] = classes[place] ?? ["", null, null];
  const beforeFirstZero = classes[classes.findIndex(([, , each]) => each === 0) - 1];
  const critical = classes.find(([each]) => each === criticalZone);
  return {
    zone,
    criticalLevel: critical?.[1] ?? null,
    maintenanceLimit: typeof beforeFirstZero?.[1] === "number" ? beforeFirstZero[1] + 1 : null,
    ...ratePart(rate, readings),
  };
}

/** One critical level that stands alone in print: below it is short, at or above it is not; no rounding. */
export function thresholdRate(form: FormOf<"threshold">, readings: RateReadings): RateParts {
  const isBelow = readings.test < form.critical;
  return {
    zone: isBelow ? form.zones.below : form.zones.above,
    criticalLevel: form.critical,
    maintenanceLimit: form.above === 0 ? form.critical : null,
    ...ratePart(isBelow ? form.below : form.above, readings),
  };
}

/** lb/ac of a share of what the crop takes off. */
export function shareOfRemoval({ times, timesFor, plus }: RemovalShare, readings: RateReadings): number {
  const { crop } = readings;
  return removedByCrop(readings) * ((crop === null ? undefined : timesFor?.[crop]) ?? times) + plus;
}

function ratePart(rate: ZoneRate, readings: RateReadings) {
  const none = { buildup: 0, maintenance: 0, droppedBuildup: 0 };
  if (rate === null) return { ...none, missing: "rate" as const };
  if (typeof rate === "number") return { ...none, maintenance: rate };
  return { ...none, maintenance: shareOfRemoval(rate, readings), restsOnRemoval: true };
}
