import type { Source } from "./source";

/** Publications on removal, lime, phosphate, potash and materials. */
export const fertilitySources = {
  "osu-974-2020": {
    publisher: "Ohio State University Extension",
    title: "Bulletin 974, Tri-State Fertilizer Recommendations",
    year: "2020",
  },
} as const satisfies Record<string, Source>;
