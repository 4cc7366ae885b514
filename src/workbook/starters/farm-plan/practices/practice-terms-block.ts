import { limits } from "../../../../core/limits";
import { practiceLimits } from "../../../../core/practices/practice-limits";
import { formula } from "../../../formula/expression";
import { place, type Reference } from "../../../formula/reference";
import type { EntriesBlock, Entry } from "../../../model/block";
import { formats, type Allow } from "../../../model/cell";
import { within } from "../../../model/columns";
import { computedEntry, typedEntry } from "../../../model/entries";
import { practiceTerms } from "../../../scenario/practice-plans";
import { cropList, ofCrop } from "../crop-lookup";
import { fieldTable } from "../headers";
import type { PracticeContext } from "./practice-context";

type Term = "crop" | "price" | "acres" | "seasons" | "pairs" | "pairSd" | "pairAcres" | "pairCost" | "seasonSd";

/** A line of the terms on which practices are weighed. */
export const term = (key: Term): Reference => place(`practice-terms.${key}`);

export function practiceTermsBlock(context: PracticeContext): EntriesBlock {
  return {
    kind: "entries",
    key: "practice-terms",
    title: "The crop, and how a practice is tried",
    entries: [...cropLines(context), ...trialLines()],
  };
}

function cropLines({ crop }: PracticeContext): Entry[] {
  const left = formula`${ofCrop(term("crop"), "price")}-${ofCrop(term("crop"), "costPerBushel")}`;
  return [
    typedEntry(
      { key: "crop", label: "Crop", says: "All practices below are for this crop; gains of another are other gains." },
      crop,
      cropList,
    ),
    computedEntry(
      {
        key: "price",
        label: "A bushel leaves",
        unit: "$/bu",
        format: formats.cents,
        says: "The price of the assumptions, less hauling and drying.",
      },
      left,
    ),
    computedEntry(
      {
        key: "acres",
        label: "Acres of it next season",
        unit: "ac",
        format: formats.one,
        says: "From the list of fields.",
      },
      formula`SUMIF(${fieldTable.all("nextCrop")},${term("crop")},${fieldTable.all("acres")})`,
    ),
    typedEntry(
      {
        key: "seasons",
        label: "A decision stands for",
        unit: "seasons",
        format: formats.whole,
        says: "Times this crop is grown before you would ask again.",
      },
      practiceTerms.seasons,
      whole(practiceLimits.seasons, "Seasons that a decision stands."),
    ),
  ];
}

function trialLines(): Entry[] {
  return [
    typedEntry(
      {
        key: "pairs",
        label: "Pairs in a usual trial",
        unit: "pairs",
        format: formats.whole,
        says: "Four to six are usual.",
      },
      practiceTerms.pairs,
      whole({ min: 2, max: 60 }, "Pairs of strips in a trial."),
    ),
    typedEntry(
      {
        key: "pairSd",
        label: "Pairs scatter by (SD)",
        unit: "bu/ac",
        format: formats.one,
        says: "Of treated less check, from pair to pair; each trial sheet shows that of your own strips.",
      },
      practiceTerms.pairSdBuPerAc,
      { kind: "between", min: 0.1, max: 100, prompt: "Standard deviation of the difference of a pair, bu/ac." },
    ),
    typedEntry(
      { key: "pairAcres", label: "Acres of a pair", unit: "ac", format: formats.one, says: "Both strips together." },
      practiceTerms.pairAcres,
      { ...within(practiceLimits.pairAcres, "Acres of two strips side by side") },
    ),
    typedEntry(
      {
        key: "pairCost",
        label: "A pair costs",
        unit: "$",
        format: formats.dollars,
        says: "Laying out, tending, weighing, and yield given up.",
      },
      practiceTerms.pairCostUsd,
      within(practiceLimits.stripCost, "Dollars for one pair of strips"),
    ),
    typedEntry(
      {
        key: "seasonSd",
        label: "Seasons differ by (SD)",
        unit: "bu/ac",
        format: formats.one,
        says: "How far a gain moves from season to season; a trial of one season is believed that much less.",
      },
      practiceTerms.seasonSdBuPerAc,
      within({ ...limits.yieldAny, max: 100, unit: "bu/ac" }, "Standard deviation of a gain from season to season"),
    ),
  ];
}

function whole({ min, max }: { readonly min: number; readonly max: number }, prompt: string): Allow {
  return { kind: "between", min, max, whole: true, prompt };
}
