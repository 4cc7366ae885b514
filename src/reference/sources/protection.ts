import type { Source } from "./source";

/** Publications on spraying, pest thresholds, weeds and herbicide groups. */
export const protectionSources = {
  "ufl-sprayer-calibration": {
    publisher: "University of Florida, IFAS Extension",
    title: "Sprayer calibration: gallons per acre, nozzle flow, speed and spacing (constant 5,940)",
    year: "undated",
  },
  "lsu-ounces-gallons": {
    publisher: "Louisiana State University AgCenter",
    title: "Ounces equal gallons sprayer calibration (1/128 acre)",
    year: "undated",
  },
  "clemson-calibration": {
    publisher: "Clemson University",
    title: "Spray calibration, course lengths",
    year: "undated",
  },
  "nozzle-orifice": {
    publisher: "By definition",
    title: "Flow through an orifice goes with the square root of the pressure",
    year: "definition",
  },
  "sprayer-practice": {
    publisher: "Land-grant Extension",
    title: "Sprayer practice: working pressures and worn nozzles",
    year: "undated",
  },
  "unl-solutions-2016": {
    publisher: "University of Nebraska, CropWatch",
    title: "Setting the sprayer flow rate for non-water solutions",
    year: "2016",
  },
  "uga-sumner-density": {
    publisher: "University of Georgia (Sumner)",
    title: "Conversion factors for solutions other than water",
    year: "undated",
  },
  "tank-arithmetic": {
    publisher: "Land-grant Extension",
    title: "Pesticide applicator training: tank loads, product rates and active ingredient",
    year: "undated",
  },
  "pedigo-injury-level": {
    publisher: "Pedigo, quoted in Cornell and Wisconsin course notes",
    title: "Economic injury level, C / (V × I × D × K), and economic threshold",
    year: "undated",
  },
  "ragsdale-2007": {
    publisher: "Journal of Economic Entomology (Ragsdale and others)",
    title: "Economic threshold for soybean aphid",
    year: "2007",
  },
  "mccarville-2011": {
    publisher: "Journal of Economic Entomology 104:845 (McCarville and others)",
    title: "Soybean aphid: days from threshold to injury level",
    year: "2011",
  },
  "isu-aphid-recalculated": {
    publisher: "Iowa State University entomologists, quoted in the trade press",
    title: "Soybean aphid injury level at higher prices",
    year: "undated",
  },
  "press-no-till-aphid": {
    publisher: "No-till farm press quoting Extension",
    title: "Soybean aphid from R6 on",
    year: "undated",
  },
  "isu-defoliation": {
    publisher: "Iowa State University (Hodgson)",
    title: "Soybean defoliation thresholds",
    year: "undated",
  },
  "osu-defoliation-2024": {
    publisher: "Ohio State University Extension",
    title: "Soybean defoliation thresholds",
    year: "2024",
  },
  "ncsu-defoliation-2012": {
    publisher: "North Carolina State University",
    title: "Soybean defoliation thresholds",
    year: "2012",
  },
  "uiuc-bulletin-1998": {
    publisher: "University of Illinois Extension",
    title: "The Bulletin (pest management and crop development)",
    year: "1998-2012",
  },
  "sdsu-leaf-beetle": {
    publisher: "South Dakota State University (Catangui)",
    title: "Bean leaf beetle in soybean",
    year: "undated",
  },
  "hunt-1995": {
    publisher: "Agronomy Journal 87:183 (Hunt, Higley, Witkowski), quoted by the University of Illinois",
    title: "Bean leaf beetle injury to seedling soybean",
    year: "1995",
  },
  "extension-stink-bugs": {
    publisher: "North-central Extension",
    title: "Stink bug threshold for grain soybean",
    year: "undated",
  },
  "utk-stink-bugs-2024": {
    publisher: "University of Tennessee, quoted in the farm cooperative press",
    title: "Stink bug thresholds in soybean",
    year: "2024",
  },
  "utk-armyworm-2017": { publisher: "University of Tennessee", title: "True armyworm in wheat", year: "2017" },
  "uga-soybean-2014": { publisher: "University of Georgia", title: "Soybean Production Guide", year: "2014" },
  "udel-crop-update": { publisher: "University of Delaware", title: "Weekly Crop Update", year: "undated" },
  "trade-rootworm-2020": {
    publisher: "Trade agronomy newsletter reporting university and agency surveys",
    title: "Corn rootworm beetles per plant",
    year: "2020",
  },
  "unl-rootworm-silking": {
    publisher: "University of Nebraska",
    title: "Corn rootworm beetles at silking",
    year: "undated",
  },
  "press-cutworm-2012": {
    publisher: "Indiana farm press, agronomy column",
    title: "Black cutworm",
    year: "April 2012",
  },
  "uky-cutworm": {
    publisher: "University of Kentucky, quoted in the farm press",
    title: "Black cutworm",
    year: "undated",
  },
  "osu-bean-cutworm-2019": {
    publisher: "Ohio State University Extension",
    title: "Western bean cutworm",
    year: "2019 and 2021",
  },
  "ksu-bean-cutworm": {
    publisher: "Kansas State University and Colorado State University",
    title: "Western bean cutworm",
    year: "undated",
  },
  "ncsu-stink-bugs": {
    publisher: "North Carolina State University, Entomology",
    title: "Stink bugs in corn: treat, sample more, leave",
    year: "undated",
  },
  "ndsu-umn-aphids": {
    publisher: "North Dakota State University and University of Minnesota Extension",
    title: "Cereal aphids in wheat",
    year: "undated",
  },
  "ndsu-grasshoppers": {
    publisher: "North Dakota State University Extension",
    title: "Grasshoppers in field crops",
    year: "undated",
  },
  "extension-leaf-beetle": {
    publisher: "Land-grant Extension",
    title: "Cereal leaf beetle before boot",
    year: "undated",
  },
  "rutgers-leaf-beetle-2011": { publisher: "Rutgers University Extension", title: "Cereal leaf beetle", year: "2011" },
  "alberta-crop-protection": {
    publisher: "Alberta Agriculture",
    title: "Crop Protection guide, insect thresholds",
    year: "undated",
  },
  "wi-pest-bulletin-2013": {
    publisher: "Wisconsin Department of Agriculture",
    title: "Pest Bulletin",
    year: "2013",
  },
  "cousens-1985": {
    publisher: "Cousens",
    title: "Yield loss as a rectangular hyperbola of weed density",
    year: "1985",
  },
  "cousens-1987": {
    publisher: "Cousens and others",
    title: "Yield loss with weed density and relative time of emergence",
    year: "1987",
  },
  "alms-2016": {
    publisher: "Weed Science 64(3) (Alms and others)",
    title: "Volunteer soybean in corn",
    year: "2016",
  },
  "klingaman-1994": {
    publisher: "Weed Science 42:523 (Klingaman, Oliver)",
    title: "Palmer amaranth in soybean",
    year: "1994",
  },
  "bensch-2003": {
    publisher: "Weed Science 51:37 (Bensch, Horak, Peterson)",
    title: "Interference of pigweed species in soybean",
    year: "2003",
  },
  "massinga-2001": {
    publisher: "Weed Science 49:202 (Massinga and others)",
    title: "Interference of Palmer amaranth in corn",
    year: "2001",
  },
  "fischer-2004": {
    publisher: "Weed Science 52:1034 (Fischer and others)",
    title: "Common lambsquarters in corn across states",
    year: "2004",
  },
  "purdue-field-guide": {
    publisher: "Purdue University, quoted in the farm press",
    title: "Field guide, weed competition in soybean",
    year: "undated",
  },
  "barrentine-1974": {
    publisher: "Barrentine, quoted in Weed Technology",
    title: "Common cocklebur in soybean",
    year: "1974",
  },
  "morgan-2001": {
    publisher: "Morgan and others, quoted in Weed Technology",
    title: "Palmer amaranth in cotton",
    year: "2001",
  },
  "planta-daninha-2006": {
    publisher: "Planta Daninha",
    title: "Thresholds of redroot pigweed in corn, one site",
    year: "2006",
  },
  "knezevic-2003": {
    publisher: "Weed Technology 17:666 (Knezevic, Evans, Mainz)",
    title: "Row spacing and the critical time of weed removal in soybean",
    year: "2003",
  },
  "evans-2003": {
    publisher: "Weed Science (Evans and others); review by Knezevic and others",
    title: "Nitrogen and the critical period of weed control in corn",
    year: "2003",
  },
  "soltani-2022": {
    publisher: "Weed Technology 36(2) (Soltani and others)",
    title: "Critical time of weed removal in corn, Ontario",
    year: "2022",
  },
  "nedeljkovic-2021": {
    publisher: "Agriculture (Nedeljkovic and others)",
    title: "Residual herbicides and the critical time of weed removal in corn",
    year: "2021",
  },
  "extension-weed-free": {
    publisher: "Land-grant Extension",
    title: "Weed-free period of soybean, general advice",
    year: "undated",
  },
  "hrac-classification": {
    publisher: "Herbicide Resistance Action Committee and Weed Science Society of America",
    title: "Numeric classification of herbicides by site of action (2020 revision)",
    year: "2020",
  },
  "hrac-guideline": {
    publisher: "Herbicide Resistance Action Committee",
    title: "Guideline to the management of herbicide resistance, risk by management option",
    year: "undated",
  },
  "program-practice": {
    publisher: "Land-grant Extension, weed science",
    title: "Diverse programs: effective sites of action by pass and season",
    year: "undated",
  },
  "evans-2016": {
    publisher: "Pest Management Science 72:74 (Evans and others)",
    title: "Managing the evolution of herbicide resistance (105 farms in Illinois)",
    year: "2016",
  },
  "label-law": {
    publisher: "Label of the product at hand",
    title: "Rates, intervals and conditions as the person reads them there",
    year: "current",
  },
  "ucipm-symptoms": {
    publisher: "University of California IPM",
    title: "Herbicide Symptoms, by WSSA group",
    year: "undated",
  },
  "pnw-weed-handbook": {
    publisher: "Oregon State University, Washington State University, University of Idaho",
    title: "Pacific Northwest Weed Management Handbook",
    year: "undated",
  },
  "ncsu-herbicide-injury": {
    publisher: "North Carolina State University",
    title: "Herbicide injury factsheets",
    year: "undated",
  },
  "croplife-au-groups-2024": {
    publisher: "CropLife Australia",
    title: "Herbicide group guidelines",
    year: "2024",
  },
  "arizona-herbicides": {
    publisher: "University of Arizona Extension",
    title: "Page that names clodinafop an ACCase inhibitor",
    year: "undated",
  },
  "uiuc-als": { publisher: "University of Illinois Extension", title: "ALS-inhibiting herbicides", year: "undated" },
  "msu-eb0232": {
    publisher: "Montana State University",
    title: "EB0232, herbicide injury guide",
    year: "undated",
  },
  "acs-sulfonylurea": {
    publisher: "American Chemical Society, agrochemicals division",
    title: "The first sulfonylurea",
    year: "undated",
  },
  "unl-lesson": {
    publisher: "University of Nebraska, Plant and Soil Sciences",
    title: "Lessons on herbicide modes of action",
    year: "undated",
  },
  "bowman-2020": {
    publisher: "Weed Technology 35(1) (Bowman and others)",
    title: "Paper that puts nicosulfuron in WSSA Group 2",
    year: "2020",
  },
  "papapanagiotou-2022": {
    publisher: "Weed Science Society journal (Papapanagiotou and others)",
    title: "Resistance of johnsongrass to ALS inhibitors",
    year: "2022",
  },
  "geier-2013": {
    publisher: "Agronomy 3:340 (Geier and others)",
    title: "Paper that names ALS inhibitors of winter wheat",
    year: "2013",
  },
  "sugarbeet-board": {
    publisher: "Sugarbeet Research and Education Board of Minnesota and North Dakota",
    title: "Report that names imazaquin an ALS inhibitor",
    year: "undated",
  },
  "pmra-2014": {
    publisher: "Canadian Pest Management Regulatory Agency, quoted in the press",
    title: "Re-evaluation notice, flumetsulam",
    year: "2014",
  },
  "missouri-dinitroaniline": {
    publisher: "University of Missouri",
    title: "Mitotic disruptors (dinitroanilines)",
    year: "undated",
  },
  "omafra-weed-2021": { publisher: "Ontario Ministry of Agriculture", title: "Guide to Weed Control", year: "2021" },
  "mda-groups": {
    publisher: "Minnesota Department of Agriculture",
    title: "Page that puts metribuzin in Group 5",
    year: "undated",
  },
  "wssa-news-2024": {
    publisher: "Weed Science Society of America",
    title: "News release of 5 June 2024 (diflufenican, Group 12)",
    year: "2024",
  },
  "hrac-industry-table": {
    publisher: "Industry table citing HRAC and WSSA",
    title: "PPO inhibitors by chemical family",
    year: "undated",
  },
  "grdc-2024": {
    publisher: "Grains Research and Development Corporation (Australia)",
    title: "Update paper, Group 14 table",
    year: "March 2024",
  },
  "ms-soybean-2020": {
    publisher: "Mississippi Soybean Promotion Board",
    title: "Page that lists Group 14 herbicides",
    year: "2020",
  },
  "metzger-2018": {
    publisher: "Weed Technology (Metzger and others)",
    title: "Paper on HPPD inhibitors in corn (Group 27)",
    year: "2018",
  },
  "smith-2019": {
    publisher: "American Journal of Plant Sciences 10:1350 (Smith and others)",
    title: "Paper that names isoxaflutole an HPPD inhibitor",
    year: "2019",
  },
} as const satisfies Record<string, Source>;
