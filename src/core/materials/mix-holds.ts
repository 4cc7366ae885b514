import { leastCost, type MixMaterial, type MixNutrient, type MixRequest } from "./mix-request";

/** A limit the cheapest mix runs up against, and what a pound of room in it would save. */
export interface Hold {
  readonly limitLbPerAc: number;
  /** $ saved by one more pound of room; 0 when another limit holds as tightly. */
  readonly savesUsdPerLb: number;
}

/** What the next pound of a need costs, $; below 0 it saves; null when no mix reaches it. */
export type NextPound = number | null;

/**
 * Shadow prices by solving again with one more pound: exact for that pound, and right where several limits hold at
 * once, which the slopes of a solver are not.
 */
export class MixHolds {
  constructor(
    private readonly request: MixRequest,
    private readonly costUsdPerAc: number,
  ) {}

  nextPound(index: number): NextPound {
    const cost = leastCost(
      this.withNutrient(index, (nutrient) => ({ ...nutrient, needLbPerAc: nutrient.needLbPerAc + 1 })),
    );
    return cost === null ? null : tidy(cost - this.costUsdPerAc);
  }

  overshoot(index: number, suppliedLbPerAc: number): Hold | null {
    const { needLbPerAc = 0, overshootLbPerAc = null } = this.request.nutrients[index] ?? {};
    if (overshootLbPerAc === null) return null;
    return this.held(needLbPerAc + overshootLbPerAc, suppliedLbPerAc, () =>
      this.withNutrient(index, (nutrient) => ({ ...nutrient, overshootLbPerAc: overshootLbPerAc + 1 })),
    );
  }

  most(index: number, rateLbPerAc: number): Hold | null {
    const mostLbPerAc = this.request.materials[index]?.mostLbPerAc ?? null;
    if (mostLbPerAc === null) return null;
    return this.held(mostLbPerAc, rateLbPerAc, () =>
      this.withMaterial(index, (material) => ({ ...material, mostLbPerAc: mostLbPerAc + 1 })),
    );
  }

  least(index: number, rateLbPerAc: number): Hold | null {
    const leastLbPerAc = this.request.materials[index]?.leastLbPerAc ?? 0;
    if (leastLbPerAc === 0) return null;
    const step = Math.min(1, leastLbPerAc);
    return this.held(
      leastLbPerAc,
      rateLbPerAc,
      () => this.withMaterial(index, (material) => ({ ...material, leastLbPerAc: leastLbPerAc - step })),
      step,
    );
  }

  salt(saltLbPerAc: number): Hold | null {
    const { saltLimitLbPerAc } = this.request;
    if (saltLimitLbPerAc === null) return null;
    return this.held(saltLimitLbPerAc, saltLbPerAc, () => ({
      ...this.request,
      saltLimitLbPerAc: saltLimitLbPerAc + 1,
    }));
  }

  total(totalLbPerAc: number): Hold | null {
    const { totalLimitLbPerAc } = this.request;
    if (totalLimitLbPerAc === null) return null;
    return this.held(totalLimitLbPerAc, totalLbPerAc, () => ({
      ...this.request,
      totalLimitLbPerAc: totalLimitLbPerAc + 1,
    }));
  }

  private held(limitLbPerAc: number, actualLbPerAc: number, looser: () => MixRequest, stepLb = 1): Hold | null {
    if (!isAt(actualLbPerAc, limitLbPerAc)) return null;
    const cost = leastCost(looser()) ?? this.costUsdPerAc;
    return { limitLbPerAc, savesUsdPerLb: tidy((this.costUsdPerAc - cost) / stepLb) };
  }

  private withNutrient(at: number, change: (nutrient: MixNutrient) => MixNutrient): MixRequest {
    const nutrients = this.request.nutrients.map((nutrient, index) => (index === at ? change(nutrient) : nutrient));
    return { ...this.request, nutrients };
  }

  private withMaterial(at: number, change: (material: MixMaterial) => MixMaterial): MixRequest {
    const materials = this.request.materials.map((material, index) => (index === at ? change(material) : material));
    return { ...this.request, materials };
  }
}

/** Whether an amount stands at a limit, but for what the solver rounds off. */
function isAt(actualLbPerAc: number, limitLbPerAc: number): boolean {
  return Math.abs(actualLbPerAc - limitLbPerAc) <= 1e-6 * Math.max(1, limitLbPerAc);
}

/** Differences of two solved costs carry dust of about 1e-8. */
function tidy(usd: number): number {
  return Math.abs(usd) < 1e-6 ? 0 : usd;
}
