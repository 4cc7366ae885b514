import { refuseArgument } from "../fault";
import { within } from "../limit";
import { sum } from "../statistics/sums";
import { bestSet } from "./best-set";
import { mostInOnePick, type Interaction, type PickRequest } from "./pick-request";
import { practiceLimits } from "./practice-limits";
import { setGain, type SetGain } from "./set-gain";

/** Why a practice is in the set or not. */
export type PickReason =
  | { readonly kind: "picked" }
  | { readonly kind: "excluded"; readonly by: string }
  | { readonly kind: "missing"; readonly needs: string }
  | { readonly kind: "noGain" }
  | { readonly kind: "overBudget"; readonly shortUsdPerAc: number }
  | { readonly kind: "numberReached" }
  /** It could be added, but only in place of others that bring more. */
  | { readonly kind: "otherwiseUsed" };

export interface PickedPractice {
  readonly name: string;
  readonly isPicked: boolean;
  readonly costUsdPerAc: number;
  readonly gainBuPerAc: number;
  /** What the set nets with it over without it, all else the same, $/ac. */
  readonly addsUsdPerAc: number;
  readonly reason: PickReason;
}

export interface PracticePick {
  readonly practices: readonly PickedPractice[];
  readonly picked: number;
  readonly costUsdPerAc: number;
  /** Gain of the set, as the interaction has it. */
  readonly gainBuPerAc: number;
  /** The gains of the set as if each came alone. */
  readonly plainSumBuPerAc: number;
  readonly netUsdPerAc: number;
  readonly budgetLeftUsdPerAc: number;
  readonly interaction: Interaction;
}

/**
 * The set of practices that nets most within a budget, proved best.
 *
 *   most   price × gain(set) - Σ cost
 *   with   Σ cost ≤ budget, no two that exclude each other, none without what it requires
 *
 * @source land-doig-1960
 */
export function practicePick(request: PickRequest): PracticePick {
  check(request);
  const gains = setGain(request);
  const { chosen, netUsdPerAc, costUsdPerAc } = bestSet(request, gains);
  const explain = new Reasons(request, gains, chosen, netUsdPerAc, costUsdPerAc);
  return {
    practices: request.practices.map((practice, place) => ({
      ...practice,
      isPicked: chosen.includes(place),
      addsUsdPerAc: explain.adds(place),
      reason: explain.reason(place),
    })),
    picked: chosen.length,
    costUsdPerAc,
    gainBuPerAc: gains.gain(chosen),
    plainSumBuPerAc: sum(chosen.map((place) => request.practices[place]?.gainBuPerAc ?? 0)),
    netUsdPerAc,
    budgetLeftUsdPerAc: request.budgetUsdPerAc - costUsdPerAc,
    interaction: request.interaction,
  };
}

class Reasons {
  constructor(
    private readonly request: PickRequest,
    private readonly gains: SetGain,
    private readonly chosen: readonly number[],
    private readonly netUsdPerAc: number,
    private readonly costUsdPerAc: number,
  ) {}

  adds(place: number): number {
    const others = this.chosen.filter((other) => other !== place);
    return this.chosen.includes(place)
      ? this.netUsdPerAc - this.netOf(others)
      : this.netOf([...others, place]) - this.netUsdPerAc;
  }

  reason(place: number): PickReason {
    const { excludes, requires, budgetUsdPerAc, mostPractices } = this.request;
    if (this.chosen.includes(place)) return { kind: "picked" };
    const barred = excludes.find(
      ([one, other]) =>
        (one === place && this.chosen.includes(other)) || (other === place && this.chosen.includes(one)),
    );
    if (barred) return { kind: "excluded", by: this.nameOf(barred[0] === place ? barred[1] : barred[0]) };
    const lacking = requires.find(([one, other]) => one === place && !this.chosen.includes(other));
    if (lacking) return { kind: "missing", needs: this.nameOf(lacking[1]) };
    if (this.adds(place) <= 0) return { kind: "noGain" };
    const costUsdPerAc = this.costUsdPerAc + (this.request.practices[place]?.costUsdPerAc ?? 0);
    if (costUsdPerAc > budgetUsdPerAc) return { kind: "overBudget", shortUsdPerAc: costUsdPerAc - budgetUsdPerAc };
    if (mostPractices !== null && this.chosen.length >= mostPractices) return { kind: "numberReached" };
    return { kind: "otherwiseUsed" };
  }

  private netOf(places: readonly number[]): number {
    const { practices, priceUsdPerBu } = this.request;
    const cost = sum(places.map((place) => practices[place]?.costUsdPerAc ?? 0));
    return priceUsdPerBu * this.gains.gain(places) - cost;
  }

  private nameOf(place: number): string {
    return this.request.practices[place]?.name ?? "";
  }
}

function check(request: PickRequest): void {
  const { practices, priceUsdPerBu, budgetUsdPerAc, mostPractices } = request;
  if (practices.length > mostInOnePick) {
    const because = `takes at most ${mostInOnePick} practices at once; got ${practices.length}.`;
    refuseArgument("costs", because);
  }
  for (const { costUsdPerAc, gainBuPerAc } of practices) {
    within("costs", costUsdPerAc, practiceLimits.cost);
    within("gains", gainBuPerAc, practiceLimits.gain);
  }
  within("price", priceUsdPerBu, practiceLimits.price);
  within("budget", budgetUsdPerAc, practiceLimits.budget);
  if (mostPractices !== null) within("mostPractices", mostPractices, practiceLimits.mostPractices);
}
