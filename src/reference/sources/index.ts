import { coverSources } from "./cover";
import { curveSources } from "./curves";
import { drainageSources } from "./drainage";
import { economicsSources } from "./economics";
import { fertilitySources } from "./fertility";
import { harvestSources } from "./harvest";
import { nitrogenSources } from "./nitrogen";
import { practiceSources } from "./practices";
import { protectionSources } from "./protection";
import { seedSources } from "./seed";
import { trialSources } from "./trials";

export type { Source } from "./source";

/** Every citation, once. Key: publisher, number or subject, year; or the name of a definition. */
export const sources = {
  ...fertilitySources,
  ...nitrogenSources,
  ...seedSources,
  ...economicsSources,
  ...coverSources,
  ...trialSources,
  ...drainageSources,
  ...harvestSources,
  ...protectionSources,
  ...curveSources,
  ...practiceSources,
} as const;

export type SourceKey = keyof typeof sources;
