import { removalIndex } from "../../nutrients/removal-index";
import { crops, type CropKey } from "../../../reference/crops";
import { removalSets } from "../../../reference/nutrients";
import type { Guide, NeedNutrient } from "../../../reference/guides";
import type { Cited } from "../../../reference/table";

/** What a crop takes off by the numbers a guide rests on. */
export interface RemovalNumber {
  readonly lbPerUnit: number;
  readonly unit: string;
  /** Whose number it is. */
  readonly set: string;
  readonly cited: Cited;
}

/** The guide's own removal number of a crop's main part; null where none is held, and never another guide's. */
export function guideRemoval(guide: Guide, nutrient: NeedNutrient, crop: CropKey): RemovalNumber | null {
  const { removalSet, ownRemoval } = guide[nutrient];
  const own = ownRemoval?.[crop];
  const [source] = guide.sources;
  if (own !== undefined && source !== undefined) {
    return { lbPerUnit: own, unit: crops[crop].yieldUnit, set: guide.label, cited: { mark: "M", source } };
  }
  if (removalSet === null) return null;
  const record = removalIndex()[crop];
  const found = record?.parts[record.mainPart]?.sets[removalSet]?.[nutrient];
  if (!found) return null;
  return { lbPerUnit: found.lbPerUnit, unit: found.unit, set: removalSets[removalSet].label, cited: found.cited };
}
