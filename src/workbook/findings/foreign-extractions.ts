import { extractantWords, guideWords } from "../../functions/words";
import { extractants, guides, type Guide, type NeedNutrient } from "../../reference/guides";
import { wordGiven, type CallReading } from "./reading/call-reading";
import type { ForeignExtraction } from "./finding";
import { namedCell, namedPlace } from "./reading/named-cell";
import type { CellPlace } from "../area";
import type { WorkbookReading } from "./reading/workbook-reading";

/** Functions that read a test against a guide, with what they read; TESTRATING names it in an argument. */
export const guideCalls: Readonly<Record<string, NeedNutrient | undefined>> = {
  PHOSPHATENEED: "P2O5",
  POTASHNEED: "K2O",
  TESTRATING: undefined,
};

const methodNames = [
  ["phosphorus_method", "P2O5"],
  ["potassium_method", "K2O"],
] as const;

interface Asked {
  readonly guide: string;
  readonly method: string;
  readonly nutrient: NeedNutrient;
  readonly at: CellPlace;
}

/** A sheet that asks this many guides sets them side by side: those that do not fit belong there. */
const guidesSideBySide = 3;

/** Guides that are asked about tests by an extraction they are not defined for: in calls, and by the farm plan's names. */
export function foreignExtractions(reading: WorkbookReading, calls: readonly CallReading[]): ForeignExtraction[] {
  const found = new Map<string, ForeignExtraction>();
  for (const asked of [...askedByNames(reading), ...withoutComparisons(calls.flatMap(askedByCall))]) {
    const foreign = foreignTo(asked);
    if (foreign === undefined) continue;
    const key = [foreign.guide, foreign.nutrient, foreign.extraction].join("|");
    const known = found.get(key);
    found.set(key, known ? { ...known, cells: known.cells + 1 } : foreign);
  }
  return [...found.values()];
}

function withoutComparisons(asked: readonly Asked[]): Asked[] {
  const guidesOn = new Map<string, Set<string>>();
  for (const { at, guide } of asked) guidesOn.set(at.sheet, (guidesOn.get(at.sheet) ?? new Set()).add(guide));
  return asked.filter(({ at }) => (guidesOn.get(at.sheet)?.size ?? 0) < guidesSideBySide);
}

function askedByNames(reading: WorkbookReading): Asked[] {
  const guide = namedCell(reading, "guide");
  if (typeof guide !== "string") return [];
  return methodNames.flatMap(([name, nutrient]): Asked[] => {
    const method = namedCell(reading, name);
    const at = namedPlace(reading, name);
    return typeof method === "string" && at ? [{ guide, method, nutrient, at }] : [];
  });
}

function askedByCall(call: CallReading): Asked[] {
  if (!(call.name in guideCalls)) return [];
  const guide = wordGiven(call, "guide");
  const method = wordGiven(call, "method");
  const nutrient = guideCalls[call.name] ?? ratedNutrient(call);
  return guide && method && nutrient ? [{ guide, method, nutrient, at: call.at }] : [];
}

function ratedNutrient(call: CallReading): NeedNutrient | undefined {
  const word = wordGiven(call, "nutrient")?.toUpperCase();
  if (word === "P" || word === "P2O5") return "P2O5";
  return word === "K" || word === "K2O" ? "K2O" : undefined;
}

function foreignTo({ guide: guideWord, method, nutrient, at }: Asked): ForeignExtraction | undefined {
  const key = guideWords.find(guideWord);
  const extraction = extractantWords.find(method);
  if (key === undefined || extraction === undefined) return undefined;
  const guide: Guide = guides[key];
  const taken = guide[nutrient].extractants;
  if (taken.length === 0 || taken.includes(extraction)) return undefined;
  const takes = taken.map((one) => extractants[one].label);
  const facts = { guide: guide.label, nutrient, extraction: extractants[extraction].label, takes };
  return { kind: "foreignExtraction", at, ...facts, cells: 1 };
}
