import { needed, refuse } from "../../fault";
import type { LimeForm } from "../../../reference/soil";
import { unsaturationRate } from "./unsaturation-rate";
import { limeTableRate } from "./lime-table-rate";

/** The laboratory's readings that a method may use. */
export interface LimeReadings {
  readonly ph: number;
  /** null where the method reads none. */
  readonly bufferPh: number | null;
  readonly acidityMeq: number | null;
  readonly targetPh: number;
  readonly depthIn: number | null;
}

/**
 * The rate in the method's own unit and lime, never below 0.
 *
 * Waits for the reading a method needs when it is missing.
 */
export function methodRate(form: LimeForm, readings: LimeReadings): number {
  return Math.max(0, rawRate(form, readings));
}

function rawRate(form: LimeForm, readings: LimeReadings): number {
  const { ph, targetPh } = readings;
  switch (form.kind) {
    case "lines": {
      const { constant, perBuffer, perPh } = atTarget(form.lines, targetPh);
      const fromBuffer = form.bufferTimes === 0 ? 0 : perBuffer * form.bufferTimes * read(readings, "bufferPh");
      return constant + fromBuffer + perPh * ph;
    }
    case "depthCurve": {
      const { constant, perBuffer, perBufferSquared } = atTarget(form.curves, targetPh);
      const buffer = read(readings, "bufferPh");
      return (constant + perBuffer * buffer + perBufferSquared * buffer ** 2) * read(readings, "depthIn");
    }
    case "bufferAcidity": {
      const acidity = form.perPh * (form.startPh - read(readings, "bufferPh"));
      return ph >= form.startPh ? 0 : (acidity * (targetPh - ph)) / (form.startPh - ph);
    }
    case "exchangeableAcidity": {
      const { perMeq, smallUpToMeq, smallRate } = atTarget(form.targets, targetPh);
      const acidity = read(readings, "acidityMeq");
      return smallRate !== undefined && acidity <= (smallUpToMeq ?? 0) ? smallRate : perMeq * acidity;
    }
    case "unsaturation":
      return unsaturationRate(form, ph, read(readings, "bufferPh"), targetPh);
    case "table":
      return limeTableRate(form, read(readings, "bufferPh"), targetPh);
  }
}

const argumentNames = { bufferPh: "bufferPH", acidityMeq: "acidity", depthIn: "depthIn" } as const;

function read(readings: LimeReadings, reading: keyof typeof argumentNames): number {
  return needed(argumentNames[reading], readings[reading]);
}

/** The caller has checked that the target is published. */
function atTarget<T extends { readonly targetPh: number }>(lines: readonly T[], targetPh: number): T {
  const line = lines.find((each) => each.targetPh === targetPh);
  return line ?? refuse({ kind: "noSolution", because: `No equation for target pH ${targetPh}.` });
}
