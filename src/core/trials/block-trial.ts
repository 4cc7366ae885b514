import { refuse, refuseArgument } from "../fault";
import { foldedName } from "../folded-name";
import { within } from "../limit";
import { fUpperTail } from "../statistics/f-distribution";
import { tForConfidence, twoSidedChance } from "../statistics/student-t";
import { studentizedRangeQuantile } from "../statistics/studentized-range";
import { mean } from "../statistics/sums";
import { blockFit, differenceError, type BlockFit } from "./block-fit";
import type { MeasuredGain } from "./gain-in-words";
import { holmAdjusted } from "./holm";
import { meanLetters } from "./mean-letters";
import { namedStrips, type NamedStrips, type StripLists } from "./named-strips";
import { trialLimits } from "./trial-limits";

export interface BlockTrialInput extends StripLists {
  readonly confidencePct: number;
  /** The treatment the others are held against; null: the first one listed. */
  readonly check: string | null;
}

/** A treatment held against the check. */
export interface AgainstCheck extends MeasuredGain {
  /** Chance of a difference this large if there were none, adjusted for the number of treatments (Holm). */
  readonly chance: number;
}

export interface TreatmentResult {
  readonly treatment: string;
  readonly strips: number;
  readonly mean: number;
  /** Treatments that share a letter are not clearly apart (Tukey). */
  readonly letters: string;
  /** null for the check itself. */
  readonly againstCheck: AgainstCheck | null;
}

export interface BlockTrial {
  readonly fit: BlockFit;
  readonly check: string;
  /** Names in the order first listed. */
  readonly listed: readonly string[];
  /** Best first. */
  readonly treatments: readonly TreatmentResult[];
  readonly f: number;
  readonly chance: number;
  readonly stripSd: number;
  readonly cvPct: number;
  /** For differences planned before harvest; null when strips are missing, since each pair then has its own. */
  readonly leastSignificantDifference: number | null;
  readonly tukeyDifference: number | null;
  /** Strips without blocks that would tell as much as one strip with them; null when strips are missing. */
  readonly blockingEfficiency: number | null;
  readonly missing: NamedStrips["missing"];
}

/**
 * A trial of any number of treatments in blocks, with lost strips allowed.
 *
 * @source gomez-gomez-1984, holm-1979, piepho-2004
 */
export function blockTrial(input: BlockTrialInput): BlockTrial {
  within("confidence", input.confidencePct, trialLimits.confidence);
  const named = namedStrips(input, { treatments: "treatments", blocks: "blocks" });
  const fit = judgedFit(named, "yields");
  const check = checkNumber(named.treatments, input.check);
  const { confidencePct } = input;
  const rangePoint = studentizedRangeQuantile(confidencePct / 100, named.treatments.length, fit.errorDf) / Math.SQRT2;
  const complete = named.missing.length === 0;
  const difference = complete ? differenceError(fit, 0, 1) : null;
  const f = fit.treatmentSquares / fit.treatmentDf / fit.errorMeanSquare;
  const stripSd = Math.sqrt(fit.errorMeanSquare);
  return {
    fit,
    check: named.treatments[check] ?? "",
    listed: named.treatments,
    treatments: treatmentResults(named, fit, { check, confidencePct, rangePoint }),
    f,
    chance: fUpperTail(f, fit.treatmentDf, fit.errorDf),
    stripSd,
    cvPct: (100 * stripSd) / mean(fit.means),
    leastSignificantDifference: difference && tForConfidence(confidencePct, fit.errorDf) * difference,
    tukeyDifference: difference && rangePoint * difference,
    blockingEfficiency: complete ? blockingEfficiency(fit) : null,
    missing: named.missing,
  };
}

/** The fit of named strips, refused where too little is left to judge by. */
export function judgedFit(named: NamedStrips, argument: string): BlockFit {
  const fit = blockFit(named.strips, named.treatments.length, named.blocks.length);
  if (fit.errorDf < 1) {
    const because = "too few strips are left to tell treatment from chance; add blocks.";
    refuseArgument(argument, because);
  }
  // Squares this small are the dust of decimals in base two.
  if (!(fit.errorMeanSquare > 1e-18 * Math.max(1, fit.grandMean ** 2))) {
    const because = "The yields fit treatments and blocks exactly, so nothing is left to judge by: check the entries.";
    refuse({ kind: "noSolution", because });
  }
  return fit;
}

interface Judging {
  readonly check: number;
  readonly confidencePct: number;
  /** Quantile of the studentized range over √2: differences beyond so many standard errors are clear. */
  readonly rangePoint: number;
}

function treatmentResults(named: NamedStrips, fit: BlockFit, judging: Judging): TreatmentResult[] {
  const order = named.treatments.map((_, index) => index).sort((a, b) => (fit.means[b] ?? 0) - (fit.means[a] ?? 0));
  const apart = (first: number, second: number) => Math.abs((fit.means[first] ?? 0) - (fit.means[second] ?? 0));
  const letters = meanLetters(
    order,
    (first, second) => apart(first, second) > judging.rangePoint * differenceError(fit, first, second),
  );
  const gains = gainsOverCheck(fit, judging);
  return order.map((index) => ({
    treatment: named.treatments[index] ?? "",
    strips: fit.stripsOf[index] ?? 0,
    mean: fit.means[index] ?? 0,
    letters: letters[index] ?? "",
    againstCheck: gains[index] ?? null,
  }));
}

function gainsOverCheck(fit: BlockFit, { check, confidencePct }: Judging): (AgainstCheck | null)[] {
  const point = tForConfidence(confidencePct, fit.errorDf);
  const gains = fit.means.map((mean, index) => {
    if (index === check) return null;
    const gain = mean - (fit.means[check] ?? 0);
    const standardError = differenceError(fit, index, check);
    const reach = point * standardError;
    const alone = twoSidedChance(gain / standardError, fit.errorDf);
    return { gain, standardError, df: fit.errorDf, low: gain - reach, high: gain + reach, alone };
  });
  const adjusted = holmAdjusted(gains.flatMap((gain) => (gain ? [gain.alone] : [])));
  return gains.map((gain, index) => gain && { ...gain, chance: adjusted[index > check ? index - 1 : index] ?? 1 });
}

function checkNumber(treatments: readonly string[], check: string | null): number {
  if (check === null) return 0;
  const found = treatments.findIndex((name) => foldedName(name) === foldedName(check));
  if (found >= 0) return found;
  refuse({
    kind: "unknownWord",
    argument: "check",
    received: check,
    nearest: treatments.slice(0, 5),
    accepted: treatments,
  });
}

/** Relative efficiency of blocks against strips placed anywhere (Gomez and Gomez 1984). */
function blockingEfficiency({ blockSquares, blockDf, treatmentDf, errorMeanSquare }: BlockFit): number {
  const [blocks, treatments] = [blockDf + 1, treatmentDf + 1];
  const without = (blockSquares + blocks * treatmentDf * errorMeanSquare) / (blocks * treatments - 1);
  return without / errorMeanSquare;
}
