import type { FarmPart } from "./farm-parts";

/** A sheet that a starter makes: what it is called and what it is for. */
export interface StarterSheet {
  readonly name: string;
  readonly purpose: string;
  /** The sheet is made when any of these parts is wanted; always where nothing is said. */
  readonly parts?: readonly FarmPart[];
}

/** Whether a sheet belongs to what was chosen. */
export function isWanted({ parts }: StarterSheet, chosen: readonly FarmPart[]): boolean {
  return parts === undefined || parts.some((part) => chosen.includes(part));
}
