import { limeNeed, type LimeNeed, type LimeNeedInput } from "../../../../src/core/soil/lime/lime-need";

/** A lime question with everything left out that can be. */
export function askLime(input: Pick<LimeNeedInput, "ph" | "targetPh" | "method"> & Partial<LimeNeedInput>): LimeNeed {
  return limeNeed({
    bufferPh: null,
    depthIn: null,
    soil: "mineral",
    acidityMeq: null,
    limedTonPerAc: 0,
    monthsSince: null,
    ...input,
  });
}
