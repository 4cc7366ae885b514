import { chlorosisRisk as table, type ChlorosisClass } from "../../reference/soil";

export interface ChlorosisRisk {
  readonly risk: ChlorosisClass;
  readonly row: typeof table;
}

/**
 * Risk class of iron-deficiency chlorosis in soybean. A reading just above a printed bound belongs to the next class.
 *
 * @param carbonatePct calcium carbonate equivalent, %
 * @param saltsDsPerM electrical conductivity 1:1, dS/m
 */
export function chlorosisRisk(carbonatePct: number, saltsDsPerM: number): ChlorosisRisk {
  const row = placeOf(saltsDsPerM, table.saltsUpTo);
  const column = placeOf(carbonatePct, table.carbonateUpTo);
  return { risk: table.classes[row]?.[column] ?? "extreme", row: table };
}

function placeOf(value: number, upTo: readonly number[]): number {
  const place = upTo.findIndex((bound) => value <= bound);
  return place === -1 ? upTo.length : place;
}
