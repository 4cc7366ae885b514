import { atCec, type FormOf, type RateParts, type RateReadings } from "./rate-parts";
import { shareOfRemoval } from "./zone-rate";

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
  const { test, cecMeq, withBuildup } = readings;
  const criticalLevel = atCec(form.critical, cecMeq);
  const plateauEnd = criticalLevel + form.plateau;
  const maintenanceLimit = plateauEnd + form.drawdown;
  const isShort = test < criticalLevel;
  const isFull = !form.unpublishedAbove && test >= maintenanceLimit;
  const years = buildYears(form, readings.years);
  const short = isShort && years !== null ? climb(form, criticalLevel, test, cecMeq) / years : 0;
  const missing =
    !isShort && form.unpublishedAbove ? "rate" : isShort && withBuildup && years === null ? "years" : null;
  return {
    criticalLevel,
    maintenanceLimit: form.unpublishedAbove ? null : maintenanceLimit,
    zone: isShort ? form.zones.build : isFull ? form.zones.none : zoneAbove(form, test > plateauEnd),
    buildup: withBuildup ? short : 0,
    maintenance: isFull ? 0 : shareOfRemoval(form.maintenance, readings) * drawdownShare(form, test - plateauEnd),
    droppedBuildup: withBuildup ? 0 : short,
    restsOnRemoval: !isFull,
    ...(missing && { missing }),
  };
}

/** The years asked for, or the only span the guide prints; null where one of several has to be chosen first. */
function buildYears({ build: { years } }: FormOf<"buildMaintain">, asked: number | null): number | null {
  return asked ?? (typeof years === "number" ? years : null);
}

function zoneAbove({ zones }: FormOf<"buildMaintain">, isDrawingDown: boolean): string {
  return isDrawingDown && zones.drawdown !== undefined ? zones.drawdown : zones.maintain;
}

function drawdownShare({ drawdown }: FormOf<"buildMaintain">, abovePlateau: number): number {
  return abovePlateau <= 0 || drawdown === 0 ? 1 : 1 - abovePlateau / drawdown;
}

/** lb of oxide between the test and the critical level. */
function climb(
  { build: { lbPerUnit, curve } }: FormOf<"buildMaintain">,
  criticalLevel: number,
  test: number,
  cecMeq: number | null,
): number {
  const units = curve === "straight" ? criticalLevel - test : Math.sqrt(criticalLevel) - Math.sqrt(test);
  return units * atCec(lbPerUnit, cecMeq);
}
