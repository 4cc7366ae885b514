import type { Source } from "./source";

/** Publications on nitrogen, sulfur, micronutrients, salts, cations, legume and manure credits. */
export const nitrogenSources = {
  "unl-nitrogen-2021": {
    publisher: "Nebraska Extension",
    title: "The UNL nitrogen equation (Rees), from EC117",
    year: "2021",
  },
  "unl-ec117": {
    publisher: "Nebraska Extension",
    title: "EC117, Nutrient Management Suggestions for Corn",
    year: "undated",
  },
  "ksu-organic-matter-2022": {
    publisher: "K-State Extension",
    title: "Newspaper column on nitrogen and sulfur from organic matter",
    year: "2022",
  },
  "sdsu-corn-nitrogen-2023": {
    publisher: "South Dakota State University Extension",
    title: "Updated 2023 corn nitrogen fertilizer rate guidelines",
    year: "2023",
  },
  "sdsu-ec750": {
    publisher: "South Dakota State University",
    title: "EC750, Fertilizer Recommendations Guide",
    year: "undated",
  },
  "mu-recommendations-2006": {
    publisher: "University of Missouri",
    title: "Documentation of Missouri soil test recommendations (2006 changes)",
    year: "2006",
  },
  "osu-wheat-nitrogen-2011": {
    publisher: "Ohio State University Extension",
    title: "Nitrogen recommendations for wheat (Lentz, Mullen), quoting E-2567",
    year: "2011",
  },
  "osu-corn-newsletter-2023": {
    publisher: "Ohio State University Extension",
    title: "C.O.R.N. newsletter 2023-07, When and how much nitrogen to apply to wheat (Bulletin 974)",
    year: "2023",
  },
  "isu-late-spring-2004": {
    publisher: "Iowa State University Extension",
    title: "Late spring N-test reports (Lang), from PM 1714",
    year: "2004",
  },
  "ndsu-costs-2022": {
    publisher: "NDSU Crop & Pest Report",
    title: "Fertilizer rates when costs are high, part 3, 28 April 2022",
    year: "2022",
  },
  "ndsu-spring-wheat-2009": {
    publisher: "North Dakota State University",
    title: "Spring wheat nitrogen recalibration, farm-press summary",
    year: "2009",
  },
  "ndsu-barley-2022": {
    publisher: "NDSU Extension",
    title: "County column, Fertility for barley and spring wheat, 2021-22",
    year: "2022",
  },
  "umn-wheat": {
    publisher: "University of Minnesota Extension",
    title: "Fertilizing wheat in Minnesota",
    year: "undated",
  },
  "umn-sunflower": {
    publisher: "University of Minnesota Extension",
    title: "Sunflower fertilizer recommendations",
    year: "undated",
  },
  "umn-canola": {
    publisher: "University of Minnesota Extension",
    title: "Fertilizing canola in Minnesota",
    year: "undated",
  },
  "umn-oat": { publisher: "University of Minnesota Extension", title: "Fertilizing oat in Minnesota", year: "undated" },
  "umn-corn": {
    publisher: "University of Minnesota Extension",
    title: "Fertilizing corn in Minnesota",
    year: "undated",
  },
  "umn-corn-nitrate-2002": {
    publisher: "University of Minnesota Extension",
    title: "A soil nitrogen test option for N recommendations with corn",
    year: "2002",
  },
  "umn-corn-2006": {
    publisher: "University of Minnesota Extension",
    title: "New nitrogen guidelines for corn production in Minnesota",
    year: "2006",
  },
  "umn-corn-2011": { publisher: "University of Minnesota Extension", title: "Corn price ratio example", year: "2011" },
  "umn-sugarbeet-2011": {
    publisher: "University of Minnesota Extension",
    title: "Fertilizer recommendations for agronomic crops in Minnesota, sugar beet",
    year: "2011",
  },
  "umn-small-grains-guide": {
    publisher: "University of Minnesota Extension",
    title: "Small Grains Field Guide, Fertility management of oats",
    year: "undated",
  },
  "yield-based-nitrogen": {
    publisher: "Agronomy Journal",
    title: "Origins, implications and consequences of yield-based nitrogen management (Rodriguez and others)",
    year: "undated",
  },
  "fausti-2017": {
    publisher: "Practical Mathematics for Precision Farming",
    title: "Chapter 11, economic optimum of a quadratic response (Fausti and others)",
    year: "2017",
  },
  "cerrato-blackmer-1990": {
    publisher: "Agronomy Journal",
    title: "82:138, Comparison of models describing corn yield response to nitrogen (Cerrato, Blackmer)",
    year: "1990",
  },
  "hay-forage-credit": {
    publisher: "Hay & Forage Grower",
    title: "Farming credit due (Undersander, Shewmaker); Giving credit where due",
    year: "undated",
  },
  "ndsu-credit-2023": {
    publisher: "NDSU Dickinson Research Extension Center",
    title: "Do not forget your nitrogen credit",
    year: "2023",
  },
  "ndsu-beet-tops-2018": {
    publisher: "North Dakota State University",
    title: "Nitrogen non-cycling from cover crops (sugar beet tops)",
    year: "2018",
  },
  "north-platte-credits": {
    publisher: "North Platte Natural Resources District",
    title: "Nitrogen credits (University of Nebraska recommendations)",
    year: "undated",
  },
  "ksu-legume-wheat": {
    publisher: "Kansas State University",
    title: "Keep legume nitrogen credits in mind when topdressing wheat (Leikam)",
    year: "undated",
  },
  "canola-watch-2016": {
    publisher: "Canola Council of Canada",
    title: "Canola Watch, 17 March 2016 (Karamanos)",
    year: "2016",
  },
  "organic-release-rule": {
    publisher: "Laboratory practice",
    title: "Nitrogen released per percent of organic matter, a common laboratory rule",
    year: "undated",
  },
  "umn-sulfur": {
    publisher: "University of Minnesota",
    title: "Evaluation of sulfur guidelines for major crops in Minnesota (Kaiser)",
    year: "undated",
  },
  "unl-postpone-2016": {
    publisher: "Nebraska Extension",
    title: "Postponing P and K applications, Tables 1-2 (Shapiro, Krienke, Ferguson)",
    year: "2016",
  },
  "ksu-wheat-sulfur": {
    publisher: "Kansas State University",
    title: "Sulfur fertility management (wheat)",
    year: "undated",
  },
  "isu-alfalfa-sulfur": {
    publisher: "Iowa State University Extension",
    title: "Dealing with sulfur deficiency in northeast Iowa alfalfa",
    year: "undated",
  },
  "umn-micronutrients-2009": {
    publisher: "University of Minnesota",
    title: "Micronutrient review (Rehm)",
    year: "2009",
  },
  "unl-zinc": { publisher: "Nebraska Extension", title: "Zinc deficiency in corn (Mueller)", year: "undated" },
  "ipni-zinc-2013": {
    publisher: "International Plant Nutrition Institute",
    title: "Zinc fertility for corn",
    year: "2013",
  },
  "rutgers-soil-lab": {
    publisher: "Rutgers Soil Testing Laboratory",
    title: "Micronutrient critical levels",
    year: "undated",
  },
  "psu-boron": { publisher: "Penn State Extension", title: "Boron and Forages", year: "undated" },
  "umn-boron": { publisher: "University of Minnesota Extension", title: "Boron in Minnesota soils", year: "undated" },
  "ksu-chloride": {
    publisher: "Kansas State University",
    title: "Wheat yields show boost when adding chloride fertilizer (Mengel)",
    year: "undated",
  },
  "sdsu-chloride": {
    publisher: "South Dakota State University",
    title: "Soil testing laboratory nutrient page, chloride (calibration of Fixen and others, 1987)",
    year: "undated",
  },
  "foliar-manganese": {
    publisher: "Purdue University Extension",
    title: "Foliar manganese on soybean, Tri-State guidance",
    year: "undated",
  },
  "chlorosis-risk-2021": {
    publisher: "Regional soil laboratory, Upper Midwest",
    title: "Soybean iron chlorosis risk by carbonate and salts (1:1)",
    year: "2021",
  },
  "ksu-starter": {
    publisher: "Kansas State University",
    title: "eUpdate, Starter fertilizer for corn: nitrogen placement and rate",
    year: "undated",
  },
  "msu-bands-2009": {
    publisher: "Michigan State University Extension",
    title: "MSU recommendations for phosphorus and potassium",
    year: "2009",
  },
  "umn-dry-soil-2013": {
    publisher: "University of Minnesota Extension",
    title: "Crop news, Spring N management options for small grains",
    year: "2013",
  },
  "clemson-cec": {
    publisher: "Clemson University Agricultural Service Laboratory",
    title: "CEC calculations",
    year: "undated",
  },
  "ohio-valley-cec": {
    publisher: "Regional soil laboratory, Ohio Valley",
    title: "Note on CEC with the SMP buffer",
    year: "undated",
  },
  "cornell-manure-release": {
    publisher: "Cornell University",
    title: "CSS 412 nutrient management course, Release rate for organic N in manure",
    year: "undated",
  },
  "isu-pmr1003-2016": {
    publisher: "Iowa State University",
    title: "PMR 1003, Using Manure Nutrients for Crop Production",
    year: "2016",
  },
  "isu-manure-2021": {
    publisher: "Iowa State University",
    title: "Manure nitrogen availability around the Midwest (Andersen), Tables 1-2",
    year: "2021",
  },
  "mu-manure-regional": {
    publisher: "University of Missouri",
    title: "Regional summary of nutrient availability coefficients (Lory, Conover)",
    year: "undated",
  },
  "mwps-18": {
    publisher: "MidWest Plan Service",
    title: "MWPS-18 Section 1, Manure Characteristics, 2nd edition (Lorimor, Powers, Sutton)",
    year: "2004",
  },
  "mid-atlantic-manure": {
    publisher: "Mid-Atlantic Nutrient Management Handbook",
    title: "Chapter 9, manure nutrients (Hansen, University of Delaware)",
    year: "undated",
  },
} as const satisfies Record<string, Source>;
