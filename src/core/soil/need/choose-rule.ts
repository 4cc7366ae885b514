import { refuse } from "../../fault";
import { crops, type CropKey } from "../../../reference/crops";
import { approaches, extractants, type ApproachKey, type ExtractantKey } from "../../../reference/guides";
import type { Guide, NeedRule, NeedSystem } from "../../../reference/guides";

export type NeedNutrient = "P2O5" | "K2O";

export interface RuleQuestion {
  readonly guide: Guide;
  readonly nutrient: NeedNutrient;
  /** null: not said; refused where the guide's rules differ by crop. */
  readonly crop: CropKey | null;
  readonly cecMeq: number | null;
  /** null: the guide's own, where it has one. */
  readonly extractant: ExtractantKey | null;
  /** null: the guide's own. */
  readonly approach: ApproachKey | null;
}

export interface ChosenRule {
  readonly rule: NeedRule;
  readonly extractant: ExtractantKey;
  readonly approach: ApproachKey;
}

/**
 * The rule of a guide that fits a crop, a laboratory method and a soil.
 *
 * Refuses a method or approach the guide does not define and names those it takes; waits for a crop or CEC that the
 * guide's rules turn on.
 */
export function chooseRule(question: RuleQuestion): ChosenRule {
  const { guide, nutrient, crop, cecMeq } = question;
  const system = guide[nutrient];
  const extractant = extractantFor(guide, system, question.extractant);
  const approach = question.approach ?? guide.approach;
  let found = false;
  for (const rule of system.rules) {
    if (!rule.extractants.includes(extractant)) continue;
    if (!rule.approaches.includes(approach)) continue;
    if (rule.crops !== "all") {
      if (crop === null) refuse({ kind: "waiting", argument: "crop" });
      if (!rule.crops.includes(crop)) continue;
    }
    found = true;
    if (rule.cecUpTo === undefined) return { rule, extractant, approach };
    if (cecMeq === null) refuse({ kind: "waiting", argument: "cec" });
    if (cecMeq <= rule.cecUpTo) return { rule, extractant, approach };
  }
  return found ? refuse({ kind: "waiting", argument: "cec" }) : refuseRule(question, extractant, approach);
}

function extractantFor(guide: Guide, system: NeedSystem, asked: ExtractantKey | null): ExtractantKey {
  if (asked !== null && system.extractants.includes(asked)) return asked;
  const accepted = system.extractants.map((key) => extractants[key].label).join(", ");
  if (asked !== null) {
    refuse({
      kind: "refused",
      argument: "method",
      because: `${guide.label} is defined for ${accepted}; got ${extractants[asked].label}. Convert the test first, or use a guide that takes it.`,
    });
  }
  const [only, another] = system.extractants;
  return only !== undefined && another === undefined ? only : refuse({ kind: "waiting", argument: "method" });
}

/** Nothing fits: the approach is unknown to the guide, or the crop is. */
function refuseRule({ guide, nutrient, crop }: RuleQuestion, extractant: ExtractantKey, approach: ApproachKey): never {
  const rules = guide[nutrient].rules.filter((rule) => rule.extractants.includes(extractant));
  const known = [...new Set(rules.flatMap((rule) => rule.approaches))];
  if (!known.includes(approach)) {
    refuse({
      kind: "refused",
      argument: "approach",
      because: `${guide.label} publishes ${known.map((key) => approaches[key].label).join(", ")}; got ${approaches[approach].label}.`,
    });
  }
  const printed = [...new Set(rules.flatMap((rule) => (rule.crops === "all" ? [] : rule.crops)))];
  refuse({
    kind: "notPublished",
    where: guide.label,
    what: `${nutrient} rate for ${crop === null ? "that crop" : crops[crop].label}`,
    instead: `Crops with rates: ${printed.map((key) => crops[key].label).join(", ")}.`,
  });
}
