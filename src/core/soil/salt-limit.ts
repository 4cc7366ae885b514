import { needed, refuse } from "../fault";
import { rowFootInchPerAcre } from "../units/units";
import { crops, type CropKey } from "../../reference/crops";
import type { TextureKey } from "../../reference/nitrogen";
import {
  bandLimits,
  drySoil,
  furrowCorn,
  furrowNone,
  furrowTriState,
  saltGuides,
  saltPlacements,
  type BandLimit,
  type SaltGuideKey,
  type SaltPlacementKey,
} from "../../reference/soil";
import type { Cited } from "../../reference/table";

export interface SaltLimitInput {
  readonly crop: CropKey;
  readonly rowWidthIn: number;
  readonly placement: SaltPlacementKey;
  /** null: the lowest figure printed. */
  readonly soil: TextureKey | null;
  readonly isDry: boolean;
  /** null: the table that prints this placement. */
  readonly guide: SaltGuideKey | null;
  readonly cecMeq: number | null;
}

export interface SaltLimit {
  /** Most N + K2O, lb/ac. */
  readonly limitLbPerAc: number;
  readonly poundPerRowFoot: number;
  /** Limits of each nutrient alone, in bands. */
  readonly band: BandLimit | null;
  readonly guide: SaltGuideKey;
  readonly isDry: boolean;
  readonly cited: readonly Cited[];
}

/**
 * Most N + K2O that is safe in the furrow or in a 2 × 2 band, lb/ac.
 *
 * Between printed row widths the pounds per foot of row follow straight lines: 240 / row width on medium and fine
 * soil, and the printed cells on sand. On dry soil half is left. Widths outside the table are not available.
 */
export function saltLimit(input: SaltLimitInput): SaltLimit {
  const found = input.placement === "band" ? bandLimit(input) : furrowLimit(input);
  const limitLbPerAc = found.lb * (input.isDry ? drySoil.share : 1);
  return {
    limitLbPerAc,
    poundPerRowFoot: (limitLbPerAc * input.rowWidthIn) / rowFootInchPerAcre,
    band: found.band,
    guide: found.guide,
    isDry: input.isDry,
    cited: input.isDry ? [found.cited, drySoil] : [found.cited],
  };
}

interface Found {
  readonly lb: number;
  readonly band: BandLimit | null;
  readonly guide: SaltGuideKey;
  readonly cited: Cited;
}

function furrowLimit(input: SaltLimitInput): Found {
  const { crop, guide, cecMeq } = input;
  const none: readonly CropKey[] = furrowNone.crops;
  if (none.includes(crop) && (guide === null || guide === "general")) {
    return { lb: 0, band: null, guide: "general", cited: furrowNone };
  }
  if (crop !== "corn") return refuseLimit(input);
  if (guide === null || guide === "KS") {
    return { lb: betweenRows(input), band: null, guide: "KS", cited: furrowCorn };
  }
  if (guide !== "triState") return refuseLimit(input);
  const cec = needed("cec", cecMeq);
  const lb = cec < furrowTriState.cecUnder ? furrowTriState.light : furrowTriState.heavy;
  return { lb, band: null, guide, cited: furrowTriState };
}

/** Pounds per foot of row along straight lines between printed widths, back to lb/ac. */
function betweenRows(input: SaltLimitInput): number {
  const { rowWidthIn: width, soil } = input;
  const limits: readonly number[] = soil === "medium" || soil === "fine" ? furrowCorn.heavier : furrowCorn.sandy;
  const widths: readonly number[] = furrowCorn.rowWidthIn;
  const after = widths.findIndex((printed) => printed >= width);
  const [from, to] = [widths[Math.max(0, after - 1)], widths[after]];
  if (from === undefined || to === undefined || width < from) return refuseWidth(width);
  const rowPounds = (place: number) => (limits[place] ?? 0) * (widths[place] ?? 0);
  const share = to === from ? 0 : (width - from) / (to - from);
  const start = rowPounds(Math.max(0, after - 1));
  return (start + share * (rowPounds(after) - start)) / width;
}

function bandLimit(input: SaltLimitInput): Found {
  const rows: readonly BandLimit[] = bandLimits.rows;
  const row = rows.find(({ crop }) => crop === input.crop);
  if (!row || (input.guide !== null && input.guide !== "MI")) return refuseLimit(input);
  const lb = input.soil === "fine" ? (row.saltsOnClay ?? row.salts) : row.salts;
  return { lb, band: row, guide: "MI", cited: bandLimits };
}

function refuseLimit({ crop, placement, guide }: SaltLimitInput): never {
  refuse({
    kind: "notPublished",
    where: guide === null ? "no table known here" : saltGuides[guide].label,
    what: `limit for ${crops[crop].label} ${saltPlacements[placement].label}`,
    instead: "Keep fertilizer off the seed unless the label and your extension office say otherwise.",
  });
}

function refuseWidth(width: number): never {
  refuse({
    kind: "notPublished",
    where: saltGuides.KS.label,
    what: `limit for ${width}-inch rows`,
    instead: "Its table runs from 20 to 40 inches.",
  });
}
