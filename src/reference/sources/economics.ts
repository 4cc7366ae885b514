import type { Source } from "./source";

/** Publications on budgets, risk, capital, trials and drainage; and definitions of units. */
export const economicsSources = {
  "partial-budget-method": {
    publisher: "Land-grant university Extension services",
    title: "Partial budgeting: added and reduced returns and costs of a change",
    year: "undated",
  },
  "enterprise-budget-method": {
    publisher: "Land-grant university Extension services",
    title: "Enterprise budgeting: gross, costs, margins and break-even price and yield",
    year: "undated",
  },
  "acre-geometry": {
    publisher: "By definition",
    title: "An acre is 43,560 square feet: 522,720 feet of row at one inch of row width",
    year: "definition",
  },
  "nist-sp-811-2008": {
    publisher: "National Institute of Standards and Technology",
    title: "Special Publication 811, Guide for the Use of the International System of Units, Appendix B",
    year: "2008",
  },
  "nist-hb-44-c": {
    publisher: "National Institute of Standards and Technology",
    title: "Handbook 44, Appendix C, General Tables of Units of Measurement",
    year: "yearly",
  },
} as const satisfies Record<string, Source>;
