import type { Cited } from "../table";

/** The surveys behind the rates. Rates include fuel and the operator, not seed or chemicals. */
export const customSurveys = {
  y2019: { label: "2019", also: ["2019 survey"], middle: "median", mark: "V", source: "isu-a3-10-2019" },
  y2023: { label: "2023", also: ["2023 survey"], middle: "average", mark: "V", source: "isu-a3-10-2023" },
} as const satisfies Record<string, Cited & { label: string; also: readonly string[]; middle: string }>;

export type CustomSurveyKey = keyof typeof customSurveys;

/** What neighbors charge for a field operation, $/ac by survey. */
export interface CustomRate {
  readonly label: string;
  readonly also: readonly string[];
  readonly rates: Readonly<Partial<Record<CustomSurveyKey, number>>>;
}

export const customRates = {
  moldboardPlow: { label: "moldboard plow", also: ["plow"], rates: { y2019: 20.2 } },
  chiselPlow: { label: "chisel plow", also: ["chisel"], rates: { y2019: 18.35 } },
  diskChisel: { label: "disk-chisel", also: [], rates: { y2019: 19.7 } },
  vRipper: { label: "V-ripper", also: [], rates: { y2019: 23.45 } },
  fieldCultivate: { label: "field cultivate", also: ["field cultivator"], rates: { y2019: 16.0 } },
  tandemDisk: { label: "tandem disk", also: ["disk"], rates: { y2019: 15.4 } },
  chopStalks: { label: "chop stalks", also: ["shred stalks", "stalk chopping"], rates: { y2019: 12.4, y2023: 14.8 } },
  plantWithAttachments: { label: "plant with attachments", also: ["planter with attachments"], rates: { y2019: 21.8 } },
  plantWithoutAttachments: {
    label: "plant without attachments",
    also: ["plant", "planter", "planter without attachments"],
    rates: { y2019: 20.4 },
  },
  noTillPlant: { label: "no-till plant", also: ["no-till planter"], rates: { y2019: 22.9, y2023: 27.1 } },
  soybeanDrill: { label: "soybean drill", also: ["drill soybean"], rates: { y2019: 19.1 } },
  grainDrill: { label: "grain drill", also: [], rates: { y2019: 18.35 } },
  sprayBroadcastSelfPropelled: {
    label: "spray broadcast self-propelled",
    also: ["spray", "sprayer", "spraying"],
    rates: { y2019: 7.65 },
  },
  combineCorn: { label: "combine corn", also: [], rates: { y2019: 35.95 } },
  combineCornWithChoppingHead: { label: "combine corn with chopping head", also: [], rates: { y2019: 41.35 } },
  combineSoybean: { label: "combine soybean", also: [], rates: { y2019: 35.1 } },
  combineSoybeanWithDraperHead: { label: "combine soybean with draper head", also: [], rates: { y2019: 38.5 } },
  combineSmallGrain: { label: "combine small grain", also: ["combine wheat"], rates: { y2019: 31.9 } },
  grainCartCorn: { label: "grain cart corn", also: [], rates: { y2019: 6.55 } },
  grainCartSoybean: { label: "grain cart soybean", also: [], rates: { y2019: 5.75 } },
  stripTill: { label: "strip-till", also: ["strip till"], rates: { y2023: 24.35 } },
  verticalTill: { label: "vertical till", also: ["vertical tillage"], rates: { y2023: 22.05 } },
  noTillDrillSoybean: { label: "no-till drill soybean", also: [], rates: { y2023: 23.5 } },
  drillSmallGrain: { label: "drill small grain", also: [], rates: { y2023: 17.7 } },
  anhydrousWithToolbar: { label: "anhydrous with toolbar", also: [], rates: { y2023: 14.7 } },
  anhydrousWithoutToolbar: { label: "anhydrous without toolbar", also: [], rates: { y2023: 12.1 } },
} as const satisfies Record<string, CustomRate>;

export type CustomRateKey = keyof typeof customRates;
