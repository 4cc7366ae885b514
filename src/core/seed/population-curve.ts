import { refuse } from "../fault";
import {
  populationCurves,
  type PopulationCurve,
  type PopulationCurveKey,
} from "../../reference/seed/population-curves";

export function populationCurve(key: PopulationCurveKey): PopulationCurve {
  const row = populationCurves.rows.find((curve) => curve.key === key);
  return row ?? refuse({ kind: "notPublished", what: `curve under ${key}`, where: `"${populationCurves.title}"` });
}

/**
 * Share of the full yield on a published curve, %. No range is checked: callers keep to the curve's stands.
 *
 * @param thousandPlants established plants, thousand/ac
 * @param daysAfterApril1 planting day; the curve's best one when left out
 */
export function curveYieldPct(curve: PopulationCurve, thousandPlants: number, daysAfterApril1?: number): number {
  if (curve.form === "exponential") return 100 * (1 - Math.exp(-curve.rise * thousandPlants));
  const day = daysAfterApril1 ?? curve.bestDay;
  return (
    curve.constant +
    curve.linear * thousandPlants +
    curve.quadratic * thousandPlants ** 2 +
    curve.dayLinear * day +
    curve.dayQuadratic * day ** 2
  );
}
