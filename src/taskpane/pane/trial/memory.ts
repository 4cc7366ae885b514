import type { LayoutStrip } from "../../../core/trials/trial-layout";
import { designWords } from "../../../functions/trials/design-words";
import { isRecord } from "../../../hosts/is-record";
import { listIn, recordOf, textIn } from "../parts/remembered";
import {
  firstKept,
  firstTrial,
  type KeptTrial,
  type Layout,
  type StripText,
  type TrialForm,
  type TrialState,
} from "./state";

/** The trial as it was left; whatever is not of the right kind is left out. */
export function trialFrom(remembered: unknown): TrialState {
  return isRecord(remembered) ? { ...firstTrial(), kept: keptFrom(remembered) } : firstTrial();
}

function keptFrom(remembered: Readonly<Record<string, unknown>>): KeptTrial {
  const layout = layoutFrom(remembered.layout);
  const strips = listIn(remembered.strips);
  const costs = listIn(remembered.costs);
  return {
    form: formFrom(recordOf(remembered.form)),
    layout,
    strips: (layout?.strips ?? []).map((_, index) => stripFrom(recordOf(strips[index]))),
    costs: (layout?.treatments ?? []).map((_, index) => String(costs[index] ?? "")),
  };
}

function formFrom(form: Readonly<Record<string, unknown>>): TrialForm {
  const fresh = firstKept().form;
  const texts = Object.fromEntries(Object.entries(fresh).map(([key, usual]) => [key, textIn(form, key) ?? usual]));
  return {
    ...fresh,
    ...texts,
    design: designWords.find(textIn(form, "design") ?? "") ?? fresh.design,
    entry: form.entry === "weights" ? "weights" : "yields",
  };
}

function layoutFrom(value: unknown): Layout | undefined {
  if (!isRecord(value)) return undefined;
  const treatments = listIn(value.treatments).filter((name): name is string => typeof name === "string");
  const strips = listIn(value.strips).flatMap((strip): LayoutStrip[] => {
    if (!isRecord(strip)) return [];
    const { strip: number, block, treatment } = strip;
    const fits = typeof number === "number" && typeof block === "number" && typeof treatment === "string";
    return fits ? [{ strip: number, block, treatment }] : [];
  });
  const design = designWords.find(textIn(value, "design") ?? "");
  const isWhole = design !== undefined && treatments.length > 1 && strips.length > 1 && typeof value.seed === "number";
  return isWhole ? { treatments, design, strips, seed: Number(value.seed) } : undefined;
}

function stripFrom(strip: Readonly<Record<string, unknown>>): StripText {
  const text = (key: string) => textIn(strip, key) ?? "";
  return { yield: text("yield"), weight: text("weight"), moisture: text("moisture") };
}
