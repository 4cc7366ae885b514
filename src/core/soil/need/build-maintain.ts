import { atCec, type FormOf, type RateParts, type RateReadings } from "./rate-parts";

/**
 * Build-up below the critical level, maintenance from there to the limit, nothing at or above it.
 *
 *   test < CL              (CL − test) × lb per unit / years + removal × times + plus
 *   CL ≤ test < CL + plateau        removal × times + plus
 *   then a straight fall to 0 over the drawdown, where there is one
 *
 * @source osu-974-2020, msu-e2567-1995
 */
export function buildMaintain(form: FormOf<"buildMaintain">, readings: RateReadings): RateParts {
  const { test, cecMeq } = readings;
  const criticalLevel = atCec(form.critical, cecMeq);
  const plateauEnd = criticalLevel + form.plateau;
  const maintenanceLimit = plateauEnd + form.drawdown;
  const levels = { criticalLevel, maintenanceLimit };
  if (test >= maintenanceLimit) {
    return { ...levels, zone: form.zones.none, buildup: 0, maintenance: 0, droppedBuildup: 0 };
  }

  const { times, plus } = form.maintenance;
  const full = readings.removalLbPerAc() * (readings.removalTimes ?? times) + plus;
  if (test > plateauEnd) {
    const left = 1 - (test - plateauEnd) / form.drawdown;
    const zone = form.zones.drawdown ?? form.zones.maintain;
    return { ...levels, zone, buildup: 0, maintenance: full * left, droppedBuildup: 0 };
  }
  if (test >= criticalLevel) {
    return { ...levels, zone: form.zones.maintain, buildup: 0, maintenance: full, droppedBuildup: 0 };
  }
  const buildup = yearlyBuildup(form.build, criticalLevel, test, cecMeq);
  return {
    ...levels,
    zone: form.zones.build,
    buildup: readings.withBuildup ? buildup : 0,
    maintenance: full,
    droppedBuildup: readings.withBuildup ? 0 : buildup,
  };
}

function yearlyBuildup(
  { lbPerUnit, years, curve }: FormOf<"buildMaintain">["build"],
  criticalLevel: number,
  test: number,
  cecMeq: number | null,
): number {
  const climb = curve === "straight" ? criticalLevel - test : Math.sqrt(criticalLevel) - Math.sqrt(test);
  return (climb * atCec(lbPerUnit, cecMeq)) / years;
}
