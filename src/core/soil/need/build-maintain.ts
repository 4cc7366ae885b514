import { atCec, removedByCrop, type FormOf, type RateParts, type RateReadings } from "./rate-parts";

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
  const isShort = test < criticalLevel;
  const isFull = test >= maintenanceLimit;
  const short = isShort ? yearlyBuildup(form.build, criticalLevel, test, cecMeq) : 0;
  return {
    criticalLevel,
    maintenanceLimit,
    zone: isShort ? form.zones.build : isFull ? form.zones.none : zoneAbove(form, test > plateauEnd),
    buildup: readings.withBuildup ? short : 0,
    maintenance: isFull ? 0 : fullMaintenance(form, readings) * drawdownShare(form, test - plateauEnd),
    droppedBuildup: readings.withBuildup ? 0 : short,
  };
}

function zoneAbove({ zones }: FormOf<"buildMaintain">, isDrawingDown: boolean): string {
  return isDrawingDown && zones.drawdown !== undefined ? zones.drawdown : zones.maintain;
}

function fullMaintenance({ maintenance }: FormOf<"buildMaintain">, readings: RateReadings): number {
  return removedByCrop(readings) * (readings.removalTimes ?? maintenance.times) + maintenance.plus;
}

function drawdownShare({ drawdown }: FormOf<"buildMaintain">, abovePlateau: number): number {
  return abovePlateau <= 0 ? 1 : 1 - abovePlateau / drawdown;
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
