import type { Source } from "./source";

/** Publications on deciding under uncertainty and on choosing a set within a budget. */
export const practiceSources = {
  "three-point-range": {
    publisher: "By definition",
    title: "Triangular and PERT (beta) ranges from a lowest, a likeliest and a highest value",
    year: "definition",
  },
  "raiffa-schlaifer-1961": {
    publisher: "Harvard University",
    title:
      "Applied Statistical Decision Theory (Raiffa, Schlaifer): beliefs updated by a sample, and what a sample is worth",
    year: "1961",
  },
  "land-doig-1960": {
    publisher: "Econometrica",
    title: "28:497, An automatic method of solving discrete programming problems (Land, Doig)",
    year: "1960",
  },
} as const satisfies Record<string, Source>;
