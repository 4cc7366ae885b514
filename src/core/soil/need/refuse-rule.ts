import { refuse, refuseArgument, waitFor } from "../../fault";
import { crops, type CropKey } from "../../../reference/crops";
import {
  approaches,
  groups,
  guideInWords,
  type ApproachKey,
  type GroupKey,
  type NeedRule,
} from "../../../reference/guides";
import type { RuleQuestion } from "./choose-rule";
import { namesClasses } from "./names-classes";

const mostNamed = 8;

export function inWords(words: readonly string[]): string {
  return words.join(", ");
}

/** 4, 6 or 8. */
export function eitherOf(values: readonly number[]): string {
  const last = values[values.length - 1];
  return values.length < 2 ? String(last) : `${inWords(values.slice(0, -1).map(String))} or ${last}`;
}

/** What the guide splits its numbers for this crop by. */
export function groupsOf({ guide, nutrient, crop }: RuleQuestion): GroupKey[] {
  return guide[nutrient].rules.flatMap(({ group, crops: printed }) =>
    group !== undefined && (printed === "all" || (crop !== null && printed.includes(crop))) ? [group] : [],
  );
}

const labelOf = (key: GroupKey): string => groups[key]?.label ?? key;

/** The group is missing, or it is one that this guide does not know. */
export function refuseGroup({ guide, group }: RuleQuestion, known: readonly GroupKey[]): never {
  const labels = [...new Set(known)].map(labelOf);
  const named = labels.length > mostNamed ? `${labels[0]} to ${labels[labels.length - 1]}` : inWords(labels);
  if (!group) waitFor("group", `${guide.label} prints ${named}`);
  refuseArgument("group", `${guide.label} prints ${named}; got ${labelOf(group)}.`);
}

/** Nothing fits: the approach is unknown to the guide, or the crop is. */
export function refuseRule(question: RuleQuestion, approach: ApproachKey): never {
  const { guide, nutrient, crop, forRating } = question;
  const { rules } = guide[nutrient];
  const approachesOf = (rule: NeedRule) => rule.approaches ?? [guide.approach];
  const known = [...new Set(rules.flatMap(approachesOf))];
  if (!forRating && !known.includes(approach)) {
    refuseArgument(
      "approach",
      `${guide.label} publishes ${inWords(known.map((key) => approaches[key].label))}; got ${approaches[approach].label}.`,
    );
  }
  const fitting = rules.filter((rule) => (forRating ? namesClasses(rule) : approachesOf(rule).includes(approach)));
  const printed = labelsOf(fitting);
  const ofCrop = crop === null ? "" : ` for ${crops[crop].label}`;
  refuse({
    kind: "notPublished",
    where: guideInWords(guide),
    what: forRating ? `${nutrient} classes${printed === "" ? "" : ofCrop}` : `${nutrient} rate${ofCrop}`,
    ...(printed !== "" && { instead: `Crops it prints: ${printed}.` }),
  });
}

function labelsOf(rules: readonly NeedRule[]): string {
  const printed = new Set<CropKey>(rules.flatMap((rule) => (rule.crops === "all" ? [] : rule.crops)));
  return inWords([...printed].map((key) => crops[key].label));
}
