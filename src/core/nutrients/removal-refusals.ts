import { refuse, refuseArgument } from "../fault";
import { crops, type CropKey } from "../../reference/crops";
import {
  nutrients,
  parts,
  removalSets,
  type NutrientKey,
  type RemovalSetKey,
  type SinglePart,
} from "../../reference/nutrients";
import type { Coefficient, CropRecord, PartRecord } from "./removal-index";

/** Says that no removal is published for a crop, and what to do. */
export function refuseCrop(crop: CropKey): never {
  refuse({
    kind: "notPublished",
    where: "the removal tables",
    what: `number for ${crops[crop].label}`,
    instead: "Multiply the yield by a laboratory's grain analysis instead.",
  });
}

/** Names the parts that a crop does publish. */
export function refusePart(crop: CropKey, part: SinglePart, record: CropRecord): never {
  const known = [...new Set(Object.values(record.parts))].flatMap(firstPart);
  refuse({
    kind: "notPublished",
    where: "the removal tables",
    what: `number for ${crops[crop].label} ${parts[part].label}`,
    instead: `Parts of ${crops[crop].label} with numbers: ${known.join(", ")}.`,
  });
}

/** Says that residue cannot be worked out from this crop's grain yield. */
export function refuseJoined(crop: CropKey): never {
  refuse({
    kind: "notPublished",
    where: "the removal tables",
    what: `weight of straw or stover per bushel of ${crops[crop].label}`,
    instead: "Ask for the grain and for the tons of straw baled in two calls, and add them.",
  });
}

/** Names the nutrients and sets that would have answered. */
export function refuseNutrient(
  crop: CropKey,
  part: SinglePart,
  nutrient: NutrientKey,
  set: RemovalSetKey | null,
  record: PartRecord,
): never {
  const holders = Object.entries(record.sets)
    .filter(([, numbers]) => numbers[nutrient])
    .map(([key]) => labelOf(key));
  refuse({
    kind: "notPublished",
    where: set === null ? "the usual removal set" : `the ${removalSets[set].label} removal set`,
    what: `${nutrients[nutrient].label} for ${crops[crop].label} ${parts[part].label}`,
    ...(holders.length > 0 && { instead: `Sets that print it: ${holders.join(", ")}.` }),
  });
}

/** A moisture was given for a number printed "as baled". */
export function refuseMoisture(crop: CropKey, part: SinglePart, number: Coefficient): never {
  refuseArgument(
    "moisture",
    `the ${crops[crop].label} ${parts[part].label} number is printed per ${number.unit} with no moisture: leave moisture out.`,
  );
}

function firstPart(record: PartRecord | undefined): string[] {
  const row = record && Object.values(record.usual)[0]?.row;
  return row ? [parts[row.part].label] : [];
}

function labelOf(key: string): string {
  return key in removalSets ? removalSets[key as RemovalSetKey].label : key; // keys of a record are typed as string
}
