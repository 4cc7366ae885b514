import type { WorksheetFunction } from "../frame";
import { trialAddUp } from "./trial-add-up";
import { trialBlocks } from "./trial-blocks";
import { trialLayout } from "./trial-layout";
import { trialPairs } from "./trial-pairs";
import { trialPool } from "./trial-pool";
import { trialPower, trialSize } from "./trial-size";
import { trialStripYield } from "./trial-strip-yield";
import { trialTrend } from "./trial-trend";
import { varietyMeans } from "./variety-means";

/** Everything this family puts on the sheet, in the order of the documentation. */
export const trialFunctions: readonly WorksheetFunction[] = [
  trialLayout,
  trialSize,
  trialPower,
  trialStripYield,
  trialPairs,
  trialBlocks,
  trialTrend,
  trialPool,
  trialAddUp,
  varietyMeans,
];
