import { refuse } from "../fault";
import type { PickRequest } from "./pick-request";
import type { SetGain } from "./set-gain";

/** Branches looked at before the search gives up; an answer that was not proved best is not given. */
const mostBranches = 15_000;
/** Two nets this near are the same; the cheaper set is then the better one. */
const sameUsd = 1e-9;

interface Best {
  readonly chosen: readonly number[];
  readonly netUsdPerAc: number;
  readonly costUsdPerAc: number;
}

/**
 * The set that nets most within budget, exclusions, requirements and number, by branch and bound: practices are taken
 * or left one by one, and a branch is dropped when even the most that is left to gain in it cannot beat the best set
 * so far. That most fills the budget with the open practices in the order of what they could add per dollar, the last
 * one in part.
 *
 * @source land-doig-1960
 */
export function bestSet(request: PickRequest, gains: SetGain): Best {
  return new Search(request, gains).run();
}

class Search {
  private best: Best = { chosen: [], netUsdPerAc: 0, costUsdPerAc: 0 };
  private branches = 0;
  private readonly order: readonly number[];
  private readonly excluded: ReadonlySet<string>;

  constructor(
    private readonly request: PickRequest,
    private readonly gains: SetGain,
  ) {
    const { practices, priceUsdPerBu } = request;
    const all = practices.map((_, place) => place);
    const most = gains.most([], all);
    const perDollar = (place: number) =>
      (priceUsdPerBu * (most[place] ?? 0)) / (practices[place]?.costUsdPerAc || 1e-9);
    this.order = [...all].sort((one, other) => perDollar(other) - perDollar(one) || one - other);
    this.excluded = new Set(request.excludes.flatMap(([one, other]) => [`${one} ${other}`, `${other} ${one}`]));
  }

  run(): Best {
    this.branch([], 0, 0);
    return { ...this.best, chosen: [...this.best.chosen].sort((one, other) => one - other) };
  }

  private branch(chosen: readonly number[], depth: number, costUsdPerAc: number): void {
    if (++this.branches > mostBranches) {
      refuse({
        kind: "noSolution",
        because: "Too many practices are too much alike to prove one set best: give fewer.",
      });
    }
    this.keepIfBetter(chosen, depth, costUsdPerAc);
    const place = this.order[depth];
    if (place === undefined || this.mostNet(chosen, depth, costUsdPerAc) <= this.best.netUsdPerAc + sameUsd) return;
    const cost = costUsdPerAc + this.costOf(place);
    if (this.mayTake(place, chosen, cost)) this.branch([...chosen, place], depth + 1, cost);
    if (!this.isNeeded(place, chosen)) this.branch(chosen, depth + 1, costUsdPerAc);
  }

  private keepIfBetter(chosen: readonly number[], depth: number, costUsdPerAc: number): void {
    const isWhole = this.request.requires.every(([one, other]) => !chosen.includes(one) || chosen.includes(other));
    if (!isWhole || depth === 0) return;
    const netUsdPerAc = this.request.priceUsdPerBu * this.gains.gain(chosen) - costUsdPerAc;
    const gained = netUsdPerAc - this.best.netUsdPerAc;
    if (gained > sameUsd || (gained > -sameUsd && costUsdPerAc < this.best.costUsdPerAc)) {
      this.best = { chosen, netUsdPerAc, costUsdPerAc };
    }
  }

  private mayTake(place: number, chosen: readonly number[], costUsdPerAc: number): boolean {
    const { budgetUsdPerAc, mostPractices, requires } = this.request;
    if (costUsdPerAc > budgetUsdPerAc + sameUsd) return false;
    if (mostPractices !== null && chosen.length >= mostPractices) return false;
    if (chosen.some((other) => this.excluded.has(`${place} ${other}`))) return false;
    const decided = this.order.indexOf(place);
    return requires.every(
      ([one, other]) => one !== place || chosen.includes(other) || this.order.indexOf(other) > decided,
    );
  }

  /** A chosen practice cannot stand without this one. */
  private isNeeded(place: number, chosen: readonly number[]): boolean {
    return this.request.requires.some(([one, other]) => other === place && chosen.includes(one));
  }

  private mostNet(chosen: readonly number[], depth: number, costUsdPerAc: number): number {
    const { priceUsdPerBu, budgetUsdPerAc } = this.request;
    const open = this.order.slice(depth);
    const most = this.gains.most(chosen, open);
    const offers = open
      .map((place, at) => ({ cost: this.costOf(place), net: priceUsdPerBu * (most[at] ?? 0) - this.costOf(place) }))
      .filter(({ net }) => net > 0)
      .sort((one, other) => other.net * one.cost - one.net * other.cost);
    let left = budgetUsdPerAc - costUsdPerAc;
    let net = priceUsdPerBu * this.gains.gain(chosen) - costUsdPerAc;
    for (const offer of offers) {
      const share = offer.cost <= left ? 1 : Math.max(0, left) / offer.cost;
      net += share * offer.net;
      left -= share * offer.cost;
      if (share < 1) break;
    }
    return Math.min(net, priceUsdPerBu * this.gains.mostInAll(chosen, open) - costUsdPerAc);
  }

  private costOf(place: number): number {
    return this.request.practices[place]?.costUsdPerAc ?? 0;
  }
}
