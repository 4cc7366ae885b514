import { refuse, refuseArgument, waitFor } from "../fault";
import type { GrainRow } from "../../reference/crops";
import type { GrainKey } from "../../reference/grain";
import { bushelWeight } from "./bushel-weight";
import type { Unit } from "./read-unit";
import { kilogramPerPound } from "./units";

export interface UnitConversionInput {
  readonly value: number;
  readonly from: Unit;
  readonly to: Unit;
  /** The grain whose bushels are meant; needed only where a trade bushel has to become another weight. */
  readonly grain: GrainKey | null;
}

export interface UnitConversion {
  readonly value: number;
  /** What one of the first unit is in the second; for temperatures, what one degree is. */
  readonly factor: number;
  readonly from: Unit;
  readonly to: Unit;
  readonly bushel?: GrainRow<GrainKey>;
}

/** Absolute zero on the base scale, °C. */
const coldest = -273.15;

/**
 * The same quantity in another unit.
 *
 *   value × size of the first unit / size of the second      a bushel is its crop's weight
 *
 * Results carry 15 significant digits, as spreadsheets do: 1 acre is 43,560 square feet and not 43,559.999…
 *
 * @source nist-sp-811-2008
 */
export function convertUnit({ value, from, to, grain }: UnitConversionInput): UnitConversion {
  if (from.quantity !== to.quantity) refuseUnlike(from, to);
  const bushels = from.bushels - to.bushels;
  const bushel = bushels === 0 ? undefined : bushelWeight(grain ?? askForCrop());
  const bushelKg = bushel ? bushel.bushelWeightLb * kilogramPerPound : 1;
  const factor = tidy((from.size / to.size) * bushelKg ** bushels);
  return { value: scaled(value, factor, from, to), factor, from, to, ...(bushel && { bushel }) };
}

function scaled(value: number, factor: number, from: Unit, to: Unit): number {
  if (from.quantity !== "temperature") return tidy(value * factor);
  const base = (value - from.zero) * from.size;
  if (base < coldest - 1e-9) {
    const min = tidy(coldest / from.size + from.zero);
    refuse({ kind: "outOfRange", argument: "value", received: value, min, max: 1e15, unit: from.label });
  }
  return tidy(base / to.size + to.zero);
}

function tidy(value: number): number {
  return Number(value.toPrecision(15));
}

function askForCrop(): never {
  waitFor("crop", "a bushel is a weight that differs by crop");
}

function refuseUnlike(from: Unit, to: Unit): never {
  const because = `${to.label} is ${to.quantity} but ${from.label} is ${from.quantity}, and one does not become the other.`;
  refuseArgument("to", `${because}${hint(from, to)}`);
}

function hint(from: Unit, to: Unit): string {
  const [a, b] = [from.quantity, to.quantity].sort();
  if (a === "volume" && b === "weight" && (from.bushels !== 0 || to.bushels !== 0)) {
    return ' A trade bushel is a weight; for bin space use "volume bushel".';
  }
  if (a === "share" && b === "weight per area")
    return " In soil that takes a depth: multiply by the weight of the layer.";
  return "";
}
