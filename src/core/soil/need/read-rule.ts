import type { NeedRule, RateForm } from "../../../reference/guides";
import { buildMaintain } from "./build-maintain";
import { indexCurveRate, planeRate, pointsRate } from "./equation-rates";
import type { RateParts, RateReadings } from "./rate-parts";
import { classTable, thresholdRate } from "./zone-rate";

/** Reads a rule; a class that the guide names apart from its rates takes the place of the form's own zone. */
export function rateParts({ form, classes }: NeedRule, readings: RateReadings): RateParts {
  const parts = formParts(form, readings);
  if (!classes) return parts;
  const whole = Math.round(readings.test);
  const named = classes.find(([, upTo]) => upTo === null || whole <= upTo);
  return { ...parts, zone: named?.[0] ?? parts.zone };
}

function formParts(form: RateForm, readings: RateReadings): RateParts {
  switch (form.kind) {
    case "buildMaintain":
      return buildMaintain(form, readings);
    case "classes":
      return classTable(form, readings);
    case "threshold":
      return thresholdRate(form, readings);
    case "plane":
      return planeRate(form, readings);
    case "indexCurve":
      return indexCurveRate(form, readings);
    case "points":
      return pointsRate(form, readings);
  }
}
