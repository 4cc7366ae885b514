import { trialAddUp } from "./trials/trial-add-up";
import { trialBlocks } from "./trials/trial-blocks";
import { trialLayout } from "./trials/trial-layout";
import { trialPairs } from "./trials/trial-pairs";
import { trialPool } from "./trials/trial-pool";
import { trialPower, trialSize } from "./trials/trial-size";
import { trialStripYield } from "./trials/trial-strip-yield";
import { trialTrend } from "./trials/trial-trend";
import { varietyMeans } from "./trials/variety-means";

export const trialFunctions = [
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
] as const;
