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
  "kentucky-wheat-seeding": {
    publisher: "University of Kentucky Cooperative Extension (Bitzer and Herbek)",
    title: "Comprehensive guide to wheat management: seeding by seeds per square foot",
    year: "undated",
  },
  "thousand-kernel-weight": {
    publisher: "By definition",
    title: "Seeds in a pound from the weight of 1,000 kernels: 453,592 / grams",
    year: "definition",
  },
  "drill-catch": {
    publisher: "By definition",
    title: "Seed caught over a measured run, spread over the ground that run covers",
    year: "definition",
  },
  "purdue-field-guide-2010": {
    publisher: "Purdue University Extension",
    title: "Corn & Soybean Field Guide, stand counts by hoop and by row",
    year: "2010",
  },
  "student-t-interval": {
    publisher: "By definition",
    title: "Student's t interval of a mean, and the sample size it asks for",
    year: "definition",
  },
  "unl-stand-counts-2016": {
    publisher: "University of Nebraska-Lincoln, CropWatch",
    title: "Stand assessment: ten random places, two neighbouring rows each",
    year: "2016",
  },
  "ssmg-37": {
    publisher: "Site-Specific Management Guidelines (Carlson, Doerge and Clay)",
    title: "SSMG-37, plant spacing variability and corn yield",
    year: "undated",
  },
  "purdue-spacing-2004": {
    publisher: "Purdue University, Department of Agronomy",
    title: "Plant spacing variability in corn (a trial at one site, 2004; survey of 354 fields 1987 to 1996)",
    year: "2004",
  },
  "spacing-study-2001": {
    publisher: "Seed industry, quoted by Extension",
    title: "Study of corn plant spacing",
    year: "2001",
  },
  "purdue-spacing": {
    publisher: "Purdue University, Department of Agronomy",
    title: "Corn plant spacing: 2.5 bu/ac for each inch of standard deviation",
    year: "undated",
  },
  "iso-7256-1": {
    publisher: "International Organization for Standardization",
    title: "ISO 7256-1, Sowing equipment, test methods: single seed drills",
    year: "1984",
  },
  "population-optimum": {
    publisher: "By definition",
    title: "Best stand: where a thousand more plants bring what their seed costs",
    year: "definition",
  },
  "nafziger-1994": {
    publisher: "Journal of Production Agriculture (Nafziger)",
    title: "7:59-62, corn planting date and plant population, as tabulated by Purdue Pest & Crop 2012 issue 15",
    year: "1994",
  },
  "isu-pm1885-2001": {
    publisher: "Iowa State University Extension",
    title: "PM 1885, Corn Planting Guide",
    year: "2001",
  },
  "isu-ipm0001": {
    publisher: "Iowa State University Extension",
    title: "IPM 0001, Corn and Soybean Field Guide",
    year: "undated",
  },
  "isu-gaps-2009": {
    publisher: "Iowa State University Extension",
    title: "Corn replant decisions: gaps and uneven emergence",
    year: "2009",
  },
  "wisconsin-lauer-2003": {
    publisher: "University of Wisconsin (Lauer)",
    title: "Wisconsin Crop Manager 10(7):56-57, corn replanting, relative-maturity zones of 95 to 115 days",
    year: "2003",
  },
  "illinois-bulletin-2009": {
    publisher: "University of Illinois Extension",
    title: "The Bulletin 2009 issue 11 article 3, soybean stands and late planting",
    year: "2009",
  },
  "soybean-dates": {
    publisher: "Universities of Minnesota and Missouri, put together here",
    title: "Soybean yield by planting date: statements of 2015, 2017 and 2019",
    year: "2019",
  },
  "pennstate-soybean-2019": {
    publisher: "Penn State Extension",
    title: "Replanting soybean",
    year: "2019",
  },
  "pennstate-wheat-stand": {
    publisher: "Penn State Extension",
    title: "Wheat stand assessment",
    year: "undated",
  },
  "ontario-wheat-stand-2012": {
    publisher: "Ridgetown College, University of Guelph (Smid), as printed in Ontario",
    title: "Winter wheat stands and yield, 1986 to 1990",
    year: "2012",
  },
  "replant-economics": {
    publisher: "Land-grant Extension",
    title: "Replant decision: worth of the second stand against the first, and its cost",
    year: "undated",
  },
  "nebraska-replant-2009": {
    publisher: "University of Nebraska-Lincoln, CropWatch",
    title: "Corn replant decision, with a tenth off the second stand",
    year: "2009",
  },
  "osu-agf-101": {
    publisher: "Ohio State University Extension",
    title: "AGF-101, heat units of corn (86/50 method)",
    year: "undated",
  },
  "umn-coulter-2021": {
    publisher: "University of Minnesota Extension (Coulter, after Nielsen 2019)",
    title: "Growing degree days and corn leaf stages",
    year: "2021",
  },
  "purdue-corn-leaves": {
    publisher: "Purdue University (Nielsen)",
    title: "Leaf stages of corn and heat units",
    year: "2019",
  },
  "isu-pmr-1009": {
    publisher: "Iowa State University Extension (Abendroth and others)",
    title: "PMR 1009, Corn Growth and Development, quoted by Ohio State University",
    year: "2011",
  },
  "nielsen-2002": {
    publisher: "Agronomy Journal (Nielsen and others) and Purdue University",
    title: "Hybrid maturity for delayed planting: heat units to black layer fall with each day",
    year: "2002",
  },
  "osu-corn-newsletter": {
    publisher: "Ohio State University Extension, C.O.R.N. newsletter",
    title: "Corn dry-down in the field: heat units a point, and points a day by season",
    year: "2024",
  },
  "nafziger-2013": {
    publisher: "University of Illinois (Nafziger)",
    title: "Corn yield loss by planting date, statement on planting-date trials",
    year: "2013",
  },
  "wisconsin-a117": {
    publisher: "University of Wisconsin (Lauer)",
    title: "A117, Optimum corn planting dates are later up north, derived from Lauer and others 1999",
    year: "undated",
  },
  "umn-naeve-2017": {
    publisher: "University of Minnesota Extension (Naeve and Nicolai)",
    title: "Soybean planting dates at Lamberton",
    year: "2017",
  },
  "missouri-reis-2023": {
    publisher: "University of Missouri (Reis)",
    title: "Soybean planting date in the variety trials",
    year: "2023",
  },
  "virginia-soybean-replant": {
    publisher: "Virginia Cooperative Extension",
    title: "Ag Pest Advisory, replanting soybean",
    year: "undated",
  },
  "unl-soybean-dates": {
    publisher: "University of Nebraska research in Agronomy Journal, in the trade press",
    title: "Soybean yield lost for each day after May 1, seasons 2003 and 2004",
    year: "2004",
  },
  "treatment-arithmetic": {
    publisher: "By definition",
    title: "Cost of seed treatment or inoculant: price of the package over the seed it treats",
    year: "definition",
  },
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
