import { within } from "../limit";
import { poundPerTon } from "../units/units";
import type { CropKey } from "../../reference/crops";
import type { DryResidueRow, NutrientKey, PartKey, RemovalSetKey, SinglePart } from "../../reference/nutrients";
import { removalIndex, type Coefficient, type CropRecord } from "./removal-index";
import { refuseCrop, refuseJoined, refuseMoisture, refuseNutrient, refusePart } from "./removal-refusals";

export interface Harvest {
  readonly crop: CropKey;
  /** Per acre, in the unit of the part: bu, ton, cwt or bale. */
  readonly yieldPerAc: number;
  readonly nutrient: NutrientKey;
  /** null: the crop's main part. */
  readonly part: PartKey | null;
  /** null: the usual set of that crop. */
  readonly set: RemovalSetKey | null;
  /** Moisture of the yield as weighed; null: the moisture the number is printed for. */
  readonly moisturePct: number | null;
  /** The name the sheet shows for the yield, "yield" where none is given. */
  readonly yieldName?: string;
}

/** What one harvested part took off. */
export interface RemovedPiece {
  readonly part: SinglePart;
  readonly removedLbPerAc: number;
  readonly lowLbPerAc: number;
  readonly highLbPerAc: number;
  /** Yield on the basis the number is printed for. */
  readonly yieldPerAc: number;
  readonly number: Coefficient;
}

export interface Removal {
  readonly removedLbPerAc: number;
  /** Over every published set on the same basis. */
  readonly lowLbPerAc: number;
  readonly highLbPerAc: number;
  readonly pieces: readonly RemovedPiece[];
  /** Dry residue worked out from the grain yield; only for joined parts. */
  readonly residueTonPerAc?: number;
  readonly residueRow?: DryResidueRow;
}

/**
 * Nutrient carried off with a harvest, lb/ac.
 *
 *   removal = yield × published lb per unit
 *
 * A yield at another moisture is first brought to the moisture the number is printed for. For a joined part such as
 * grain+straw the residue follows from the grain yield and all of it is taken off.
 *
 * Refuses yields above published records; a nutrient the set does not print is not available, never 0.
 */
export function removal(harvest: Harvest): Removal {
  const record = removalIndex()[harvest.crop];
  if (!record) return refuseCrop(harvest.crop);
  if (harvest.part === "grain+straw" || harvest.part === "grain+stover") return joinedRemoval(record, harvest);
  const part = harvest.part ?? record.mainPart;
  const piece = removedPiece(record, part, harvest.yieldPerAc, harvest.moisturePct, harvest);
  if (harvest.moisturePct !== null && piece.number.moisturePct === null) {
    return refuseMoisture(harvest.crop, part, piece.number);
  }
  return {
    removedLbPerAc: piece.removedLbPerAc,
    lowLbPerAc: piece.lowLbPerAc,
    highLbPerAc: piece.highLbPerAc,
    pieces: [piece],
  };
}

function joinedRemoval(record: CropRecord, harvest: Harvest): Removal {
  const { residue } = record;
  if (!residue) return refuseJoined(harvest.crop);
  const grain = removedPiece(record, "grain", harvest.yieldPerAc, harvest.moisturePct, harvest);
  const residueTonPerAc = (grain.yieldPerAc * residue.dryLbPerBu) / poundPerTon;
  const { part } = residue.row;
  const straw =
    pieceByGrain(record, part, grain.yieldPerAc, harvest) ?? removedPiece(record, part, residueTonPerAc, 0, harvest);
  return {
    removedLbPerAc: grain.removedLbPerAc + straw.removedLbPerAc,
    lowLbPerAc: grain.lowLbPerAc + straw.lowLbPerAc,
    highLbPerAc: grain.highLbPerAc + straw.highLbPerAc,
    pieces: [grain, straw],
    residueTonPerAc,
    residueRow: residue.row,
  };
}

/** A set that prints residue per bushel of grain is read directly. */
function pieceByGrain(
  record: CropRecord,
  part: SinglePart,
  bushels: number,
  harvest: Harvest,
): RemovedPiece | undefined {
  const number = harvest.set === null ? undefined : record.parts[part]?.perGrain[harvest.set]?.[harvest.nutrient];
  return number && pieceOf(part, bushels, number);
}

function removedPiece(
  record: CropRecord,
  part: SinglePart,
  yieldPerAc: number,
  moisturePct: number | null,
  { crop, nutrient, set, yieldName = "yield" }: Harvest,
): RemovedPiece {
  const partRecord = record.parts[part];
  if (!partRecord) return refusePart(crop, part, record);
  within(yieldName, yieldPerAc, partRecord.yieldLimit);
  const number = (set === null ? partRecord.usual : partRecord.sets[set])?.[nutrient];
  if (!number) return refuseNutrient(crop, part, nutrient, set, partRecord);
  const weighedAtPct = moisturePct ?? (set === null ? partRecord.moisturePct : number.moisturePct);
  return pieceOf(part, yieldAtBasis(yieldPerAc, weighedAtPct, number.moisturePct), number);
}

function pieceOf(part: SinglePart, yieldPerAc: number, number: Coefficient): RemovedPiece {
  return {
    part,
    yieldPerAc,
    removedLbPerAc: yieldPerAc * number.lbPerUnit,
    lowLbPerAc: yieldPerAc * number.low,
    highLbPerAc: yieldPerAc * number.high,
    number,
  };
}

/** The same dry matter at the printed moisture. A number without a printed moisture takes the tons as they are. */
function yieldAtBasis(yieldPerAc: number, weighedAtPct: number | null, printedAtPct: number | null): number {
  if (weighedAtPct === null || printedAtPct === null || weighedAtPct === printedAtPct) return yieldPerAc;
  return (yieldPerAc * (100 - weighedAtPct)) / (100 - printedAtPct);
}
