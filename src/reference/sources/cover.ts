import type { Source } from "./source";

/** Publications on residue cover, erosion, tillage and machinery. */
export const coverSources = {
  "scs-residue-1992": {
    publisher: "USDA Soil Conservation Service and Equipment Manufacturers Institute",
    title: "Estimates of residue cover remaining after single operation of selected tillage machines",
    year: "1992",
  },
  "mulch-tiller-table": {
    publisher: "Equipment maker",
    title: "Printed residue table of a disk-chisel mulch tiller",
    year: "undated",
  },
  "no-soil-moved": {
    publisher: "By definition",
    title: "A pass that moves no soil leaves the cover as it was",
    year: "definition",
  },
  "line-transect": {
    publisher: "Land-grant Extension and USDA",
    title: "Residue cover by the line-transect method, with the binomial range",
    year: "undated",
  },
  "usda-ah537-1978": {
    publisher: "United States Department of Agriculture",
    title: "Agriculture Handbook 537, Predicting Rainfall Erosion Losses (USLE)",
    year: "1978",
  },
  "usda-ah703-1997": {
    publisher: "United States Department of Agriculture",
    title: "Agriculture Handbook 703, Predicting Soil Erosion by Water (RUSLE)",
    year: "1997",
  },
  "usda-ars-rusle-notes": {
    publisher: "USDA Agricultural Research Service",
    title: "Training notes on the revised soil loss equation",
    year: "undated",
  },
  "residue-thirty-percent": {
    publisher: "Iowa State University, University of Wisconsin and Purdue University Extension",
    title: "Conservation tillage: at least 30 % cover after planting",
    year: "undated",
  },
  "nrcs-soil-handbook": {
    publisher: "USDA Natural Resources Conservation Service",
    title: "National Soil Survey Handbook, soil loss tolerance",
    year: "as amended",
  },
  "missouri-g1650": {
    publisher: "University of Missouri Extension",
    title: "G1650, soil erosion in tons per acre and in depth",
    year: "undated",
  },
  "unl-g1846": {
    publisher: "University of Nebraska-Lincoln Extension",
    title: "G1846, harvesting crop residues, as quoted in the farm press",
    year: "undated",
  },
  "illinois-straw": {
    publisher: "University of Illinois Extension (Fernandez), in the farm press",
    title: "Wheat straw in a bushel of yield",
    year: "undated",
  },
  "strip-geometry": {
    publisher: "By definition",
    title: "Tilled share of the surface: band width over row width",
    year: "definition",
  },
  "isu-pm696-2001": {
    publisher: "Iowa State University Extension",
    title: "PM 696 and A3-24, Estimating Field Capacity of Farm Machines",
    year: "2001",
  },
  "isu-a3-29": {
    publisher: "Iowa State University Extension",
    title: "A3-29, Estimating Farm Machinery Costs",
    year: "as revised",
  },
  "asabe-d497": {
    publisher: "American Society of Agricultural and Biological Engineers",
    title: "D497.7, Agricultural Machinery Management Data",
    year: "2011, reaffirmed 2020",
  },
  "asabe-ep496": {
    publisher: "American Society of Agricultural and Biological Engineers",
    title: "EP496, Agricultural Machinery Management",
    year: "as reaffirmed",
  },
  "cross-perry-1995": {
    publisher: "Cross and Perry, Applied Engineering in Agriculture",
    title: "Remaining value of farm machinery",
    year: "1995",
  },
  "grisso-2004": {
    publisher: "Grisso, Kocher and Vaughan, Applied Engineering in Agriculture",
    title: "Predicting tractor fuel consumption",
    year: "2004",
  },
  "missouri-g1208-1993": {
    publisher: "University of Missouri Extension",
    title: "G1208, Fuel Requirement Estimates for Selected Field Operations",
    year: "1993",
  },
  "unl-fuel-requirements": {
    publisher: "University of Nebraska-Lincoln, CropWatch",
    title: "Fuel Requirements: typical diesel use of row-crop tillage systems",
    year: "undated",
  },
  "isu-a3-10-2019": {
    publisher: "Iowa State University Extension",
    title: "A3-10, Iowa Farm Custom Rate Survey 2019, medians as reported in a newsletter",
    year: "2019",
  },
  "isu-a3-10-2023": {
    publisher: "Iowa State University Extension",
    title: "A3-10, Iowa Farm Custom Rate Survey 2023, averages as reported in the farm press",
    year: "2023",
  },
  "wear-by-acre": {
    publisher: "By definition",
    title: "Cost of wearing parts: parts times price over the acres they last",
    year: "definition",
  },
} as const satisfies Record<string, Source>;
