import { nitrogenNeed, type NitrogenNeedInput } from "../../../src/core/nitrogen/nitrogen-need";

type Asked = Pick<NitrogenNeedInput, "crop" | "yieldGoal" | "guide"> & Partial<NitrogenNeedInput>;

const nothing = {
  previous: null,
  soilNitrate: null,
  organicMatterPct: null,
  creditsLbPerAc: null,
  soil: null,
  standPerSqFt: null,
  timing: null,
  priceNUsdPerLb: null,
  priceGrainUsdPerBu: null,
  guidelineLbPerAc: null,
  tillage: null,
  criticalPpm: null,
} as const;

/** A nitrogen need with everything that is not stated left blank. */
export const askNitrogen = (asked: Asked) => nitrogenNeed({ ...nothing, ...asked });
