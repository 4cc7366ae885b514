import { needed, refuseArgument } from "../../fault";
import {
  finenessSystems,
  type FinenessSystem,
  type FinenessSystemKey,
  type SieveReportKey,
} from "../../../reference/soil";
import { dot, sum } from "../../statistics/sums";

export interface LimeQualityInput {
  /** Calcium carbonate equivalent, %. */
  readonly ccePct: number;
  /** Share in each size class, coarse to fine, or what passes each sieve; null where a cell is blank. */
  readonly sievesPct: readonly (number | null)[];
  readonly system: FinenessSystemKey;
  readonly report: SieveReportKey;
  /** null: not given. */
  readonly moisturePct: number | null;
}

export interface LimeQuality {
  /** Effective share of the material, %. */
  readonly effectivePct: number;
  /** Share of the stone that is fine enough to react, %. */
  readonly finenessPct: number;
  readonly classesPct: readonly number[];
  readonly moisturePct: number;
  /** The state's own figure, such as lb ENP per ton. */
  readonly ownFigure: number;
  readonly system: FinenessSystem;
}

/** Sieve reports are rounded; their shares may miss 100 by this much. */
const roundingPct = 1;

/**
 * Effective neutralizing value of a lime, %.
 *
 *   CCE × Σ share of each size × how much of that size reacts
 *
 * less water where the state's measure counts it. Refuses shares that do not add to 100 and sieves that let through
 * more when finer.
 */
export function limeQuality({ ccePct, sievesPct, system: key, report, moisturePct }: LimeQualityInput): LimeQuality {
  const system: FinenessSystem = finenessSystems[key];
  const given = sievesPct.map((value) => needed("finenessShares", value));
  const classesPct = report === "passing" ? classesFromPassing(given, system) : classesFromShares(given, system);
  const finenessPct = dot(classesPct, system.efficiency);
  if (moisturePct !== null && moisturePct > 0 && !system.countsMoisture) refuseMoisture(system);
  const water = moisturePct ?? 0;
  const effectivePct = (((ccePct * finenessPct) / 100) * (100 - water)) / 100;
  return {
    effectivePct,
    finenessPct,
    classesPct,
    moisturePct: water,
    ownFigure: system.fullLbPerTon === 0 ? effectivePct : (system.fullLbPerTon * effectivePct) / 100,
    system,
  };
}

/** One share per size class, or all but the coarsest. */
function classesFromShares(shares: readonly number[], system: FinenessSystem): readonly number[] {
  const classes = system.efficiency.length;
  if (shares.length !== classes && shares.length !== classes - 1) refuseCount(shares.length, system, "shares");
  const total = sum(shares);
  if (total > 0 && total <= 1.02) {
    refuseArgument("finenessShares", "shares are in percent: enter 40, not 0.40.");
  }
  const isWhole = shares.length === classes;
  if (total > 100 + roundingPct || (isWhole && total < 100 - roundingPct)) refuseTotal(total);
  return isWhole ? shares : [Math.max(0, 100 - total), ...shares];
}

/** What passes each sieve of the system, coarse to fine. */
function classesFromPassing(passing: readonly number[], system: FinenessSystem): readonly number[] {
  if (passing.length !== system.sieves.length) refuseCount(passing.length, system, "passing");
  const through = [100, ...passing, 0];
  return through.slice(0, -1).map((coarse, size) => {
    const fine = through[size + 1] ?? 0;
    if (fine > coarse) {
      refuseArgument(
        "finenessShares",
        `a finer sieve cannot pass more than a coarser one: ${fine} % after ${coarse} %. List them coarse to fine.`,
      );
    }
    return coarse - fine;
  });
}

function refuseCount(received: number, { label, sieves }: FinenessSystem, report: SieveReportKey): never {
  const expected =
    report === "passing"
      ? `what passes ${sieves.join(", ")} mesh (${sieves.length} values)`
      : `the shares ${sizeNames(sieves).join(", ")} (${sieves.length + 1} values, or all but the first)`;
  refuseArgument("finenessShares", `${label} takes ${expected}, coarse to fine; got ${received}.`);
}

function refuseTotal(total: number): never {
  const because = `the shares must add to 100 %; they add to ${Number(total.toFixed(2))}.`;
  refuseArgument("finenessShares", because);
}

function refuseMoisture({ label }: FinenessSystem): never {
  refuseArgument("moisture", `${label} is stated on dry lime: leave moisture out here and give it to LIMERATE.`);
}

/** "over 8 mesh", "8 to 20 mesh", "under 60 mesh". */
export function sizeNames(sieves: readonly number[]): readonly string[] {
  return [null, ...sieves].map((coarse, size) => {
    const fine = sieves[size];
    if (coarse === null) return `coarser than ${fine} mesh`;
    return fine === undefined ? `finer than ${coarse} mesh` : `${coarse} to ${fine} mesh`;
  });
}
