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
  "illinois-seed-cost": {
    publisher: "University of Illinois Extension (Roegge)",
    title: "Seed Cost and Planting Rate for Corn",
    year: "undated",
  },
  "msu-soybean-seed-2010": {
    publisher: "Michigan State University Extension",
    title: "Maximizing Returns on Soybean Seed Investments (trials of 2009 and 2010)",
    year: "undated",
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
