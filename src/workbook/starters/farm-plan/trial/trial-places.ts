import { place, type Reference } from "../../../formula/reference";

/** Lines of a trial sheet that other cells point to. */
export type TrialLine =
  | "practice"
  | "check"
  | "treated"
  | "field"
  | "crop"
  | "cost"
  | "price"
  | "blocks"
  | "seed"
  | "entered"
  | "length"
  | "width"
  | "confidence"
  | "pairs"
  | "gain"
  | "se"
  | "from"
  | "to"
  | "luck"
  | "chance"
  | "net"
  | "pays"
  | "words"
  | "scatter"
  | "worthFinding"
  | "gainToSee"
  | "nextBlocks";

/** Key of the block of lines of a trial sheet, by its number from 0. */
export function trialKey(index: number): string {
  return `trial${index + 1}`;
}

export function trialLine(index: number, line: TrialLine): Reference {
  return place(`${trialKey(index)}.${line}`);
}
