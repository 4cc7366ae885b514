import type { Cited } from "../table";

/** Blocks that are usually enough on a farm: four to six. */
export const usualTrial = {
  leastBlocks: 4,
  mostBlocks: 6,
  mark: "V",
  source: "msu-p3930",
} as const satisfies Cited & Record<string, unknown>;
