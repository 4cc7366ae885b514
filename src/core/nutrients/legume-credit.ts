import { refuse, refuseArgument, waitFor } from "../fault";
import { crops, type CropKey } from "../../reference/crops";
import {
  creditGuides,
  creditRows,
  legumes,
  previousCrops,
  secondYearCredit,
  textures,
  type CreditGuideKey,
  type CreditRow,
  type PreviousKey,
  type TextureKey,
} from "../../reference/nitrogen";
import type { Cited } from "../../reference/table";

export interface LegumeCreditInput {
  readonly guide: CreditGuideKey;
  readonly previous: PreviousKey;
  /** Plants per square foot of an alfalfa sod. */
  readonly standPerSqFt: number | null;
  readonly nextCrop: CropKey | null;
  readonly soil: TextureKey | null;
  /** Season after the crop: 1 or 2. */
  readonly season: number;
  /** Height of the regrowth when it was killed, in. */
  readonly regrowthIn: number | null;
  /** Yield of the previous crop, bu/ac. */
  readonly previousYieldBu: number | null;
}

export interface LegumeCredit {
  readonly creditLbPerAc: number;
  /** Ends of the printed range. */
  readonly lowLbPerAc: number;
  readonly highLbPerAc: number;
  readonly isLegume: boolean;
  readonly row: CreditRow | null;
  readonly cited: readonly Cited[];
}

const none: LegumeCredit = {
  creditLbPerAc: 0,
  lowLbPerAc: 0,
  highLbPerAc: 0,
  isLegume: false,
  row: null,
  cited: [],
};

/**
 * Nitrogen that a previous crop leaves, lb/ac, as a region prints it. A crop that is no legume leaves none; a legume
 * the region prints no number for is not available, never 0.
 */
export function legumeCredit(input: LegumeCreditInput): LegumeCredit {
  if (input.season !== 1 && input.season !== 2) {
    refuseArgument("season", `must be 1 or 2; got ${input.season}.`);
  }
  const rows = creditRows.filter(({ guide, previous }) => guide === input.guide && previous.includes(input.previous));
  const isLegume = legumes.includes(input.previous);
  if (rows.length === 0 && !isLegume) return none;
  const row = rowFor(rows, input);
  const first = firstYear(row, input);
  if (input.season < 2) return { ...first, isLegume, row, cited: [row] };
  if (input.previous !== "alfalfa") return refuseCredit(input, "second-year credit");
  return {
    creditLbPerAc: first.creditLbPerAc * secondYearCredit.share,
    lowLbPerAc: first.lowLbPerAc * secondYearCredit.share,
    highLbPerAc: first.highLbPerAc * secondYearCredit.share,
    isLegume,
    row,
    cited: [row, secondYearCredit],
  };
}

/** The row that fits; waits for what tells the rows apart. */
function rowFor(rows: readonly CreditRow[], input: LegumeCreditInput): CreditRow {
  const forCrop = rows.filter(({ before }) => !before || (input.nextCrop !== null && before.includes(input.nextCrop)));
  if (forCrop.length === 0) {
    if (rows.length > 0 && input.nextCrop === null) waitFor("nextCrop");
    return refuseCredit(input, "nitrogen credit");
  }
  const forSoil = forCrop.filter(({ soils }) => !soils || (input.soil !== null && soils.includes(input.soil)));
  if (forSoil.length === 0) {
    if (input.soil === null) waitFor("soil");
    return refuseCredit(input, `nitrogen credit on ${textures[input.soil].label} soil`);
  }
  const byStand = forSoil.filter(({ fromPlants }) => fromPlants === undefined || enough(fromPlants, input));
  return byStand[0] ?? refuseCredit(input, "nitrogen credit for so thin a stand");
}

function enough(fromPlants: number, { standPerSqFt }: LegumeCreditInput): boolean {
  if (standPerSqFt === null) waitFor("stand");
  return standPerSqFt >= fromPlants;
}

function firstYear(
  row: CreditRow,
  { regrowthIn, previousYieldBu }: LegumeCreditInput,
): Pick<LegumeCredit, "creditLbPerAc" | "lowLbPerAc" | "highLbPerAc"> {
  const shortLb = regrowthIn !== null && regrowthIn < 8 ? (row.shortRegrowthLb ?? 0) : 0;
  const lb =
    row.perBu && previousYieldBu !== null && previousYieldBu < row.perBu.upToBu
      ? row.perBu.lb * previousYieldBu
      : row.lb - shortLb;
  return { creditLbPerAc: lb, lowLbPerAc: row.low ?? lb, highLbPerAc: row.high ?? lb };
}

function refuseCredit({ guide, previous, nextCrop }: LegumeCreditInput, what: string): never {
  const before = nextCrop === null ? "" : ` before ${crops[nextCrop].label}`;
  refuse({
    kind: "notPublished",
    where: creditGuides[guide].label,
    what: `${what} for ${previousCrops[previous].label}${before} that is known here`,
    instead: "Ask your extension office and type the figure.",
  });
}
