import { within } from "../limit";
import { moneyLimits } from "../money/money-limits";
import { normalQuantile } from "../statistics/normal";
import { threePointSpread, type RangeShape, type ThreePoints, type ThreePointSpread } from "../statistics/three-point";
import { threePointsWithin } from "../three-points-within";
import { averageNormalCdf } from "./average-normal-cdf";
import type { Distribution } from "./distribution";
import { riskLimits } from "./risk-limits";

/** A crop on one acre with its yield and price as lowest, likeliest and highest. */
export interface Outlook {
  readonly yieldBuPerAc: ThreePoints;
  readonly priceUsdPerBu: ThreePoints;
  readonly shape: RangeShape;
  /** Of the normal scores of price and yield, -1 to 1. */
  readonly correlation: number;
  readonly costUsdPerAc: number;
  readonly otherIncomeUsdPerAc: number;
  /** Hauling, drying and storing of each bushel. */
  readonly costUsdPerBu: number;
}

/** A yield with its chance of that or less, and the normal score of that chance. */
interface Node {
  readonly yieldBuPerAc: number;
  readonly below: number;
  readonly score: number;
}

/** Steps from the lowest yield to the likeliest, and again to the highest. */
const stepsEachSide = 64;
/** Halvings of the first and the last step. */
const halvingsEachEnd = 14;
/** Cells in which the chances of a price are taken as straight, where each costs a series. */
const priceCells = 256;
/** Scores stand for chances of 0 and 1: that far out nothing is left. */
const farScore = 9;
const certainScore = 40;
/** Smallest spread of the price score at a given yield: keeps a correlation of ±1 finite. */
const leastSpread = 1e-6;

/**
 * Profit when yield and price are uncertain and move together (Gaussian copula).
 *
 *   P(profit <= x) = sum over yields of  P(price <= cost per bushel + (x + cost - other income) / yield | yield)
 *
 * The price score at a given yield is normal with mean correlation × yield score and variance 1 - correlation².
 * Within a step of yield its standing is taken as linear and averaged exactly, which holds up to a correlation of ±1.
 *
 * @source gaussian-copula
 */
export function profitDistribution(outlook: Outlook): Distribution {
  check(outlook);
  const yields = threePointSpread(outlook.yieldBuPerAc, outlook.shape);
  const prices = threePointSpread(outlook.priceUsdPerBu, outlook.shape);
  const { costUsdPerAc, otherIncomeUsdPerAc } = outlook;
  const chance = chanceOf(outlook, yields, prices);
  const corners = cornersOf(outlook);
  return {
    lowest: Math.min(...corners),
    highest: Math.max(...corners),
    cdf: (x) => Math.min(1, Math.max(0, chance(x + costUsdPerAc - otherIncomeUsdPerAc))),
  };
}

/** The chance that the bushels bring at most so many dollars an acre. */
function chanceOf(outlook: Outlook, yields: ThreePointSpread, prices: ThreePointSpread): (usd: number) => number {
  const { yieldBuPerAc, priceUsdPerBu, costUsdPerBu } = outlook;
  if (yields.sd === 0) {
    return (usd) => prices.cdf(priceFor(usd, yieldBuPerAc.likely, costUsdPerBu));
  }
  if (prices.sd === 0) return (usd) => chanceAtPrice(usd, priceUsdPerBu.likely - costUsdPerBu, yields);
  const nodes = nodesOf(yieldBuPerAc, yields);
  const priceCdf = outlook.shape === "pert" ? tabulated(prices, priceUsdPerBu) : (price: number) => prices.cdf(price);
  return (usd) => chanceOverYields(usd, outlook, { nodes, yields, priceCdf });
}

/** The price at which a yield brings so many dollars; without a yield any price or none does. */
function priceFor(usd: number, yieldBuPerAc: number, costUsdPerBu: number): number {
  if (yieldBuPerAc > 0) return costUsdPerBu + usd / yieldBuPerAc;
  return usd >= 0 ? Number.POSITIVE_INFINITY : Number.NEGATIVE_INFINITY;
}

function chanceAtPrice(usd: number, marginUsdPerBu: number, yields: ThreePointSpread): number {
  if (marginUsdPerBu === 0) return usd >= 0 ? 1 : 0;
  const below = yields.cdf(usd / marginUsdPerBu);
  return marginUsdPerBu > 0 ? below : 1 - below;
}

/** Even steps, and halving ones towards both ends, where the score runs off. */
function nodesOf({ low, likely, high }: ThreePoints, yields: ThreePointSpread): Node[] {
  const even = (from: number, to: number) =>
    Array.from({ length: stepsEachSide }, (_, step) => from + ((to - from) * step) / stepsEachSide);
  const firstStep = (likely > low ? likely - low : high - low) / stepsEachSide;
  const lastStep = (high > likely ? high - likely : high - low) / stepsEachSide;
  const halvings = Array.from({ length: halvingsEachEnd }, (_, index) => 2 ** -(index + 1));
  const amounts = [
    ...(low < likely ? even(low, likely) : []),
    ...(likely < high ? even(likely, high) : []),
    ...halvings.flatMap((share) => [low + firstStep * share, high - lastStep * share]),
    high,
  ];
  return amounts.sort((a, b) => a - b).map((amount) => nodeAt(amount, yields));
}

function nodeAt(yieldBuPerAc: number, yields: ThreePointSpread): Node {
  const below = yields.cdf(yieldBuPerAc);
  const score = Math.min(farScore, Math.max(-farScore, normalQuantile(below)));
  return { yieldBuPerAc, below, score };
}

/** The chances of a price, straight between evenly spaced prices; each worked out when first asked for. */
function tabulated(prices: ThreePointSpread, { low, high }: ThreePoints): (price: number) => number {
  const known: number[] = [];
  const chanceAt = (cell: number) => (known[cell] ??= prices.cdf(low + ((high - low) * cell) / priceCells));
  return (price) => {
    const place = ((price - low) / (high - low)) * priceCells;
    if (!(place > 0)) return 0;
    if (place >= priceCells) return 1;
    const cell = Math.floor(place);
    return chanceAt(cell) + (place - cell) * (chanceAt(cell + 1) - chanceAt(cell));
  };
}

interface Spreads {
  readonly nodes: readonly Node[];
  readonly yields: ThreePointSpread;
  readonly priceCdf: (price: number) => number;
}

function chanceOverYields(usd: number, outlook: Outlook, { nodes, yields, priceCdf }: Spreads): number {
  const { correlation, costUsdPerBu } = outlook;
  const spread = Math.sqrt(Math.max(leastSpread ** 2, 1 - correlation ** 2));
  const turns = turnsOf(usd, outlook, yields);
  let sum = 0;
  let belowBefore = 0;
  let standingBefore = 0;
  const step = ({ yieldBuPerAc, below, score }: Node) => {
    const chance = priceCdf(priceFor(usd, yieldBuPerAc, costUsdPerBu));
    const standing = (scoreOf(chance) - correlation * score) / spread;
    if (below > belowBefore) sum += (below - belowBefore) * averageNormalCdf(standingBefore, standing);
    belowBefore = below;
    standingBefore = standing;
  };
  for (const node of nodes) {
    while (turns[0] && turns[0].yieldBuPerAc < node.yieldBuPerAc) turns.splice(0, 1).forEach(step);
    step(node);
  }
  return sum;
}

function scoreOf(chance: number): number {
  if (chance <= 0) return -certainScore;
  return chance >= 1 ? certainScore : normalQuantile(chance);
}

/** The yields at which the price needed passes the lowest, likeliest and highest: the standing turns there. */
function turnsOf(
  usd: number,
  { yieldBuPerAc, priceUsdPerBu, costUsdPerBu }: Outlook,
  yields: ThreePointSpread,
): Node[] {
  return [priceUsdPerBu.low, priceUsdPerBu.likely, priceUsdPerBu.high]
    .map((price) => usd / (price - costUsdPerBu))
    .filter((amount) => amount > yieldBuPerAc.low && amount < yieldBuPerAc.high)
    .sort((a, b) => a - b)
    .map((amount) => nodeAt(amount, yields));
}

function cornersOf({ yieldBuPerAc, priceUsdPerBu, ...costs }: Outlook): number[] {
  const at = (bushels: number, price: number) =>
    bushels * (price - costs.costUsdPerBu) + costs.otherIncomeUsdPerAc - costs.costUsdPerAc;
  return [
    at(yieldBuPerAc.low, priceUsdPerBu.low),
    at(yieldBuPerAc.low, priceUsdPerBu.high),
    at(yieldBuPerAc.likely, priceUsdPerBu.likely),
    at(yieldBuPerAc.high, priceUsdPerBu.low),
    at(yieldBuPerAc.high, priceUsdPerBu.high),
  ];
}

function check(outlook: Outlook): void {
  threePointsWithin("Yield", outlook.yieldBuPerAc, moneyLimits.yield);
  threePointsWithin("Price", outlook.priceUsdPerBu, moneyLimits.price);
  within("correlation", outlook.correlation, riskLimits.correlation);
  within("cost", outlook.costUsdPerAc, moneyLimits.costPerAc);
  within("otherIncome", outlook.otherIncomeUsdPerAc, moneyLimits.otherIncome);
  within("costPerBushel", outlook.costUsdPerBu, moneyLimits.costPerBushel);
}
