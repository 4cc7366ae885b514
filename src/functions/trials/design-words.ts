import type { TrialDesign } from "../../core/trials/trial-layout";
import { vocabulary } from "../frame";

/** Ways to lay strips out. */
export const designWords = vocabulary<TrialDesign>("design", {
  blocks: { label: "blocks", also: ["randomized blocks", "randomised blocks", "complete blocks"] },
  pairs: { label: "pairs", also: ["paired strips", "side by side"] },
  splitPlanter: { label: "split planter", also: ["split", "half planter"] },
});
