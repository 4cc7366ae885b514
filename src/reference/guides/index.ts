import type { Guide } from "./guide";
import { inMiOh2020 } from "./in-mi-oh-2020";

export type * from "./guide";
export { approaches, extractants, type ApproachKey, type ExtractantKey } from "./words";

/** Recommendation systems by the postal codes of their region. */
export const guides = {
  "IN-MI-OH": inMiOh2020,
} as const satisfies Record<string, Guide>;

export type GuideKey = keyof typeof guides;
