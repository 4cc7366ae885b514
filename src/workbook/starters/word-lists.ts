import type { Vocabulary } from "../../functions/frame";
import { groupWords } from "../../functions/soil/guide-words";
import { crops } from "../../reference/crops";

/** The words of a closed list as people read them, for a drop-down. */
export function labelsOf(words: Vocabulary<string>): string[] {
  return Object.values(words.words).map(({ label }) => label);
}

/** Crops whose yield is counted in bushels. */
export const bushelCropLabels = Object.values(crops)
  .filter(({ yieldUnit }) => yieldUnit === "bu")
  .map(({ label }) => label);

/** Soil groups without the numbered equations, which only one guide uses. */
export const soilGroupLabels = labelsOf(groupWords).filter((label) => !label.startsWith("equation"));
