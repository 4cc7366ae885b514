import type { Source } from "./source";

/** Publications on budgets, risk, capital, trials and drainage; and definitions of units. */
export const economicsSources = {
  "partial-budget": {
    publisher: "Land-grant Extension, in the farm press",
    title: "Partial Budget a Simple, Useful Financial Tool",
    year: "undated",
  },
  "enterprise-budget": {
    publisher: "Land-grant Extension",
    title: "Crop enterprise budgets: gross, costs, margins, break-even price and yield",
    year: "yearly",
  },
  "time-value-of-money": {
    publisher: "By definition",
    title: "Present value, annuity and capital recovery: money at interest, compounded once a year",
    year: "definition",
  },
  "farmdoc-12-180-2022": {
    publisher: "University of Illinois, farmdoc daily",
    title: "(12):180, Evaluating Returns Necessary to Justify Installation of Tile Drainage (Schnitkey and others)",
    year: "2022",
  },
  "iowa-c2-21-2023": {
    publisher: "Iowa State University Extension",
    title: "Ag Decision Maker C2-21, Flexible Farm Lease Agreements",
    year: "2023",
  },
  "lease-definitions": {
    publisher: "By definition",
    title: "Crop-share and indexed rents: what owner and tenant put in and take out",
    year: "definition",
  },
  "cimmyt-1976": {
    publisher: "International Maize and Wheat Improvement Center (CIMMYT)",
    title: "From Agronomic Data to Farmer Recommendations (Perrin and others), with the revision of 1988",
    year: "1976",
  },
  "three-point-range": {
    publisher: "By definition",
    title: "Triangular and PERT distributions of a lowest, a likeliest and a highest value",
    year: "definition",
  },
  "bivariate-normal-product": {
    publisher: "By definition",
    title: "Mean and variance of the product of two correlated normal amounts",
    year: "definition",
  },
  "gaussian-copula": {
    publisher: "By definition",
    title: "Gaussian copula: two amounts joined by the correlation of their normal scores",
    year: "definition",
  },
  "risk-measures": {
    publisher: "By definition",
    title: "Percentiles, value at risk and the mean beyond it, shortfall, certainty equivalent of exponential utility",
    year: "definition",
  },
  "stochastic-dominance": {
    publisher: "By definition",
    title: "First- and second-degree stochastic dominance",
    year: "definition",
  },
  "farmdoc-price-yield-2012": {
    publisher: "University of Illinois, farmdoc daily",
    title: "The Relative Importance of Price vs. Yield Variability in Crop Revenue Risk",
    year: "2012",
  },
  "babcock-1993": {
    publisher: "Journal of Agricultural and Resource Economics 18:17-24",
    title: "Risk and Probability Premiums for CARA Utility Functions (Babcock, Choi and Feinerman)",
    year: "1993",
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
