import { nutrients as nutrientWords } from "../../reference/nutrients";
import { refuseArgument } from "../fault";
import { dot } from "../statistics/sums";
import { solveLinearProgram } from "./linear-program";
import { leastCost, mixProgram, supplyOf, type MixNutrient, type MixRequest } from "./mix-request";

/**
 * Says why no mix meets a request: a nutrient that nothing holds, limits that clash among themselves, a nutrient
 * that stays out of reach within them, or else the fewest needs that cannot be met together.
 */
export function refuseMix(request: MixRequest): never {
  request.nutrients.forEach((nutrient, index) => refuseUnheld(request, nutrient, index));
  refuseLimits(request);
  request.nutrients.forEach((nutrient, index) => refuseAlone(request, nutrient, index));
  return refuseTogether(request);
}

function refuseUnheld({ materials }: MixRequest, { nutrient, needLbPerAc }: MixNutrient, index: number): void {
  if (needLbPerAc === 0 || supplyOf(materials, index).some((share) => share > 0)) return;
  refuseNeeds(`${label(nutrient)} cannot be met: none of the materials holds any, and ${needLbPerAc} lb/ac is needed.`);
}

/** The limits without any need: only least rates can clash with a ceiling over all materials. */
function refuseLimits(request: MixRequest): void {
  const free = keepNeeds(request, () => false);
  if (isPossible(free)) return;
  const overSalt = isPossible({ ...free, saltLimitLbPerAc: null });
  const because = overSalt
    ? "the least rates alone put on more N + K2O than saltLimit allows."
    : "the least rates alone weigh more than totalLimit allows.";
  refuseArgument("limits", because);
}

function refuseAlone(request: MixRequest, { nutrient, needLbPerAc, overshootLbPerAc }: MixNutrient, index: number) {
  const alone = keepNeeds(request, (other) => other === index);
  if (isPossible(alone)) return;
  const free = keepNeeds(request, () => false);
  const greatest = furthestSupply(free, index, -1);
  if (greatest < needLbPerAc) {
    refuseNeeds(
      `${label(nutrient)} cannot be met: within the limits the materials supply at most ${amount(greatest)} of the ${amount(needLbPerAc)} lb/ac needed.`,
    );
  }
  refuseNeeds(
    `${label(nutrient)} cannot be kept to ${amount(needLbPerAc + (overshootLbPerAc ?? 0))} lb/ac: the least rates alone bring ${amount(furthestSupply(free, index, 1))}.`,
  );
}

/** Leaves out one need after the other as long as the rest still clash; what is left clashes together. */
function refuseTogether(request: MixRequest): never {
  const kept = new Set(request.nutrients.keys());
  for (const index of request.nutrients.keys()) {
    kept.delete(index);
    if (isPossible(keepNeeds(request, (other) => kept.has(other)))) kept.add(index);
  }
  const names = [...kept].flatMap((index) => request.nutrients[index] ?? []).map(({ nutrient }) => label(nutrient));
  const clash =
    names.length === 2
      ? `${names.join(" and ")} can each be met alone but not together`
      : `${names.slice(0, -1).join(", ")} and ${names.at(-1)} cannot all be met together, though any fewer of them can`;
  return refuseNeeds(`${clash}: allow more overshoot, loosen a limit or add a material.`);
}

/** The same request with only some of its nutrients asked for. */
function keepNeeds(request: MixRequest, isKept: (index: number) => boolean): MixRequest {
  const nutrients = request.nutrients.map((nutrient, index) =>
    isKept(index) ? nutrient : { ...nutrient, needLbPerAc: 0, overshootLbPerAc: null },
  );
  return { ...request, nutrients };
}

function isPossible(request: MixRequest): boolean {
  return leastCost(request) !== null;
}

/** Most (sign -1) or least (sign 1) of a nutrient that the limits let through, lb/ac. */
function furthestSupply(request: MixRequest, index: number, sign: 1 | -1): number {
  const shares = supplyOf(request.materials, index);
  const answer = solveLinearProgram({ ...mixProgram(request), costs: shares.map((share) => sign * share) });
  return answer.kind === "optimal" ? dot(shares, answer.amounts) : Infinity;
}

function refuseNeeds(because: string): never {
  refuseArgument("needs", because);
}

function label(nutrient: MixNutrient["nutrient"]): string {
  return nutrientWords[nutrient].label;
}

function amount(lbPerAc: number): string {
  return lbPerAc.toLocaleString("en-US", { maximumFractionDigits: 2 });
}
