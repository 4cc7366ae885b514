import { FormulaError } from "../../../core/fault";
import { blockTrial } from "../../../core/trials/block-trial";
import { gainPays, type GainMoney, type MeasuredGain } from "../../../core/trials/gain-in-words";
import { pairedGain } from "../../../core/trials/paired-gain";
import { trialLimits } from "../../../core/trials/trial-limits";
import { isCellError, type CellIn, type CellOut } from "../../../functions/frame/cell";
import { runFunction } from "../../../functions/frame/run";
import { trialBlocks } from "../../../functions/trials/trial-blocks";
import { trialPairs } from "../../../functions/trials/trial-pairs";
import { words } from "../../words";
import { numberIn, readNumber, type Read } from "../parts/read-number";
import { sentence } from "../parts/text";
import type { KeptTrial, Layout } from "./state";
import { yieldsOf } from "./yields";

const say = words.trial;

/** A gain over the check with its likely range, as the picture shows it. */
interface ShownGain {
  readonly name: string;
  readonly gain: number;
  readonly low: number;
  readonly high: number;
  /** The gain that pays the cost, where price and cost are known. */
  readonly paysFrom?: number | undefined;
}

export type TrialResult =
  | { readonly because: string }
  | {
      readonly words: string;
      /** The table as the worksheet function fills it, without the sentence. */
      readonly rows: readonly (readonly CellOut[])[];
      readonly gains: readonly ShownGain[];
      /** The gain of each pair, where the trial has two treatments. */
      readonly pairs: readonly { readonly block: number; readonly gain: number }[];
    };

/** What the trial says: by pairs where there are two treatments, by blocks otherwise. */
export function resultOf(kept: KeptTrial): TrialResult | undefined {
  const { layout } = kept;
  if (!layout) return undefined;
  const yields = yieldsOf(kept);
  if (yields.filter((one) => one !== null).length < 2 * layout.treatments.length) return { because: say.waiting };
  return layout.treatments.length === 2 ? pairsResult(kept, layout, yields) : blocksResult(kept, layout, yields);
}

type Yields = readonly (number | null)[];

export interface Facts {
  readonly confidence: number | null;
  readonly price: number | null;
  readonly costs: readonly (number | null)[];
}

/** Confidence, price and costs as far as they can be read. */
export function factsOf({ form, costs }: KeptTrial): Facts {
  return {
    confidence: numberIn(readNumber(say.confidence, form.confidence, trialLimits.confidence)) ?? null,
    price: numberIn(readNumber(say.price, form.price, trialLimits.price)) ?? null,
    costs: costs.map((text) => numberIn(readCost(text)) ?? null),
  };
}

export function readCost(text: string): Read {
  return readNumber(say.cost(""), text, trialLimits.cost);
}

function pairsResult(kept: KeptTrial, layout: Layout, yields: Yields): TrialResult {
  const { check, treated, blocks } = pairColumns(layout, yields);
  const { confidence, price, costs } = factsOf(kept);
  const money = moneyOf(price, costs);
  const cost = money ? (costs[1] ?? 0) - (costs[0] ?? 0) : null;
  const rows = runFunction(trialPairs, [
    column(check),
    column(treated),
    confidence,
    money ? price : null,
    money ? cost : null,
  ]);
  return told(rows, () => {
    const measured = pairedGain({ check, treated, confidencePct: confidence ?? 90 });
    const pairs = blocks.flatMap((block, index) => {
      const [without, with_] = [check[index] ?? null, treated[index] ?? null];
      return without === null || with_ === null ? [] : [{ block, gain: with_ - without }];
    });
    const pay = price === null || cost === null ? null : { priceUsdPerBu: price, costUsdPerAc: cost };
    return { gains: [shownGain(say.differences.mean, measured, pay)], pairs };
  });
}

/** Check and treated yields, pair by pair. */
export function pairColumns({ treatments, strips }: Layout, yields: Yields) {
  const blocks = [...new Set(strips.map(({ block }) => block))];
  const of = (treatment: string | undefined) =>
    blocks.map((block) => {
      const at = strips.findIndex((strip) => strip.block === block && strip.treatment === treatment);
      return yields[at] ?? null;
    });
  return { blocks, check: of(treatments[0]), treated: of(treatments[1]) };
}

function blocksResult(kept: KeptTrial, layout: Layout, yields: Yields): TrialResult {
  const { confidence, price, costs } = factsOf(kept);
  const [check = null] = layout.treatments;
  const money = moneyOf(price, costs);
  const strips = withYields(layout, yields);
  const rows = runFunction(trialBlocks, [
    column(strips.map(({ treatment }) => treatment)),
    column(strips.map(({ block }) => block)),
    column(strips.map(({ yieldBuPerAc }) => yieldBuPerAc)),
    confidence,
    check,
    money ? price : null,
    money ? column(listedIn(layout).map((name) => costOf(name, layout, costs))) : null,
  ]);
  return told(rows, () => {
    const trial = blockTrial({
      treatments: strips.map(({ treatment }) => treatment),
      blocks: strips.map(({ block }) => String(block)),
      yields: strips.map(({ yieldBuPerAc }) => yieldBuPerAc),
      confidencePct: confidence ?? 90,
      check,
    });
    const gains = trial.treatments.flatMap(({ treatment, againstCheck }) => {
      if (!againstCheck) return [];
      const over = costOf(treatment, layout, costs) - (costs[0] ?? 0);
      const pay = money && price !== null ? { priceUsdPerBu: price, costUsdPerAc: over } : null;
      return [shownGain(treatment, againstCheck, pay)];
    });
    return { gains, pairs: [] };
  });
}

export function withYields({ strips }: Layout, yields: Yields) {
  return strips.map((strip, index) => ({ ...strip, yieldBuPerAc: yields[index] ?? null }));
}

/** The treatments in the order in which the strips first name them. */
export function listedIn({ strips }: Layout): string[] {
  return [...new Set(strips.map(({ treatment }) => treatment))];
}

/** What a treatment costs an acre; nothing where no cost was typed. */
export function costOf(treatment: string, { treatments }: Layout, costs: Facts["costs"]): number {
  return costs[treatments.indexOf(treatment)] ?? 0;
}

/** Money is talked of once there is a price and a cost. */
export function moneyOf(price: number | null, costs: Facts["costs"]): boolean {
  return price !== null && price > 0 && costs.some((cost) => cost !== null);
}

function shownGain(name: string, measured: MeasuredGain, pay: GainMoney | null): ShownGain {
  const { gain, low, high } = measured;
  return { name, gain, low, high, ...(pay && { paysFrom: gainPays(measured, pay).paysFromBuPerAc }) };
}

type Shown = Pick<Extract<TrialResult, { words: string }>, "gains" | "pairs">;

/** The sentence of the function, its table, and the picture beside it; or the function's refusal. */
function told(rows: readonly (readonly CellOut[])[], shown: () => Shown): TrialResult {
  const first = rows[0]?.[0];
  if (isCellError(first)) return { because: sentence(first.message ?? first.code) };
  const said = rows.find(([label]) => label === "In words");
  try {
    return { words: String(said?.[1] ?? ""), rows: rows.filter((row) => row !== said), ...shown() };
  } catch (thrown) {
    if (thrown instanceof FormulaError) return { because: say.waiting };
    throw thrown;
  }
}

function column(cells: readonly CellIn[]): CellIn[][] {
  return cells.map((cell) => [cell]);
}
