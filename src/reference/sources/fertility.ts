import type { Source } from "./source";

/** Publications on removal, lime, phosphate, potash and materials. */
export const fertilitySources = {
  "osu-974-2020": {
    publisher: "Ohio State University Extension",
    title: "Bulletin 974, Tri-State Fertilizer Recommendations",
    year: "2020",
  },
  "osu-anr96-2020": {
    publisher: "Ohio State University Extension",
    title: "ANR-96, fact sheet on the 2020 Tri-State recommendations",
    year: "2020",
  },
  "msu-e2567-1995": {
    publisher: "Michigan State, Ohio State and Purdue University Extension",
    title: "Bulletin E-2567 (AY-9-32), Tri-State Fertilizer Recommendations",
    year: "1995",
  },
  "isu-stover-2023": {
    publisher: "Iowa State University Extension",
    title: "Remove the Stover, Replace the Nutrients (quotes PM 1688)",
    year: "2023",
  },
  "isu-stover-replacement": {
    publisher: "Iowa State University Extension",
    title: "Nutrient replacement with corn and soybean stover removal (quotes PM 1688)",
    year: "undated",
  },
  "isu-silage-2017": {
    publisher: "Iowa State University Extension",
    title: "P and K in silage harvest of drought-damaged corn (quotes PM 1688, 2013)",
    year: "2017",
  },
  "isu-pm1688-2013": {
    publisher: "Iowa State University Extension",
    title: "PM 1688, A General Guide for Crop Nutrient and Limestone Recommendations in Iowa",
    year: "2013",
  },
  "isu-pm1688-2002": {
    publisher: "Iowa State University Extension",
    title: "PM 1688, limestone table, as printed in Liming terminology and analysis (Laboski, Wisconsin)",
    year: "2002",
  },
  "isu-ecce-laboski": {
    publisher: "University of Wisconsin-Madison",
    title: "Liming terminology and analysis (Laboski), quoting Iowa State University (Sawyer)",
    year: "undated",
  },
  "cftm-180090-2019": {
    publisher: "Crop, Forage & Turfgrass Management",
    title: "180090, New grain P and K concentration values for Illinois field crops (Villamil, Nafziger, Behnke)",
    year: "2019",
  },
  "mu-removal-2015": {
    publisher: "International Plant Nutrition Institute and University of Missouri",
    title: "Improving Accuracy of Nutrient Removal Estimates, annual summary",
    year: "2015",
  },
  "umn-potassium-2019": {
    publisher: "University of Minnesota Extension",
    title: "Potassium guideline updates, crop news",
    year: "2019",
  },
  "omafra-removal-2025": {
    publisher: "Ontario Ministry of Agriculture",
    title: "Crop Removal Values (field crops)",
    year: "2025",
  },
  "northeast-removal-1999": {
    publisher: "Northeast USA project (DE, MA, MD, NJ, PA)",
    title: "P and K removal by corn grain, 13 sites, 1998-99",
    year: "1999",
  },
  "kaes-corn-2021": {
    publisher: "Kansas Agricultural Experiment Station",
    title: "Research Reports, Long-term N and P fertilization of irrigated corn (Schlegel, Bond), 2018-2021",
    year: "2021",
  },
  "kaes-sorghum-2021": {
    publisher: "Kansas Agricultural Experiment Station",
    title: "Research Reports, Long-term N and P fertilization of irrigated grain sorghum (Schlegel, Bond), 2016-2021",
    year: "2021",
  },
  "ipni-briefs-2008": {
    publisher: "International Plant Nutrition Institute",
    title: "Agri-Briefs Fall 2008 No. 4, nutrient removal in the north-central USA",
    year: "2008",
  },
  "ipni-removal-2014": {
    publisher: "International Plant Nutrition Institute",
    title: "Estimates of nutrient uptake and removal",
    year: "2014",
  },
  "ipni-removal-2014-reprint": {
    publisher: "Crop-nutrition article reprinted by a farm cooperative",
    title: "How record yields are impacting soil nutrient levels (values of the IPNI 2014 edition)",
    year: "2015",
  },
  "ipni-beets-2017": {
    publisher: "International Plant Nutrition Institute and USDA-ARS Idaho",
    title: "Nutrient accumulation of high-yielding sugar beets, annual summaries 2015-2017",
    year: "2017",
  },
  "press-corn-chart-2012": {
    publisher: "Farm press",
    title: "Printed nutrient removal chart, corn grain and stover",
    year: "2012",
  },
  "sdsu-potassium-2014": {
    publisher: "South Dakota State University Extension",
    title: "Soil potassium (dry and moist K test)",
    year: "about 2014",
  },
  "ncsu-ag439-16": {
    publisher: "North Carolina State Extension",
    title: "AG-439-16, Nutrient Removal by Crops in North Carolina",
    year: "undated",
  },
  "ndsu-silage-2021": {
    publisher: "NDSU Crop & Pest Report",
    title: "Fertilizer value of distressed corn harvest for forage",
    year: "2021",
  },
  "ndsu-straw-2021": {
    publisher: "NDSU Crop & Pest Report",
    title: "Fertilizer value of wheat and barley straw",
    year: "2021",
  },
  "ndsu-sf715-2021": {
    publisher: "NDSU Extension",
    title: "SF715, Fertilizing Potato in North Dakota, Table 1 (Rosen and Bierman 2017)",
    year: "2021",
  },
  "psu-facts-14": {
    publisher: "Penn State Extension",
    title: "Agronomy Facts 14, Managing potassium for crop production",
    year: "undated",
  },
  "psu-agronomy-guide": {
    publisher: "Penn State Extension",
    title: "Agronomy Guide, Part 1 Section 2, Limestone recommendation",
    year: "undated",
  },
  "osu-knox-straw-2023": {
    publisher: "Ohio State University Extension, Knox County",
    title: "Nutrient Value of Wheat Straw",
    year: "2023",
  },
  "osu-straw-2016": {
    publisher: "Ohio State University Extension",
    title: "Nutrient value of wheat straw (Lentz, Lindsey); quotes Michigan State University",
    year: "2016",
  },
  "osu-wheat-sulfur-2025": {
    publisher: "Ohio State University Extension",
    title: "Sulfur and nitrogen management in wheat",
    year: "2025",
  },
  "osu-hay-manure-2017": {
    publisher: "Ohio State University Extension",
    title: "Livestock manure for hay fields",
    year: "2017",
  },
  "osu-build-2012": {
    publisher: "Ohio State University Extension",
    title: "How much fertilizer will move soil test levels",
    year: "2012",
  },
  "osu-anr74": {
    publisher: "Ohio State University Extension",
    title: "ANR-74, phosphorus and potassium removal of a corn-soybean rotation",
    year: "undated",
  },
  "uiuc-wheat-straw": {
    publisher: "University of Illinois Extension",
    title: "What is the value of wheat straw (Fernandez)",
    year: "undated",
  },
  "uiuc-residue": {
    publisher: "University of Illinois Extension",
    title: "Crop residue and its nutrients (Fernandez)",
    year: "undated",
  },
  "uiuc-handbook-8": {
    publisher: "University of Illinois",
    title: "Illinois Agronomy Handbook, Chapter 8",
    year: "undated",
  },
  "residue-harvest-index": {
    publisher: "Agronomic practice",
    title: "Dry residue from grain yield and harvest index",
    year: "undated",
  },
  "cfi-removal-2001": {
    publisher: "Canadian Fertilizer Institute",
    title: "Nutrient uptake and removal by field crops, Western Canada",
    year: "2001",
  },
  "ccc-canola-2023": {
    publisher: "Canola Council of Canada",
    title: "How much fertilizer does canola need (2023 Western Canada uptake and removal guidelines)",
    year: "2023",
  },
  "msu-montana-pulse": {
    publisher: "Montana State University Extension",
    title: "Soil fertility for pulse crops, Table 2",
    year: "undated",
  },
  "uk-pss-142": {
    publisher: "University of Kentucky",
    title: "Plant & Soil Science Views 142, crop nutrient content",
    year: "undated",
  },
  "ppi-alfalfa": {
    publisher: "Potash & Phosphate Institute",
    title: "Potassium and phosphorus for quality alfalfa (Stewart)",
    year: "undated",
  },
  "msstate-bermudagrass": {
    publisher: "Mississippi State University",
    title: "Bermudagrass nutrient removal (Lemus), quoted in a farm-press column",
    year: "undated",
  },
  "agronj-bender-2013": {
    publisher: "Agronomy Journal",
    title: "105:161, Nutrient uptake, partitioning and remobilization in modern corn hybrids (Bender and others)",
    year: "2013",
  },
  "agronj-bender-2015": {
    publisher: "Agronomy Journal",
    title: "Nutrient uptake, partitioning and remobilization in modern soybean varieties (Bender and others)",
    year: "2015",
  },
  "umn-randall": {
    publisher: "University of Minnesota",
    title: "Managing P soil test values (Randall)",
    year: "undated",
  },
  "ksu-mf2586": {
    publisher: "Kansas State University",
    title: "MF2586, Soil Test Interpretations and Fertilizer Recommendations",
    year: "undated",
  },
  "ncda-circular1-2014": {
    publisher: "NCDA&CS Agronomic Division",
    title: "Circular 1, Crop Fertilization Based on North Carolina Soil Tests",
    year: "2014",
  },
  "adams-evans-1962": {
    publisher: "Soil Science Society of America Proceedings",
    title: "26:355-357 (Adams and Evans), as described by Huluka (Auburn University)",
    year: "1962",
  },
  "uw-a2809": {
    publisher: "University of Wisconsin-Madison Extension",
    title: "A2809, Nutrient application guidelines (SMP-era editions)",
    year: "before 2012",
  },
  "omafra-811": {
    publisher: "Ontario Ministry of Agriculture",
    title: "Publication 811, Agronomy Guide for Field Crops",
    year: "undated",
  },
  "mda-lime": {
    publisher: "Minnesota Department of Agriculture",
    title: "Agricultural Liming Materials Analysis Explanation",
    year: "undated",
  },
  "oaima-enp": {
    publisher: "Ohio Aggregates and Industrial Minerals Association",
    title: "Effective Neutralizing Power explanation; Ohio State University AGF-505",
    year: "undated",
  },
  "cornell-cca-po41": {
    publisher: "Cornell University",
    title: "Northeast Certified Crop Adviser study guide, PO 41",
    year: "undated",
  },
  "mu-ag-lime": {
    publisher: "University of Missouri Agricultural Experiment Station",
    title: "Ag Lime Control Service; Extension G9107",
    year: "undated",
  },
  "mu-lime-surface": {
    publisher: "University of Missouri Extension",
    title: "Lime rates that are not worked in",
    year: "undated",
  },
  "msstate-p3762": {
    publisher: "Mississippi State University Extension",
    title: "P3762, relative neutralizing value; same sieves in University of Kentucky ID-163 and AGR-106",
    year: "undated",
  },
  "nmsu-a133": {
    publisher: "New Mexico State University",
    title: "Guide A-133, pricing fertilizer nutrients",
    year: "undated",
  },
  "purdue-reckoning-2002": {
    publisher: "Purdue University",
    title: "Fertilizer reckoning (Nielsen)",
    year: "2002",
  },
  "aces-anr174": {
    publisher: "Alabama Cooperative Extension System",
    title: "ANR-174, Nutrient Content of Fertilizer Materials",
    year: "undated",
  },
  "fertilizer-physical-sheet": {
    publisher: "Fertilizer manufacturer, regional technical sheet",
    title: "Estimated physical characteristics of fertilizer material (typical values)",
    year: "undated",
  },
  "fertilizer-acidity-table": {
    publisher: "Extension reference table",
    title: "Acidity of fertilizer materials, lb of calcium carbonate per 100 lb",
    year: "undated",
  },
  "fertilizer-trade-grades": {
    publisher: "Fertilizer trade",
    title: "Grades and physical properties as the trade usually prints them",
    year: "undated",
  },
  "fluid-ams-uan-note": {
    publisher: "Fluid fertilizer technical note",
    title: "Ammonium sulfate and UAN blends",
    year: "undated",
  },
  "vce-spes199": {
    publisher: "Virginia Cooperative Extension",
    title: "SPES-199NP, nitrogen solution weights and temperature",
    year: "undated",
  },
  "mortvedt-2001": {
    publisher: "Mortvedt",
    title: "Salt index of fertilizer materials (table as quoted in a later article)",
    year: "2001",
  },
  "cornell-cca-po28": {
    publisher: "Cornell University",
    title: "Northeast Certified Crop Adviser study guide, PO 28",
    year: "undated",
  },
  "davidson-gypsum-2014": {
    publisher: "Farm press agronomist column (Davidson)",
    title: "Gypsum: 100 lb supplies 17 to 18 lb of sulfur",
    year: "2014",
  },
  "starter-note-2012": {
    publisher: "Fertilizer supplier note",
    title: "Salt index of starter solutions",
    year: "2012",
  },
  "nmsu-eddy-2017": {
    publisher: "New Mexico State University, Eddy County Extension",
    title: "Fertilizer, part 2: salt index per unit of nutrient",
    year: "2017",
  },
  "sampling-cost": {
    publisher: "By definition",
    title: "Cost of soil sampling: analyses and collecting over the acres and the years that the result serves",
    year: "definition",
  },
  "spreader-catch": {
    publisher: "By definition",
    title: "Pounds caught over the area caught: 43,560 square feet to the acre",
    year: "definition",
  },
  "osu-agbmp-p": {
    publisher: "Ohio State University Extension",
    title: "Best management practices, Soil test P levels and soil test reports",
    year: "undated",
  },
  "osu-anr75-2019": {
    publisher: "Ohio State University Extension",
    title: "ANR-75, converting between Mehlich-3, Bray P1 and ammonium acetate",
    year: "2019",
  },
  "isu-yields-2016": {
    publisher: "Iowa State University Extension",
    title: "High yields, low grain prices (Mallarino; quotes PM 1688, 2013)",
    year: "2016",
  },
  "isu-update-2013": {
    publisher: "Iowa State University Extension",
    title: "Update to Iowa P, K and lime recommendations",
    year: "2013",
  },
  "press-pm1688-2025": {
    publisher: "Farm press",
    title: "PM 1688 summarised",
    year: "2025",
  },
  "sdsu-ec750": {
    publisher: "South Dakota State University",
    title: "EC750, Fertilizer Recommendations Guide",
    year: "undated",
  },
  "umn-corn": {
    publisher: "University of Minnesota Extension",
    title: "Fertilizing corn in Minnesota (upper limits of P: Rehm)",
    year: "undated",
  },
  "umn-potassium-levels-2019": {
    publisher: "University of Minnesota Extension",
    title: "Updates to corn and soybean potassium guidelines, crop news",
    year: "2019",
  },
  "umn-vetsch-2019": {
    publisher: "University of Minnesota",
    title: "Winter Crop Days report (Vetsch), potassium classes to 2018",
    year: "2019",
  },
  "ndsu-potassium-2017": {
    publisher: "North Dakota State University",
    title: "Potassium recalibration; Crop & Pest Report, 31 Aug 2017",
    year: "2017",
  },
  "ndsu-costs-2022": {
    publisher: "NDSU Crop & Pest Report",
    title: "Fertilizer rates when costs are high, part 3",
    year: "2022",
  },
  "ndsu-barley-2022": {
    publisher: "NDSU Extension",
    title: "Fertility for barley and spring wheat, county column",
    year: "2022",
  },
  "unl-postponing-2016": {
    publisher: "Nebraska Extension",
    title: "Postponing P and K applications (Shapiro, Krienke, Ferguson)",
    year: "2016",
  },
  "unl-ec117": {
    publisher: "Nebraska Extension",
    title: "EC117, Nutrient Management Suggestions for Corn",
    year: "undated",
  },
  "unl-phosphorus-2018": {
    publisher: "Nebraska Extension",
    title: "What's new with P fertilizer use, Apr 2018; EC117 update note, Jul 2019",
    year: "2018",
  },
  "ksu-wheat-p-2014": {
    publisher: "Kansas State University",
    title: "Phosphorus fertility for wheat (Ruiz Diaz)",
    year: "2014",
  },
  "ksu-potassium-2011": {
    publisher: "Kansas State University",
    title: "Correction of potassium deficiency in soybean production in Kansas (Matz, Mengel)",
    year: "2011",
  },
  "uiuc-wheat-nutrients": {
    publisher: "University of Illinois Extension",
    title: "Nutrient tips to maximise wheat production (Fernandez)",
    year: "undated",
  },
  "uiuc-optimum-levels": {
    publisher: "University of Illinois",
    title: "Maintaining optimum nutrient levels (Fernandez), farm press",
    year: "undated",
  },
  "uiuc-status-2012": {
    publisher: "University of Illinois",
    title: "Soil fertility status of soils in Illinois",
    year: "2012",
  },
  "mu-handbook-2004": {
    publisher: "University of Missouri",
    title: "Soil Test Interpretations and Recommendations Handbook",
    year: "2004",
  },
  "mu-subsoil-p": {
    publisher: "University of Missouri",
    title: "P in Missouri subsoils (target level)",
    year: "undated",
  },
  "mu-classes": {
    publisher: "University of Missouri",
    title: "Missouri growers urged to check K and P in soils (Nathan)",
    year: "undated",
  },
  "uw-demand-levels": {
    publisher: "University of Wisconsin-Madison Extension",
    title: "A2809, demand levels, as a fertilizer publisher prints them",
    year: "undated",
  },
  "omafra-corn-p-2025": {
    publisher: "Ontario Ministry of Agriculture",
    title: "Ontario corn P recommendations still deliver (Rosser)",
    year: "2025",
  },
  "on-pk-database-2022": {
    publisher: "Ontario Ministry of Agriculture",
    title: "Ontario P and K Database (2015), summary",
    year: "2022",
  },
  "udel-nutrients": {
    publisher: "University of Delaware",
    title: "Nutrient Management Recommendations, Agronomic Crops",
    year: "undated",
  },
  "rutgers-levels": {
    publisher: "Rutgers Soil Testing Laboratory",
    title: "Relative levels of nutrients",
    year: "undated",
  },
  "clemson-classes": {
    publisher: "Clemson University Agricultural Service Laboratory",
    title: "Crop codes 029 small grain and 050 alfalfa",
    year: "undated",
  },
  "clemson-cec": {
    publisher: "Clemson University Agricultural Service Laboratory",
    title: "CEC calculations",
    year: "undated",
  },
  "lab-conversion-2005": {
    publisher: "Commercial laboratory, Ohio Valley",
    title: "Reporting-conversion note; note on CEC",
    year: "2005",
  },
  "psu-results": {
    publisher: "Penn State Extension",
    title: "Agronomy Guide, Interpreting the results",
    year: "undated",
  },
  "molar-masses": {
    publisher: "Chemistry",
    title: "Molar masses of the elements",
    year: "undated",
  },
} as const satisfies Record<string, Source>;
