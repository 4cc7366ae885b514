import type { WorksheetFunction } from "../frame";
import { binVolume } from "./bin-volume";
import { earCountYield, podCountYield, podRowYield } from "./corn-and-soybean-counts";
import { dryingCost, dryingFuel } from "./drying";
import { equilibriumMoisture, safeMoisture, storageDays, storageUsed } from "./keeping";
import { earLoss, harvestLoss, lossByPlace } from "./losses";
import { sellWetOrDry } from "./sell-wet-or-dry";
import { grainShrink, marketBushels, marketYield, overdryLoss } from "./shrink";
import { storageBreakEven, storageCost } from "./storage-cost";
import { paidBushels, testWeightDry } from "./test-weight";
import { autumnWheatYield, headCountYield, headWeightYield } from "./wheat-counts";

/** Everything this family puts on the sheet, in the order of the documentation. */
export const harvestFunctions: readonly WorksheetFunction[] = [
  earCountYield,
  podCountYield,
  podRowYield,
  headCountYield,
  headWeightYield,
  autumnWheatYield,
  harvestLoss,
  lossByPlace,
  earLoss,
  grainShrink,
  marketBushels,
  marketYield,
  overdryLoss,
  testWeightDry,
  paidBushels,
  dryingCost,
  dryingFuel,
  sellWetOrDry,
  storageCost,
  storageBreakEven,
  storageDays,
  storageUsed,
  safeMoisture,
  equilibriumMoisture,
  binVolume,
];
