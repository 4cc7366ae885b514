export { creditGuides, creditRows, secondYearCredit, type CreditGuideKey, type CreditRow } from "./credits";
export { nitrogenGuides, type NitrogenGuideKey } from "./guides";
export type { NitrateTerm, NitrogenGuide, NitrogenRule } from "./method";
export { oatGroup2, oatMinnesota } from "./oat-minnesota";
export { organicRelease, type ReleaseKey, type ReleaseRow } from "./organic-release";
export {
  legumes,
  previousCrops,
  stands,
  textures,
  tillages,
  timings,
  type PreviousKey,
  type StandKey,
  type TextureKey,
  type TillageKey,
  type TimingKey,
} from "./words";
