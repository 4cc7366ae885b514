import type { Limit } from "../../../core/limit";
import { guides } from "../../../reference/guides";
import type { StarterCrop } from "../../../workbook/scenario/crop-examples";
import {
  choiceLimits,
  defaultChoices,
  starterCrops,
  type CropChoice,
  type StarterChoices,
} from "../../../workbook/starters";
import { words } from "../../words";
import { readNumber } from "../parts/read-number";
import { fieldIds } from "./field-ids";
import { partsOf, starterOf, type StartForm } from "./form";
import type { Refusal } from "./state";

const say = words.start;

/** The choices a form makes, or what in it does not fit. */
export type Checked = { readonly choices: StarterChoices } | { readonly refusals: readonly Refusal[] };

/** Reads one field: its value, or a refusal noted on the way. */
type Note = (field: string, read: number | string) => number;

/**
 * Reads the whole form; what the chosen starter does not ask for keeps its default. Words come out as the worksheet
 * functions say them, so that one habit serves both.
 */
export function checkForm(form: StartForm): Checked {
  const refusals: Refusal[] = [];
  const refuse = (field: string, says: string | undefined): void => {
    if (says !== undefined) refusals.push({ field, says });
  };
  const note: Note = (field, read) => {
    refuse(field, typeof read === "string" ? read : undefined);
    return typeof read === "string" ? Number.NaN : read;
  };
  const asks = asksOf(form);
  if (asks("guide")) refuse(fieldIds.guide, form.guide in guides ? undefined : say.guideMissing);
  if (asks("farmName")) refuse(fieldIds.farmName, farmNameRefusal(form.farmName));
  const choices = {
    ...defaultChoices,
    ...(asks("guide") && { guide: form.guide }),
    ...(asks("farmName") && { farmName: form.farmName.trim() }),
    ...(asks("crops") && { crops: cropsOf(form, refuse, note) }),
    ...(asks("withDemo") && { withDemo: form.figures === "demo" }),
    ...(asks("parts") && { parts: partsOf(form) }),
    ...(asksForFields(form) && { numberOfFields: note(fieldIds.fields, fieldCount(form.fields)) }),
  };
  return refusals.length > 0 ? { refusals } : { choices };
}

/** Tells which choices the starter of a form asks for. */
export function asksOf(form: StartForm): (choice: keyof StarterChoices) => boolean {
  const asks = starterOf(form)?.asks ?? [];
  return (choice) => asks.includes(choice);
}

/** The example farm brings its own fields; only empty rows have to be counted. */
export function asksForFields(form: StartForm): boolean {
  const asks = asksOf(form);
  return asks("numberOfFields") && !(asks("withDemo") && form.figures === "demo");
}

function farmNameRefusal(text: string): string | undefined {
  const length = text.trim().length;
  if (length === 0) return say.farmNameMissing;
  return length > choiceLimits.farmNameLength ? say.farmNameLong(choiceLimits.farmNameLength, length) : undefined;
}

function cropsOf(
  form: StartForm,
  refuse: (field: string, says: string | undefined) => void,
  note: Note,
): readonly CropChoice[] {
  const grown = starterCrops.filter((crop) => form.crops[crop].grown);
  refuse(fieldIds.crops, grown.length === 0 ? say.cropMissing : undefined);
  return grown.map((crop) => cropOf(form, crop, note));
}

function cropOf(form: StartForm, crop: StarterCrop, note: Note): CropChoice {
  const { price, yieldGoal } = form.crops[crop];
  const priceLimit = { ...choiceLimits.priceUsdPerBu, unit: "$/bu" };
  const yieldLimit = { ...choiceLimits.yieldBuPerAc, unit: "bu/ac" };
  return {
    crop,
    priceUsdPerBu: note(fieldIds.price(crop), numberWithin(say.priceOf(crop), price, priceLimit)),
    yieldBuPerAc: note(fieldIds.yieldGoal(crop), numberWithin(say.yieldOf(crop), yieldGoal, yieldLimit)),
  };
}

function fieldCount(text: string): number | string {
  const read = numberWithin(say.fieldsName, text, { ...choiceLimits.fields, unit: "fields" });
  return typeof read === "number" && !Number.isInteger(read) ? say.wholeFields(text.trim()) : read;
}

/** The number in a field, or the sentence that says what is missing. */
function numberWithin(name: string, text: string, limit: Limit): number | string {
  const read = readNumber(name, text, limit);
  if (read === "blank") return say.numberMissing(name, limit.min, limit.max, limit.unit);
  return "value" in read ? read.value : read.refusal;
}
