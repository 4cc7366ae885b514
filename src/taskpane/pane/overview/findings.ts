import { capitalized } from "../../../core/capitalized";
import { parseAddress } from "../../../hosts/address";
import { evenWithinLbPerAc } from "../../../workbook/starters/farm-plan/soil/ledger-sheet";
import { words } from "../../words";
import { sum, type CropBudget, type FarmFigures, type LimeRow, type PotashRow } from "./farm-figures";

const say = words.overview;

/** One thing the plan says: whether it is well, what it is, what it means, and where it stands. */
export interface Finding {
  readonly key: "potash" | "lime" | "price";
  readonly sign: "▲" | "●" | "▼";
  readonly says: readonly string[];
  /** Missing while the finding waits for figures. */
  readonly goTo?: { readonly address: string; readonly sheet: string };
}

/** The three findings that matter, from the figures of the plan. */
export function findingsOf({ potash, lime, budgets }: FarmFigures): readonly Finding[] {
  return [potashFinding(potash), limeFinding(lime), priceFinding(budgets)];
}

function potashFinding(rows: readonly PotashRow[]): Finding {
  const worst = least(rows, ({ perYearLbPerAc }) => perYearLbPerAc);
  if (!worst) return waiting("potash");
  const drawing = rows.filter(({ perYearLbPerAc }) => perYearLbPerAc < -evenWithinLbPerAc);
  if (drawing.length === 0) return found("potash", "▲", worst.at, [say.potash.even(evenWithinLbPerAc)]);
  const pounds = whole(-worst.perYearLbPerAc);
  return found("potash", "▼", worst.at, [
    say.potash.drawn(worst.field, pounds, drawing.length, rows.length),
    ...soybeanSentence(rows),
    say.potash.then,
  ]);
}

function soybeanSentence(rows: readonly PotashRow[]): string[] {
  const before = rows.filter(({ isBeforeSoybean }) => isBeforeSoybean);
  const left = mean(before.flatMap(({ leftLbPerAc }) => leftLbPerAc ?? []));
  const takes = mean(before.flatMap(({ takesLbPerAc }) => takesLbPerAc ?? []));
  return left === undefined || takes === undefined ? [] : [say.potash.soybean(whole(left), whole(takes))];
}

function limeFinding(rows: readonly LimeRow[]): Finding {
  const most = least(rows, ({ rateTonPerAc }) => -rateTonPerAc);
  if (!most) return waiting("lime");
  const short = rows.filter(({ rateTonPerAc }) => rateTonPerAc > 0);
  if (short.length === 0) return found("lime", "▲", most.at, [say.lime.none]);
  const tons = whole(sum(short.map((row) => row.tons)));
  const dollars = whole(sum(short.map((row) => row.costUsd)));
  return found("lime", "▼", most.at, [
    say.lime.short(short.length, rows.length, most.field, tons, dollars),
    say.lime.then,
  ]);
}

function priceFinding(budgets: readonly CropBudget[]): Finding {
  const gap = ({ coversUsdPerBu, priceUsdPerBu }: CropBudget) => coversUsdPerBu - priceUsdPerBu;
  const [nearest, farthest] = [least(budgets, gap), least(budgets, (budget) => -gap(budget))];
  if (!nearest || !farthest) return waiting("price");
  const covering = budgets.filter((budget) => gap(budget) <= 0).length;
  const sentence = (word: typeof say.price.nearest, { crop, coversUsdPerBu, priceUsdPerBu }: CropBudget) =>
    word(capitalized(crop), coversUsdPerBu.toFixed(2), priceUsdPerBu.toFixed(2));
  if (covering === 0)
    return found("price", "▼", nearest.at, [
      say.price.noneCovers,
      sentence(say.price.nearest, nearest),
      say.price.then,
    ]);
  if (covering === budgets.length)
    return found("price", "▲", farthest.at, [
      say.price.allCover,
      sentence(say.price.thinnest, farthest),
      say.price.then,
    ]);
  const some = say.price.someCover(covering, budgets.length);
  return found("price", "●", farthest.at, [some, sentence(say.price.farthest, farthest), say.price.then]);
}

function found(key: Finding["key"], sign: Finding["sign"], address: string, says: readonly string[]): Finding {
  return { key, sign, says, goTo: { address, sheet: parseAddress(address)?.sheet ?? "" } };
}

function waiting(key: Finding["key"]): Finding {
  return { key, sign: "●", says: [say.waiting[key]] };
}

function least<Row>(rows: readonly Row[], of: (row: Row) => number): Row | undefined {
  return rows.reduce<Row | undefined>(
    (best, row) => (best === undefined || of(row) < of(best) ? row : best),
    undefined,
  );
}

function mean(values: readonly number[]): number | undefined {
  return values.length === 0 ? undefined : sum(values) / values.length;
}

export function whole(value: number): string {
  return Math.round(value).toLocaleString("en-US");
}
