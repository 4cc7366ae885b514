import { refuse, waitFor } from "../fault";
import { within } from "../limit";
import { rowFootInchPerAcre, squareFootPerAcre } from "../units/units";
import { crops, type CropKey } from "../../reference/crops";
import {
  standGuides,
  standGuideWords,
  type HybridKey,
  type StandGuide,
  type StandGuideKey,
} from "../../reference/seed/stand-guides";
import type { Cited } from "../../reference/table";
import { curveShare, stepShare, tableShare, type Share } from "./stand-share";
import { seedLimits } from "./seed-limits";
import { unevenLoss, type UnevenLoss } from "./uneven-loss";

export interface StandYieldInput {
  readonly crop: CropKey;
  /** Spreadsheet date; null where the guide knows no date. */
  readonly plantedOn: number | null;
  readonly standPerAc: number;
  readonly guide: StandGuideKey;
  readonly uneven: UnevenLoss;
  readonly hybrid: HybridKey;
  /** Wanted where the guide counts along the row. */
  readonly rowWidthIn: number | null;
}

/** What the arguments are called on the sheet. */
export interface StandYieldNames {
  readonly date: string;
  readonly stand: string;
}

export interface StandYield {
  readonly yieldPct: number;
  /** Before anything is taken off for unevenness. */
  readonly evenPct: number;
  readonly unevenLossPct: number;
  readonly guideTitle: string;
  readonly cited: readonly Cited[];
}

const usualNames: StandYieldNames = { date: "plantingDate", stand: "stand" };

/**
 * Share of full yield left by planting date and stand, from a published table.
 *
 *   inside a printed date window or stand range: its figure; between: a straight line in days and plants
 *   before the first date: the first column; above the thickest stand: the thickest row
 *   after the last date and below the thinnest stand: nothing
 */
export function standYield(input: StandYieldInput, names: StandYieldNames = usualNames): StandYield {
  within(names.stand, input.standPerAc, seedLimits.stand);
  const guide = guideFor(input);
  const uneven = unevenLoss(input.uneven, input.crop);
  const share = shareOf(guide, input, names);
  return {
    yieldPct: share.pct * (1 - uneven.lossPct / 100),
    evenPct: share.pct,
    unevenLossPct: uneven.lossPct,
    guideTitle: standGuideWords[input.guide].label,
    cited: [...share.cited, ...uneven.cited],
  };
}

function guideFor({ crop, guide }: StandYieldInput): StandGuide {
  const found = standGuides.find((one) => one.crop === crop && one.guide === guide);
  if (found) return found;
  const others = standGuides.filter((one) => one.crop === crop).map((one) => standGuideWords[one.guide].label);
  refuse({
    kind: "notPublished",
    what: `stand table for ${crops[crop].label}`,
    where: standGuideWords[guide].label,
    instead: others.length > 0 ? `Use: ${others.join(", ")}.` : "Corn, soybean and wheat have tables.",
  });
}

function shareOf(guide: StandGuide, input: StandYieldInput, names: StandYieldNames): Share {
  const asked = {
    plantedOn: input.plantedOn,
    stand: input.standPerAc,
    where: standGuideWords[input.guide].label,
    names,
  };
  if (guide.form === "table") {
    const table = input.hybrid === "short" ? guide.short : guide.full;
    return tableShare(table ?? refuseHybrid(guide.guide), asked);
  }
  if (guide.form === "curve") return curveShare(guide.curve, guide.dates, asked);
  const stand = input.standPerAc * countedPart(guide.counted, input.rowWidthIn);
  return stepShare(guide, { ...asked, stand });
}

function refuseHybrid(guide: StandGuideKey): never {
  refuse({
    kind: "notPublished",
    what: "table for shorter-season hybrids",
    where: standGuideWords[guide].label,
    instead: "Wisconsin has one.",
  });
}

/** What one plant an acre is in the guide's own count. */
function countedPart(counted: "an acre" | "a square foot" | "a foot of row", rowWidthIn: number | null): number {
  if (counted === "an acre") return 1;
  if (counted === "a square foot") return 1 / squareFootPerAcre;
  if (rowWidthIn === null) waitFor("rowWidth");
  within("rowWidth", rowWidthIn, seedLimits.rowWidth);
  return rowWidthIn / rowFootInchPerAcre;
}
