import {
  materialAnalysis,
  materialAnalysisRange,
  materials,
  type AnalysisRow,
  type MaterialKey,
} from "../../reference/materials";
import { refuseArgument } from "../fault";

/**
 * The published analysis of a material. A row with a number from memory counts as from memory as a whole.
 *
 * @param argument the name as the sheet shows it
 */
export function publishedAnalysis(material: MaterialKey, argument: string): AnalysisRow {
  const row = materialAnalysis.rows.find((one) => one.material === material) ?? refuseRange(material, argument);
  return row.fromMemory ? { ...row, mark: "M" } : row;
}

function refuseRange(material: MaterialKey, argument: string): never {
  const { label } = materials[material];
  const range = materialAnalysisRange.rows.find((one) => one.material === material);
  const because = range
    ? `${label} is sold at ${range.lowPct} to ${range.highPct} % ${range.nutrient}: type the analysis from its label.`
    : `no analysis is published for ${label}: type it from its label.`;
  return refuseArgument(argument, because);
}
