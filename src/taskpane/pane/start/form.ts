import type { StarterCrop } from "../../../workbook/scenario/crop-examples";
import {
  allFarmParts,
  cropChoice,
  defaultChoices,
  isWanted,
  starterCrops,
  starters,
  type FarmPart,
  type Starter,
  type StarterSheet,
} from "../../../workbook/starters";
import { isRecord } from "../../../hosts/is-record";
import { listIn, recordOf, textIn } from "../parts/remembered";

/** Everything typed and chosen, as it stands in the fields. Checked only when it is needed. */
export interface StartForm {
  readonly starter: string;
  /** Empty until the person has chosen: a guide is never assumed. */
  readonly guide: string;
  readonly farmName: string;
  readonly crops: Readonly<Record<StarterCrop, CropLine>>;
  readonly figures: "demo" | "empty";
  readonly fields: string;
  readonly protect: boolean;
  /** Sheets left out of a farm plan; kept this way round, a sheet added later comes along. */
  readonly without: readonly FarmPart[];
}

export interface CropLine {
  readonly grown: boolean;
  readonly price: string;
  readonly yieldGoal: string;
}

export function firstForm(): StartForm {
  return {
    starter: starters[0]?.key ?? "",
    guide: "",
    farmName: defaultChoices.farmName,
    crops: { corn: usualLine("corn"), soybean: usualLine("soybean"), wheat: usualLine("wheat") },
    figures: "demo",
    fields: String(defaultChoices.numberOfFields),
    protect: false,
    without: [],
  };
}

function usualLine(crop: StarterCrop): CropLine {
  const { priceUsdPerBu, yieldBuPerAc } = cropChoice(crop);
  return { grown: starterCrops.includes(crop), price: priceUsdPerBu.toFixed(2), yieldGoal: String(yieldBuPerAc) };
}

/** A remembered form laid over a fresh one; whatever is not of the right kind is left out. */
export function formFrom(remembered: unknown): StartForm {
  const fresh = firstForm();
  if (!isRecord(remembered)) return fresh;
  const text = (key: "guide" | "farmName" | "fields"): string => textIn(remembered, key) ?? fresh[key];
  const line = (crop: StarterCrop): CropLine => cropFrom(remembered.crops, crop, fresh.crops[crop]);
  const starter = starters.find(({ key }) => key === remembered.starter)?.key ?? fresh.starter;
  return {
    starter,
    guide: text("guide"),
    farmName: text("farmName"),
    crops: { corn: line("corn"), soybean: line("soybean"), wheat: line("wheat") },
    figures: remembered.figures === "empty" ? "empty" : "demo",
    fields: text("fields"),
    protect: remembered.protect === true,
    without: partsFrom(remembered.without),
  };
}

function cropFrom(remembered: unknown, crop: StarterCrop, fresh: CropLine): CropLine {
  const line = recordOf(recordOf(remembered)[crop]);
  const [price, yieldGoal] = [textIn(line, "price"), textIn(line, "yieldGoal")];
  return price === undefined || yieldGoal === undefined ? fresh : { grown: line.grown === true, price, yieldGoal };
}

function partsFrom(remembered: unknown): readonly FarmPart[] {
  const left = listIn(remembered);
  return allFarmParts.filter((part) => left.includes(part));
}

/** Own figures come with a name of one's own; the invented farm's name stands only on its own figures. */
export function ownFigures({ farmName }: StartForm): Pick<StartForm, "figures" | "farmName"> {
  return { figures: "empty", farmName: farmName === defaultChoices.farmName ? "" : farmName };
}

/** The parts of a farm plan that stay ticked. */
export function partsOf({ without }: StartForm): readonly FarmPart[] {
  return allFarmParts.filter((part) => !without.includes(part));
}

/** The sheets that a form would have made. */
export function sheetsOf(form: StartForm): readonly StarterSheet[] {
  const parts = partsOf(form);
  return (starterOf(form)?.sheets ?? []).filter((sheet) => isWanted(sheet, parts));
}

/** The starter a form asks for. */
export function starterOf(form: StartForm): Starter | undefined {
  return starters.find(({ key }) => key === form.starter);
}
