import type { Cited, ReferenceTable } from "../table";
import type { MaterialKey } from "./materials";

export interface CriticalHumidityRow extends Cited {
  readonly material: MaterialKey;
  readonly humidityPct: number;
}

const sheet = { mark: "V", source: "fertilizer-physical-sheet" } as const;

export const criticalHumidity: ReferenceTable<CriticalHumidityRow> = {
  title: "Humidity at which dry fertilizer begins to draw water",
  units: { humidityPct: "% relative humidity" },
  basis: "the material alone; mixtures begin lower",
  rows: [
    { material: "urea", humidityPct: 72, ...sheet },
    { material: "ammoniumNitrate", humidityPct: 59, ...sheet },
    { material: "ammoniumSulfate", humidityPct: 79, ...sheet },
    { material: "monoammoniumPhosphate", humidityPct: 92, ...sheet },
    { material: "diammoniumPhosphate", humidityPct: 82, ...sheet },
    { material: "tripleSuperphosphate", humidityPct: 94, ...sheet },
    { material: "potash", humidityPct: 84, ...sheet },
  ],
};
