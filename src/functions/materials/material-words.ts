import { materials, type MaterialKey } from "../../reference/materials";
import { vocabulary } from "../frame";

export const materialWords = vocabulary<MaterialKey>("material", materials);

const {
  anhydrousAmmonia,
  uan28,
  uan30,
  uan32,
  ammoniumSulfateSolution,
  ammoniumThiosulfate,
  ammoniumPolyphosphate,
  potassiumThiosulfate,
  starter7217,
  starter9189,
  zincAmmonia,
} = materials;

const liquids = {
  anhydrousAmmonia,
  uan28,
  uan30,
  uan32,
  ammoniumSulfateSolution,
  ammoniumThiosulfate,
  ammoniumPolyphosphate,
  potassiumThiosulfate,
  starter7217,
  starter9189,
  zincAmmonia,
};

export type LiquidKey = keyof typeof liquids;

/** Materials whose gallon has a published weight. */
export const liquidWords = vocabulary<LiquidKey>("liquid", liquids);
