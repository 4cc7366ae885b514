import { crops } from "../../reference/crops";
import type { SeedUnit } from "../../core/seed/seed-unit";
import { line, type WorkingLine } from "../frame";

export function unitLine(unit: SeedUnit): WorkingLine {
  const of = unit.published ? `, the trade's unit of ${crops[unit.published.crop].label}` : "";
  return line(`Seeds in one unit${of}`, unit.seedsPerUnit, "seeds");
}

export function published(unit: SeedUnit) {
  return unit.published ? [unit.published] : [];
}
