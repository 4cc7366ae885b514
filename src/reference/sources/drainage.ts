import type { Source } from "./source";

/** Publications on tile drainage. */
export const drainageSources = {
  "hooghoudt-1940": {
    publisher: "Hooghoudt, Verslagen van landbouwkundige onderzoekingen 46",
    title: "Steady flow of groundwater to parallel drains",
    year: "1940",
  },
  "van-der-molen-wesseling-1991": {
    publisher: "van der Molen and Wesseling, Agricultural Water Management 19:1-16",
    title: "A solution in closed form and a series solution to replace the tables for Hooghoudt's equivalent depth",
    year: "1991",
  },
  "usual-tube-radius": {
    publisher: "Drainage practice",
    title: "Outside radius of 4-inch tubing, and the smaller radius that stands for its entry loss",
    year: "undated",
  },
  "clapp-hornberger-1978": {
    publisher: "Clapp and Hornberger, Water Resources Research 14:601-604",
    title: "Empirical equations for some soil hydraulic properties",
    year: "1978",
  },
  "umn-drainage-2001": {
    publisher: "University of Minnesota Extension (Wright and Sands)",
    title: "Planning an Agricultural Subsurface Drainage System",
    year: "2001",
  },
  "nrcs-neh-650-14": {
    publisher: "USDA Natural Resources Conservation Service",
    title: "National Engineering Handbook, part 650, chapter 14, Water Management (Drainage)",
    year: "as amended",
  },
  "asae-ep260": {
    publisher: "American Society of Agricultural Engineers",
    title: "EP260, Design and Construction of Subsurface Drainages in Humid Areas",
    year: "as reaffirmed",
  },
  "manning-full-flow": {
    publisher: "By definition",
    title: "Manning's equation for a round pipe flowing full",
    year: "definition",
  },
  "uw-madison-tile": {
    publisher: "University of Wisconsin-Madison (Panuska)",
    title: "Tile drainage notes: lowest velocities, depth and cover",
    year: "undated",
  },
  "cooke-illinois-2019": {
    publisher: "University of Illinois (Cooke), in a drainage trade journal",
    title: "Drainage coefficients of Illinois practice, December 2019",
    year: "2019",
  },
  "dual-wall-practice": {
    publisher: "Drainage practice",
    title: "Usual design roughness of dual-wall pipe",
    year: "undated",
  },
  "tile-cost": {
    publisher: "By definition",
    title: "Feet of tile in an acre, 43,560 / spacing, and its cost",
    year: "definition",
  },
} as const satisfies Record<string, Source>;
