import type { CropKey } from "../crops";
import type { Cited } from "../table";
import { cornStandTables, type DateStandTable } from "./corn-stand-tables";
import type { PopulationCurveKey } from "./population-curves";
import {
  ontarioWheat,
  pennStateSoybean,
  pennStateWheat,
  soybeanDates,
  type DateStep,
  type StandStep,
} from "./stand-steps";

/** Whose figures: each covers the crops it published for. */
export const standGuideWords = {
  iowa2001: { label: "Iowa 2001", also: ["IA", "Iowa", "PM 1885", "isu-2001"] },
  iowaGuide: { label: "Iowa field guide", also: ["IPM 0001", "isu-ipm0001"] },
  illinois: { label: "Illinois", also: ["IL", "Illinois 1994", "Nafziger", "nafziger-1994", "Illinois 2009"] },
  wisconsin: { label: "Wisconsin", also: ["WI", "Wisconsin 2003", "uwisc-2003-south"] },
  pennState: { label: "Penn State", also: ["PA", "Pennsylvania"] },
  ontario: { label: "Ontario", also: ["ON"] },
} as const;

export type StandGuideKey = keyof typeof standGuideWords;

export const hybridWords = {
  full: { label: "full season", also: ["full", "full-season hybrid", "late"] },
  short: { label: "shorter season", also: ["short", "shorter", "shorter-season hybrid", "early"] },
} as const;

export type HybridKey = keyof typeof hybridWords;

interface ForCrop {
  readonly guide: StandGuideKey;
  readonly crop: CropKey;
}

/** How a guide tells the yield of a stand. */
export type StandGuide = ForCrop &
  (
    | { readonly form: "table"; readonly full: DateStandTable; readonly short: DateStandTable | null }
    | { readonly form: "curve"; readonly curve: PopulationCurveKey; readonly dates: readonly DateStep[] }
    | {
        readonly form: "steps";
        readonly counted: "an acre" | "a square foot" | "a foot of row";
        readonly steps: readonly StandStep[];
        /** null: the guide knows no date. */
        readonly dates: readonly DateStep[] | null;
      }
  );

export const standGuides: readonly StandGuide[] = [
  { guide: "iowa2001", crop: "corn", form: "table", full: cornStandTables.iowa2001, short: null },
  { guide: "iowaGuide", crop: "corn", form: "table", full: cornStandTables.iowaGuide, short: null },
  { guide: "illinois", crop: "corn", form: "table", full: cornStandTables.illinois1994, short: null },
  {
    guide: "wisconsin",
    crop: "corn",
    form: "table",
    full: cornStandTables.wisconsinFull,
    short: cornStandTables.wisconsinShort,
  },
  { guide: "illinois", crop: "soybean", form: "curve", curve: "soybeanIllinois", dates: soybeanDates },
  {
    guide: "pennState",
    crop: "soybean",
    form: "steps",
    counted: "an acre",
    steps: pennStateSoybean,
    dates: soybeanDates,
  },
  { guide: "pennState", crop: "wheat", form: "steps", counted: "a square foot", steps: pennStateWheat, dates: null },
  { guide: "ontario", crop: "wheat", form: "steps", counted: "a foot of row", steps: ontarioWheat, dates: null },
];

/** Every row a guide holds, of one form or another. */
export function rowsOfGuide(guide: StandGuide): readonly Cited[] {
  if (guide.form === "table") return [...guide.full.rows, ...(guide.short?.rows ?? [])];
  if (guide.form === "curve") return guide.dates;
  return [...guide.steps, ...(guide.dates ?? [])];
}
