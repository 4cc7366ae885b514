import { crops, type GrainRow, type MarketMoistureRow } from "./crops";
import type { ReferenceTable } from "./table";

/** Grains and seeds that have a bushel of their own without being a crop of the other tables. */
const moreGrains = {
  earCorn: { label: "ear corn", also: ["corn in the ear", "husked ear corn", "corn, in ear"] },
  alfalfaSeed: { label: "alfalfa seed", also: ["seed alfalfa"] },
  prosoMillet: { label: "proso millet", also: ["proso"] },
  foxtailMillet: { label: "foxtail millet", also: [] },
  mustard: { label: "mustard", also: ["mustard seed"] },
} as const;

/** Every word that a bushel may be asked for. A crop without a row has no agreed bushel here. */
export const grains = { ...crops, ...moreGrains };

export type GrainKey = keyof typeof grains;

/** What a trade bushel weighs. Payment is on this weight, whatever the test weight. */
export const bushelWeights = {
  title: "Trade bushel weights",
  units: { bushelWeightLb: "lb/bu" },
  basis: "grain at its market moisture; a weight by custom or law, not a volume",
  rows: [
    { grain: "corn", bushelWeightLb: 56, mark: "V", source: "mn-statutes-239.32" },
    { grain: "earCorn", bushelWeightLb: 70, mark: "V", source: "mn-statutes-239.32" },
    { grain: "soybean", bushelWeightLb: 60, mark: "V", source: "uwex-bushels-test-weight" },
    { grain: "wheat", bushelWeightLb: 60, mark: "V", source: "mn-statutes-239.32" },
    { grain: "springWheat", bushelWeightLb: 60, mark: "V", source: "mn-statutes-239.32" },
    { grain: "barley", bushelWeightLb: 48, mark: "V", source: "mn-statutes-239.32" },
    { grain: "oat", bushelWeightLb: 32, mark: "V", source: "mn-statutes-239.32" },
    { grain: "rye", bushelWeightLb: 56, mark: "V", source: "mn-statutes-239.32" },
    {
      grain: "sorghum",
      bushelWeightLb: 56,
      mark: "V",
      source: "usda-weight-per-bushel",
      note: "Minnesota Statutes print 57 for sorghum seed.",
    },
    {
      grain: "canola",
      bushelWeightLb: 50,
      mark: "V",
      source: "mn-statutes-239.32",
      note: "Printed for rapeseed.",
    },
    { grain: "flax", bushelWeightLb: 56, mark: "V", source: "mn-statutes-239.32" },
    { grain: "dryBean", bushelWeightLb: 60, mark: "V", source: "mn-statutes-239.32" },
    {
      grain: "fieldPea",
      bushelWeightLb: 60,
      mark: "V",
      source: "mn-statutes-239.32",
      note: "Printed for smooth peas.",
    },
    {
      grain: "lentil",
      bushelWeightLb: 60,
      mark: "V",
      source: "canada-grain-conversions",
      note: "Printed as 36.744 bushels per tonne.",
    },
    {
      grain: "buckwheat",
      bushelWeightLb: 48,
      mark: "V",
      source: "canada-grain-conversions",
      note: "Minnesota Statutes print 50.",
    },
    { grain: "rice", bushelWeightLb: 45, mark: "V", source: "usda-weight-per-bushel", note: "Rough rice." },
    { grain: "potato", bushelWeightLb: 60, mark: "V", source: "mn-statutes-239.32" },
    { grain: "peanut", bushelWeightLb: 22, mark: "V", source: "mn-statutes-239.32" },
    { grain: "alfalfaSeed", bushelWeightLb: 60, mark: "V", source: "mn-statutes-239.32" },
    { grain: "mustard", bushelWeightLb: 50, mark: "V", source: "canada-grain-conversions" },
    {
      grain: "prosoMillet",
      bushelWeightLb: 50,
      mark: "M",
      source: "trade-bushel-weights",
      note: "Minnesota Statutes print 48 for millet.",
    },
    { grain: "foxtailMillet", bushelWeightLb: 50, mark: "M", source: "trade-bushel-weights" },
  ],
} as const satisfies ReferenceTable<GrainRow<GrainKey>>;

/** Moisture at which a bushel is paid in full. Buyers differ: a contract or scale ticket comes first. */
export const marketMoistures = {
  title: "Market moistures",
  units: { marketMoisturePct: "%" },
  basis: "percent of wet weight",
  rows: [
    { grain: "corn", marketMoisturePct: 15.5, mark: "V", source: "uwex-bushels-test-weight" },
    { grain: "earCorn", marketMoisturePct: 15.5, mark: "M", source: "trade-bushel-weights" },
    { grain: "soybean", marketMoisturePct: 13, mark: "V", source: "uwex-bushels-test-weight" },
    { grain: "wheat", marketMoisturePct: 13.5, mark: "V", source: "uwex-bushels-test-weight" },
    { grain: "springWheat", marketMoisturePct: 13.5, mark: "V", source: "uwex-bushels-test-weight" },
    { grain: "barley", marketMoisturePct: 14.5, mark: "V", source: "uwex-bushels-test-weight" },
    { grain: "oat", marketMoisturePct: 14, mark: "V", source: "uwex-bushels-test-weight" },
    { grain: "rye", marketMoisturePct: 14, mark: "V", source: "ufl-ag442-2020" },
    {
      grain: "sorghum",
      marketMoisturePct: 14,
      mark: "M",
      source: "trade-bushel-weights",
      note: "13 is also printed (Florida AG442).",
    },
    { grain: "sunflower", marketMoisturePct: 10, mark: "V", source: "ufl-ag442-2020" },
    {
      grain: "canola",
      marketMoisturePct: 10,
      mark: "M",
      source: "trade-bushel-weights",
      note: "8.5 is also printed (Florida AG442).",
    },
    { grain: "flax", marketMoisturePct: 9, mark: "M", source: "trade-bushel-weights" },
    { grain: "dryBean", marketMoisturePct: 18, mark: "M", source: "trade-bushel-weights" },
    { grain: "mustard", marketMoisturePct: 10, mark: "M", source: "trade-bushel-weights" },
  ],
} as const satisfies ReferenceTable<MarketMoistureRow<GrainKey>>;
