import { coverSources } from "./cover";
import { economicsSources } from "./economics";
import { fertilitySources } from "./fertility";
import { nitrogenSources } from "./nitrogen";
import { protectionSources } from "./protection";
import { seedSources } from "./seed";

export type { Source } from "./source";

/** Every citation, once. Key: publisher, number or subject, year; or the name of a definition. */
export const sources = {
  ...fertilitySources,
  ...nitrogenSources,
  ...seedSources,
  ...economicsSources,
  ...coverSources,
  ...protectionSources,
} as const;

export type SourceKey = keyof typeof sources;
