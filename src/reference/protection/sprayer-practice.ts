import type { Cited } from "../table";

/** Where most field nozzles work; a nozzle's own chart decides. */
export const workingPressure = {
  lowPsi: 15,
  highPsi: 60,
  mark: "M",
  source: "sprayer-practice",
} as const satisfies Cited & Record<string, unknown>;
