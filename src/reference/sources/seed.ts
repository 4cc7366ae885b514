import type { Source } from "./source";

/** Publications on seed, stand, protection, cover, machinery and harvest. */
export const seedSources = {
  "ndsu-seeding-rates": {
    publisher: "North Dakota State University Extension",
    title: "Optimal Seeding Rates",
    year: "undated",
  },
  "ndsu-procrop-row-length": {
    publisher: "North Dakota State University Extension",
    title: "ProCrop, Estimating Soybean Yields Prior to Harvest (row lengths for 1/1000 acre)",
    year: "undated",
  },
  "purdue-corn-population": {
    publisher: "Purdue University, Pest & Crop newsletter",
    title: "Yield Response of Corn to Plant Population",
    year: "undated",
  },
  "illinois-corn-unit": {
    publisher: "University of Illinois and Iowa State University Extension",
    title: "Statements on the 80,000-kernel unit of seed corn",
    year: "undated",
  },
  "msu-soybean-seed-2010": {
    publisher: "Michigan State University Extension",
    title: "Soybean seeding rate and return to seed (140,000-seed unit)",
    year: "2010",
  },
  "trade-seed-units": { publisher: "Seed trade", title: "Customary counted units of seed", year: "undated" },
  "mn-statutes-239.32": {
    publisher: "State of Minnesota, Office of the Revisor of Statutes",
    title: "Minnesota Statutes, section 239.32 (pounds to the bushel)",
    year: "as amended 1935",
  },
  "uwex-bushels-test-weight": {
    publisher: "University of Wisconsin-Extension (Rankin)",
    title: "Bushels, Test Weight, Shrink, and Storage",
    year: "undated",
  },
  "osu-agf-503": {
    publisher: "Ohio State University Extension",
    title: "AGF-503 (bushel weights and moisture of grain)",
    year: "undated",
  },
  "usda-weight-per-bushel": {
    publisher: "United States Department of Agriculture",
    title: "Official weight per bushel of grains and oilseeds",
    year: "undated",
  },
  "canada-grain-conversions": {
    publisher: "Canadian grain trade",
    title: "Conversion list, bushels per tonne",
    year: "undated",
  },
  "trade-bushel-weights": {
    publisher: "Grain trade",
    title: "Customary bushel weights and market moistures",
    year: "undated",
  },
  "ufl-ag442-2020": {
    publisher: "University of Florida, IFAS Extension (Devkota and Mulvaney)",
    title: "AG442, Adjusting Crop Yield to a Standard Moisture Content",
    year: "2020",
  },
} as const satisfies Record<string, Source>;
