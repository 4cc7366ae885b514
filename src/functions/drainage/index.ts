import type { WorksheetFunction } from "../frame";
import { lateralLength, leastGrade, pipeCapacity, pipeSize } from "./pipes";
import { drainCoefficient, soilSpacing, tileDrainRate, tileSpacing } from "./spacing";
import { tileCost, tileLength } from "./tile";

/** Everything this family puts on the sheet, in the order of the documentation. */
export const drainageFunctions: readonly WorksheetFunction[] = [
  tileSpacing,
  tileDrainRate,
  soilSpacing,
  drainCoefficient,
  tileLength,
  tileCost,
  pipeCapacity,
  pipeSize,
  leastGrade,
  lateralLength,
];
