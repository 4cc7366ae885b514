import { removedByCrop, type FormOf, type RateParts, type RateReadings } from "./rate-parts";

/**
 * Reads a printed class: the test is rounded to a whole number, and a class's upper bound belongs to it.
 *
 * Below the last class with a rate there is no limit above which nothing is recommended unless a class prints 0.
 */
export function classTable(form: FormOf<"classes">, readings: RateReadings): RateParts {
  const whole = Math.round(readings.test);
  const place = form.classes.findIndex(({ upTo }) => upTo === null || whole <= upTo);
  const found = form.classes[place];
  const first = form.classes.find(({ rate }) => "fixed" in rate && rate.fixed === 0);
  const beforeFirst = first && form.classes[form.classes.indexOf(first) - 1];
  const critical = form.classes.find(({ zone }) => zone === form.criticalZone);
  return {
    zone: found?.zone ?? "",
    criticalLevel: critical?.upTo ?? null,
    maintenanceLimit: typeof beforeFirst?.upTo === "number" ? beforeFirst.upTo + 1 : null,
    buildup: 0,
    maintenance: found ? rateOf(found.rate, readings) : 0,
    droppedBuildup: 0,
  };
}

function rateOf(rate: FormOf<"classes">["classes"][number]["rate"], readings: RateReadings): number {
  if ("fixed" in rate) return rate.fixed;
  return removedByCrop(readings) * (readings.removalTimes ?? rate.removal.times) + rate.removal.plus;
}
