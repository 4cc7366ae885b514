import type { Cited, ReferenceTable } from "../table";
import type { MaterialKey } from "./materials";

export interface AcidityRow extends Cited {
  readonly material: MaterialKey;
  /** lb of pure calcium carbonate per 100 lb; below 0 it takes that much to offset the material. */
  readonly limeLbPer100Lb: number;
}

const anr174 = { mark: "V", source: "aces-anr174" } as const;
const table = { mark: "V", source: "fertilizer-acidity-table" } as const;
const trade = { mark: "M", source: "fertilizer-trade-grades" } as const;

export const materialAcidity: ReferenceTable<AcidityRow> = {
  title: "Acidity of fertilizer materials",
  units: { limeLbPer100Lb: "lb of calcium carbonate per 100 lb of material" },
  basis: "below 0: acid; above 0: works like lime",
  rows: [
    { material: "anhydrousAmmonia", limeLbPer100Lb: -148, ...anr174 },
    { material: "urea", limeLbPer100Lb: -81, ...anr174, note: "Printed for urea of 45 % N." },
    { material: "uan28", limeLbPer100Lb: -49, ...anr174 },
    { material: "uan30", limeLbPer100Lb: -52, ...anr174 },
    { material: "uan32", limeLbPer100Lb: -55, ...anr174 },
    { material: "ammoniumNitrate", limeLbPer100Lb: -61, ...anr174 },
    { material: "ammoniumSulfate", limeLbPer100Lb: -110, ...anr174 },
    { material: "monoammoniumPhosphate", limeLbPer100Lb: -65, ...table },
    { material: "diammoniumPhosphate", limeLbPer100Lb: -70, ...table },
    { material: "ammoniumPolyphosphate", limeLbPer100Lb: -53, ...trade },
    { material: "tripleSuperphosphate", limeLbPer100Lb: 0, ...trade },
    { material: "singleSuperphosphate", limeLbPer100Lb: 0, ...trade },
    { material: "potash", limeLbPer100Lb: 0, ...trade },
    { material: "potassiumSulfate", limeLbPer100Lb: 0, ...trade },
    { material: "potassiumMagnesiumSulfate", limeLbPer100Lb: 0, ...trade },
    { material: "potassiumNitrate", limeLbPer100Lb: 26, ...anr174 },
    { material: "calciumNitrate", limeLbPer100Lb: 20, ...anr174 },
    { material: "gypsum", limeLbPer100Lb: 0, ...trade },
    {
      material: "elementalSulfur",
      limeLbPer100Lb: -280,
      ...trade,
      note: "Pure sulfur is -312; another table prints -218 for commercial sulfur.",
    },
    { material: "magnesiumSulfate", limeLbPer100Lb: 0, ...trade },
    { material: "zincSulfateMonohydrate", limeLbPer100Lb: 0, ...trade },
    { material: "zincSulfateHeptahydrate", limeLbPer100Lb: 0, ...trade },
    { material: "zincChelate", limeLbPer100Lb: 0, ...trade },
    { material: "manganeseSulfate", limeLbPer100Lb: 0, ...trade },
    { material: "borate", limeLbPer100Lb: 0, ...trade },
    { material: "copperSulfate", limeLbPer100Lb: 0, ...trade },
    { material: "ironChelate", limeLbPer100Lb: 0, ...trade },
  ],
};
