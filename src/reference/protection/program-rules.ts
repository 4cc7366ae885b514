import type { Cited } from "../table";

/** A rule of thumb that is widely taught: effective groups on the weed that drives the program. */
export const programRule = {
  leastEffectivePerPass: 2,
  leastEffectivePerSeason: 2,
  goodEffectivePerSeason: 3,
  mark: "M",
  source: "program-practice",
} as const satisfies Cited & Record<string, unknown>;

/** What a survey of farms found on mixing and on changing groups from year to year. */
export const mixingSurvey = {
  says: "on 105 Illinois farms glyphosate-resistant waterhemp was commonest with frequent glyphosate, high turnover of groups from year to year and few groups in a field and year; mixing groups in a pass lowered it",
  mark: "V",
  source: "evans-2016",
  locator: "abstract",
} as const satisfies Cited & { says: string };
