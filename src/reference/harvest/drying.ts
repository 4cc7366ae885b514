import type { Cited, ReferenceTable } from "../table";

/** A published number under a word. */
export interface NamedRow<Key extends string> extends Cited {
  readonly key: Key;
  readonly value: number;
}

export const handlingLoss = {
  title: "Handling loss",
  units: { value: "% of wet weight" },
  basis: "dust, fines and broken grain, taken off with the water",
  rows: [
    {
      key: "handling",
      value: 0.5,
      mark: "V",
      source: "extension-handling-loss",
      note: "Iowa State University measured 0.064 to 1.33 % at elevators and 0.22 to 1.71 % on farms.",
    },
  ],
} as const satisfies ReferenceTable<NamedRow<"handling">>;

/** Words for how much LP gas a dryer takes. */
export const gasRules = {
  usual: { label: "usual", also: ["rule", "rule of thumb"] },
  highTemperature: { label: "high temperature", also: ["high-temperature dryer"] },
  iowaAverage: { label: "Iowa average", also: ["average Iowa farm dryer"] },
  low: { label: "low", also: ["least"] },
  high: { label: "high", also: ["most"] },
} as const;
export type GasRuleKey = keyof typeof gasRules;

export const gasPerPoint = {
  title: "LP gas for a point of moisture",
  units: { value: "gal/bu/point" },
  basis: "corn in heated-air dryers",
  rows: [
    { key: "usual", value: 0.02, mark: "V", source: "isu-sdsu-drying-rule" },
    { key: "highTemperature", value: 0.022, mark: "V", source: "ndsu-drying" },
    { key: "iowaAverage", value: 0.018, mark: "V", source: "isu-ic-492-20" },
    { key: "low", value: 0.01, mark: "V", source: "isu-ic-492-20" },
    { key: "high", value: 0.025, mark: "V", source: "isu-ic-492-20" },
  ],
} as const satisfies ReferenceTable<NamedRow<GasRuleKey>>;

export const dryers = {
  highTemperature: { label: "high temperature", also: ["continuous flow", "high-temperature dryer"] },
  heatRecovery: { label: "heat recovery", also: ["heat-recovery dryer"] },
  oldBatch: { label: "old batch", also: ["old batch dryer", "cross-flow batch"] },
} as const;
export type DryerKey = keyof typeof dryers;

export const dryerEnergy = {
  title: "Energy for a pound of water",
  units: { value: "BTU/lb" },
  basis: "heat put in for each pound of water taken out",
  rows: [
    { key: "highTemperature", value: 2500, mark: "M", source: "dryer-energy", note: "2,000 to 3,000 is usual." },
    { key: "heatRecovery", value: 1841, mark: "V", source: "farm-dryer-audit-2010", note: "One audited farm dryer." },
    {
      key: "oldBatch",
      value: 3000,
      mark: "V",
      source: "farm-dryer-audit-2010",
      note: "Printed as over 3,000, one farm.",
    },
  ],
} as const satisfies ReferenceTable<NamedRow<DryerKey>>;

export const fuels = {
  lpGas: { label: "LP gas", also: ["LP", "propane", "LPG"], unit: "gal" },
  naturalGas: { label: "natural gas", also: ["gas", "methane"], unit: "cu ft" },
  electricity: { label: "electricity", also: ["electric", "power", "kWh"], unit: "kWh" },
} as const;
export type FuelKey = keyof typeof fuels;

export const fuelHeat = {
  title: "Heat in a unit of fuel",
  units: { value: "BTU per gal, cu ft or kWh" },
  basis: "gal of LP gas, cubic foot of natural gas, kilowatt-hour",
  rows: [
    { key: "lpGas", value: 91_500, mark: "M", source: "fuel-heat-content" },
    { key: "naturalGas", value: 1000, mark: "M", source: "fuel-heat-content", note: "1,000 to 1,030." },
    { key: "electricity", value: 3412, mark: "M", source: "fuel-heat-content" },
  ],
} as const satisfies ReferenceTable<NamedRow<FuelKey>>;

/** Lowest test weights of the grades of corn. */
export const cornGrades = {
  title: "Lowest test weight of a grade of corn",
  units: { value: "lb/bu" },
  basis: "shelled corn",
  rows: [
    { key: "No. 1", value: 56, mark: "V", source: "osu-paid-bushels-2014" },
    { key: "No. 2", value: 54, mark: "V", source: "osu-paid-bushels-2014" },
  ],
} as const satisfies ReferenceTable<NamedRow<string>>;
