/** A publication behind our numbers. */
export interface Source {
  readonly publisher: string;
  readonly title: string;
  readonly year: string;
}

/** Every citation, once. Key: publisher, number or subject, year; or the name of a definition. */
export const sources = {
  "osu-974-2020": {
    publisher: "Ohio State University Extension",
    title: "Bulletin 974, Tri-State Fertilizer Recommendations",
    year: "2020",
  },
} as const satisfies Record<string, Source>;

export type SourceKey = keyof typeof sources;
