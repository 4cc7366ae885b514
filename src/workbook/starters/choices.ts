import { cropExamples, type StarterCrop } from "../scenario/crop-examples";
import { demoFarmName } from "../scenario/windmill-hollow";
import { allFarmParts, type FarmPart } from "./farm-parts";

/** What a person decides before a starter workbook is written. */
export interface StarterChoices {
  /** Shown at the head of the sheets; the client's name in a client budget. */
  readonly farmName: string;
  /** Region whose published guide works out needs, such as "IN-MI-OH". */
  readonly guide: string;
  readonly crops: readonly CropChoice[];
  readonly numberOfFields: number;
  /** The invented Windmill Hollow Farm filled in, or empty rows. */
  readonly withDemo: boolean;
  /** Sheets of the farm plan beyond the ones it always has. */
  readonly parts: readonly FarmPart[];
}

export interface CropChoice {
  readonly crop: StarterCrop;
  readonly priceUsdPerBu: number;
  readonly yieldBuPerAc: number;
}

/** The crops a starter can plan, in the order they are offered. */
export const starterCrops: readonly StarterCrop[] = ["corn", "soybean", "wheat"];

export function cropChoice(crop: StarterCrop): CropChoice {
  const { priceUsdPerBu, yieldBuPerAc } = cropExamples[crop];
  return { crop, priceUsdPerBu, yieldBuPerAc };
}

export const defaultChoices: StarterChoices = {
  farmName: demoFarmName,
  guide: "IN-MI-OH",
  crops: starterCrops.map(cropChoice),
  numberOfFields: 10,
  withDemo: true,
  parts: allFarmParts,
};

export const choiceLimits = {
  farmNameLength: 60,
  fields: { min: 1, max: 60 },
  priceUsdPerBu: { min: 0.01, max: 100 },
  yieldBuPerAc: { min: 1, max: 650 },
} as const;
