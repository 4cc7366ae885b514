import type { NutrientKey } from "../nutrients";
import type { Cited, ReferenceTable } from "../table";
import type { MaterialKey } from "./materials";

/** What 100 lb of a material hold, lb. A nutrient that is not listed is none or was not printed. */
export interface AnalysisRow extends Cited {
  readonly material: MaterialKey;
  readonly pct: Readonly<Partial<Record<NutrientKey, number>>>;
  /** Nutrients of a V row that come from memory. */
  readonly fromMemory?: readonly NutrientKey[];
}

const sheet = { mark: "V", source: "fertilizer-physical-sheet" } as const;
const trade = { mark: "M", source: "fertilizer-trade-grades" } as const;

export const materialAnalysis: ReferenceTable<AnalysisRow> = {
  title: "Analysis of fertilizer materials",
  units: { pct: "% by weight; phosphorus as P2O5 and potassium as K2O" },
  basis: "as sold; the label of the product at hand decides",
  rows: [
    { material: "anhydrousAmmonia", pct: { N: 82 }, mark: "V", source: "aces-anr174" },
    { material: "urea", pct: { N: 46 }, ...sheet, note: "Alabama ANR-174 prints 45 % N." },
    { material: "uan28", pct: { N: 28 }, ...sheet },
    { material: "uan30", pct: { N: 30 }, mark: "V", source: "vce-spes199" },
    { material: "uan32", pct: { N: 32 }, ...sheet },
    { material: "ammoniumNitrate", pct: { N: 34 }, ...sheet },
    { material: "ammoniumSulfate", pct: { N: 21, S: 24 }, ...sheet },
    { material: "ammoniumSulfateSolution", pct: { N: 8, S: 9 }, mark: "V", source: "fluid-ams-uan-note" },
    { material: "ammoniumThiosulfate", pct: { N: 12, S: 26 }, ...sheet },
    { material: "monoammoniumPhosphate", pct: { N: 11, P2O5: 52 }, mark: "V", source: "osu-anr74" },
    { material: "diammoniumPhosphate", pct: { N: 18, P2O5: 46 }, mark: "V", source: "osu-anr74" },
    { material: "ammoniumPolyphosphate", pct: { N: 10, P2O5: 34 }, ...sheet },
    { material: "tripleSuperphosphate", pct: { P2O5: 46, Ca: 14, S: 1 }, ...sheet, fromMemory: ["Ca", "S"] },
    { material: "singleSuperphosphate", pct: { P2O5: 20, Ca: 20, S: 12 }, ...trade },
    { material: "potash", pct: { K2O: 60 }, mark: "V", source: "osu-anr74", note: "The white grade is 0-0-62." },
    {
      material: "potassiumSulfate",
      pct: { K2O: 50, S: 18 },
      mark: "V",
      source: "cornell-cca-po28",
      fromMemory: ["S"],
    },
    { material: "potassiumMagnesiumSulfate", pct: { K2O: 22, Mg: 11, S: 22 }, mark: "V", source: "cornell-cca-po28" },
    { material: "potassiumNitrate", pct: { N: 13, K2O: 44 }, mark: "V", source: "aces-anr174" },
    { material: "potassiumThiosulfate", pct: { K2O: 25, S: 17 }, ...trade },
    { material: "starter7217", pct: { N: 7, P2O5: 21, K2O: 7 }, ...sheet },
    { material: "starter9189", pct: { N: 9, P2O5: 18, K2O: 9 }, ...trade },
    { material: "zincAmmonia", pct: { N: 10, Zn: 10 }, ...sheet },
    { material: "calciumNitrate", pct: { N: 15.5, Ca: 19 }, ...trade, note: "Sold as 15-0-0." },
    {
      material: "gypsum",
      pct: { Ca: 22, S: 17.5 },
      mark: "V",
      source: "davidson-gypsum-2014",
      fromMemory: ["Ca"],
      note: "Printed as 17 to 18 lb of sulfur per 100 lb; middle taken.",
    },
    { material: "elementalSulfur", pct: { S: 90 }, ...trade },
    {
      material: "magnesiumSulfate",
      pct: { Mg: 9.8, S: 13 },
      ...trade,
      note: "The heptahydrate; one guide prints 10.5.",
    },
    { material: "zincSulfateMonohydrate", pct: { Zn: 35.5, S: 17.5 }, ...trade },
    { material: "zincSulfateHeptahydrate", pct: { Zn: 22, S: 11 }, ...trade },
    { material: "manganeseSulfate", pct: { Mn: 31, S: 18 }, ...trade },
    { material: "copperSulfate", pct: { Cu: 25, S: 13 }, ...trade },
    { material: "ironChelate", pct: { Fe: 6 }, ...trade },
  ],
};

/** Materials whose analysis runs over a range: the label of the product has to be read. */
export interface AnalysisRangeRow extends Cited {
  readonly material: MaterialKey;
  readonly nutrient: NutrientKey;
  readonly lowPct: number;
  readonly highPct: number;
}

export const materialAnalysisRange: ReferenceTable<AnalysisRangeRow> = {
  title: "Materials sold over a range of analyses",
  units: { lowPct: "% by weight", highPct: "% by weight" },
  basis: "as sold",
  rows: [
    { material: "zincChelate", nutrient: "Zn", lowPct: 9, highPct: 14, ...trade },
    { material: "borate", nutrient: "B", lowPct: 11, highPct: 20.5, ...trade },
  ],
};
