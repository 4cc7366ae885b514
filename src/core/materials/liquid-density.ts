import { liquidDensity, materials, type LiquidDensityRow, type MaterialKey } from "../../reference/materials";
import { refuse } from "../fault";

/** The published weight of a gallon of a liquid fertilizer, with its citation. */
export function publishedDensity(material: MaterialKey): LiquidDensityRow {
  const row = liquidDensity.rows.find((one) => one.material === material);
  return (
    row ??
    refuse({
      kind: "notPublished",
      what: `weight of a gallon of ${materials[material].label}`,
      where: liquidDensity.title,
      instead: "Take it from the label.",
    })
  );
}
