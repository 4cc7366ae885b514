import type { Source } from "./source";

/** Publications on yield estimates, harvest loss, drying and storage. */
export const harvestSources = {
  "illinois-corn-components": {
    publisher: "eXtension and University of Illinois Extension",
    title: "Estimating corn yield before harvest: the yield component method",
    year: "undated",
  },
  "missouri-corn-estimate-2020": {
    publisher: "University of Missouri Extension, county column",
    title: "Estimating corn yield: kernels per bushel of modern hybrids",
    year: "2020",
  },
  "corn-estimate-spread": {
    publisher: "Land-grant Extension",
    title: "How far an early corn yield estimate may be off",
    year: "undated",
  },
  "purdue-soybean-estimate": {
    publisher: "Purdue University Extension",
    title: "Estimating soybean yield from the pods in 1/10,000 of an acre",
    year: "undated",
  },
  "ndsu-procrop-soybean": {
    publisher: "North Dakota State University Extension",
    title: "ProCrop, Estimating Soybean Yields Prior to Harvest",
    year: "undated",
  },
  "ndsu-soybean-field-guide": {
    publisher: "North Dakota State University Extension",
    title: "Soybean Production Field Guide",
    year: "undated",
  },
  "ndsu-crop-pest-report-2000": {
    publisher: "North Dakota State University Extension",
    title: "Crop & Pest Report, 20 July 2000, estimating small grain yields",
    year: "2000",
  },
  "ontario-wheat-estimate-2017": {
    publisher: "Ontario agronomy broadcast",
    title: "Estimating wheat yield from heads, kernels and kernel weight",
    year: "2017",
  },
  "ksu-wheat-heads": {
    publisher: "Kansas State University",
    title: "Wheat replant article: bushels from heads per square foot",
    year: "undated",
  },
  "unl-cropwatch-wheat-2012": {
    publisher: "University of Nebraska-Lincoln, CropWatch",
    title: "September 2012, winter wheat stands and yield",
    year: "2012",
  },
  "ndsu-harvest-losses-2002": {
    publisher: "North Dakota State University Extension",
    title: "Crop & Pest Report issue 12, 18 July 2002, Guidelines for harvest losses",
    year: "2002",
  },
  "hofman-grain-losses": {
    publisher: "North Dakota State University and University of Minnesota (Hofman)",
    title: "Grain Harvest Losses",
    year: "undated",
  },
  "msu-soybean-loss-2012": {
    publisher: "Michigan State University Extension",
    title: "Measuring and reducing soybean harvest losses",
    year: "2012",
  },
  "unl-soybean-loss": {
    publisher: "University of Nebraska-Lincoln Extension",
    title: "Soybean harvest losses by place, with targets",
    year: "undated",
  },
  "missouri-g1290": {
    publisher: "University of Missouri Extension",
    title: "G1290, corn harvest losses",
    year: "undated",
  },
  "seeds-per-area": {
    publisher: "By definition",
    title: "Seeds per square foot in a bushel an acre: seeds per pound × bushel weight / 43,560",
    year: "definition",
  },
  "dry-matter-balance": {
    publisher: "By definition",
    title: "Drying takes water and leaves dry matter: weight × (100 - moisture) stays the same",
    year: "definition",
  },
  "extension-handling-loss": {
    publisher: "Land-grant Extension and Iowa State University A2-32",
    title: "Handling loss of half a point in worked examples of grain shrink",
    year: "undated",
  },
  "sdsu-shrink-2020": {
    publisher: "South Dakota State University Extension",
    title: "Grain shrink: shrink factors that buyers use",
    year: "2020",
  },
  "isu-a2-32": {
    publisher: "Iowa State University Extension",
    title: "A2-32, selling corn wet or dry: shrink, drying charges and home drying",
    year: "as revised",
  },
  "osu-paid-bushels-2014": {
    publisher: "The Ohio State University Extension",
    title: "Test weight, grades and paid bushels of corn",
    year: "2014",
  },
  "hellevang-1995": {
    publisher: "North Dakota State University Extension (Hellevang)",
    title: "Test weight of corn before and after drying",
    year: "1995",
  },
  "isu-sdsu-drying-rule": {
    publisher: "Iowa State University and South Dakota State University Extension",
    title: "Rule for LP gas: gallons per bushel and point of moisture",
    year: "undated",
  },
  "ndsu-drying": {
    publisher: "North Dakota State University Extension (Hellevang)",
    title: "Cost of high-temperature drying per point of moisture",
    year: "undated",
  },
  "isu-ic-492-20": {
    publisher: "Iowa State University",
    title: "IC-492(20), energy for drying corn on Iowa farms",
    year: "2004",
  },
  "farm-dryer-audit-2010": {
    publisher: "Farm press, August 2010",
    title: "Audit of a Wisconsin farm's dryers before and after heat recovery",
    year: "2010",
  },
  "fuel-heat-content": {
    publisher: "Engineering standard values",
    title: "Heat in a gallon of LP gas, a cubic foot of natural gas and a kilowatt-hour",
    year: "undated",
  },
  "dryer-energy": {
    publisher: "North Dakota State University Extension",
    title: "Energy that high-temperature dryers use for a pound of water",
    year: "undated",
  },
  "iowa-grain-warehouse": {
    publisher: "Iowa Department of Agriculture, Grain Warehouse Bureau",
    title: "Measuring grain in bins: cone heights and packing",
    year: "undated",
  },
  "grain-angle": {
    publisher: "Engineering handbooks",
    title: "Height of a wheat peak over a bin's radius",
    year: "undated",
  },
  "carrying-grain": {
    publisher: "By definition",
    title: "Cost of carrying grain: interest on its price, storage charges, drying and shrink",
    year: "definition",
  },
  "midwest-storage-time": {
    publisher: "Grain trade reprint",
    title: "Midwest table of maximum storage time of shelled corn, to 0.5 % loss of dry matter",
    year: "undated",
  },
  "ndsu-storage-2010": {
    publisher: "North Dakota State University Extension (Hellevang)",
    title: "Allowable storage time of corn, 18 October 2010",
    year: "2010",
  },
  "arkansas-storage-2014": {
    publisher: "University of Arkansas (Sadaka)",
    title: "Allowable storage time of corn",
    year: "2014",
  },
  "purdue-storage-moisture": {
    publisher: "Purdue University (McKenzie), as South Dakota State University quotes it",
    title: "Corn moisture for storage by months",
    year: "undated",
  },
  "asabe-d245": {
    publisher: "American Society of Agricultural and Biological Engineers",
    title: "D245, Moisture Relationships of Plant-based Agricultural Products (Chung-Pfost equation)",
    year: "as reaffirmed",
  },
} as const satisfies Record<string, Source>;
