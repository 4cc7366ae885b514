import type { LeastCostMix, MixMaterialLine, MixNutrientLine } from "../../core/materials/least-cost-mix";
import type { Hold, NextPound } from "../../core/materials/mix-holds";
import { nutrients } from "../../reference/nutrients";
import type { Matrix } from "../frame";
import type { OfferedRow } from "./mix-offer";

type Row = readonly (string | number)[];

const header: Row = ["Item", "lb/ac", "$/ac", "What holds it"];

/** The mix as it spills: a row per material of the sheet, the total, then what each nutrient gets. */
export function mixTable(mix: LeastCostMix, rows: readonly OfferedRow[]): Matrix<string | number> {
  return [
    header,
    ...rows.map((row) => materialRow(row, row.place === null ? undefined : mix.materials[row.place])),
    ["All materials", mix.totalLbPerAc, mix.costUsdPerAc, mix.atTotalLimit ? holdWords(mix.atTotalLimit) : ""],
    ...mix.nutrients.filter(isWorthARow).map(nutrientRow),
    ...(mix.salt ? [saltRow(mix.salt)] : []),
  ];
}

/** Everything that holds the mix where it is, as a name and a sentence. */
export function bindingWords(mix: LeastCostMix): readonly (readonly [string, string])[] {
  return [
    ...mix.nutrients.flatMap((line) =>
      isAtNeed(line) || line.atCap ? [[supplied(line), nutrientNote(line)] as const] : [],
    ),
    ...mix.materials.flatMap((line) => (line.atLeast || line.atMost ? [[line.name, materialNote(line)] as const] : [])),
    ...(mix.atTotalLimit ? [["All materials", holdWords(mix.atTotalLimit)] as const] : []),
    ...(mix.salt?.atLimit ? [["N + K2O with the seed", holdWords(mix.salt.atLimit)] as const] : []),
  ];
}

function materialRow({ name, leftOut }: OfferedRow, line: MixMaterialLine | undefined): Row {
  if (!line) return [name, 0, 0, leftOut ?? ""];
  return [name, line.rateLbPerAc, line.costUsdPerAc, materialNote(line)];
}

function materialNote({ rateLbPerAc, atLeast, atMost }: MixMaterialLine): string {
  if (atLeast && atMost) return `fixed at ${pounds(atMost.limitLbPerAc)} lb/ac`;
  if (atLeast) return `at its least of ${pounds(atLeast.limitLbPerAc)} lb/ac${saving(atLeast, "1 lb less")}`;
  if (atMost) return `at its most of ${pounds(atMost.limitLbPerAc)} lb/ac${saving(atMost, "1 lb more room")}`;
  return rateLbPerAc === 0 ? "not used" : "";
}

function nutrientRow(line: MixNutrientLine): Row {
  return [supplied(line), line.suppliedLbPerAc, "", nutrientNote(line)];
}

function nutrientNote(line: MixNutrientLine): string {
  const { needLbPerAc, overLbPerAc, atCap, nutrient, nextPoundUsd } = line;
  if (needLbPerAc === 0 && !atCap) return "none needed";
  const room = atCap ? saving(atCap, "1 lb more room") : "";
  if (!isAtNeed(line))
    return `${pounds(overLbPerAc)} over the need of ${pounds(needLbPerAc)}${atCap ? ", the most allowed" : ""}${room}`;
  return `just the need of ${pounds(needLbPerAc)}; one more lb of ${nutrients[nutrient].label} ${priced(nextPoundUsd)}${room}`;
}

function saltRow({ saltLbPerAc, limitLbPerAc, atLimit }: NonNullable<LeastCostMix["salt"]>): Row {
  const note = atLimit ? holdWords(atLimit) : `under the limit of ${pounds(limitLbPerAc)} lb/ac`;
  return ["N + K2O with the seed", saltLbPerAc, "", note];
}

function supplied({ nutrient }: MixNutrientLine): string {
  return `${nutrients[nutrient].label} supplied`;
}

function isWorthARow({ needLbPerAc, suppliedLbPerAc, atCap }: MixNutrientLine): boolean {
  return needLbPerAc > 0 || suppliedLbPerAc > 0 || atCap !== null;
}

function isAtNeed({ needLbPerAc, overLbPerAc }: MixNutrientLine): boolean {
  return needLbPerAc > 0 && overLbPerAc <= 1e-6 * Math.max(1, needLbPerAc);
}

function holdWords(hold: Hold): string {
  return `at the limit of ${pounds(hold.limitLbPerAc)} lb/ac${saving(hold, "1 lb more room")}`;
}

function saving({ savesUsdPerLb }: Hold, change: string): string {
  return savesUsdPerLb > 0 ? `; ${change} saves ${dollars(savesUsdPerLb)}` : "";
}

function priced(nextPoundUsd: NextPound): string {
  if (nextPoundUsd === null) return "cannot be had";
  if (nextPoundUsd === 0) return "costs nothing";
  return nextPoundUsd > 0 ? `costs ${dollars(nextPoundUsd)}` : `saves ${dollars(-nextPoundUsd)}`;
}

/** Cents, and two more figures where a pound is worth less than a dime. */
function dollars(usd: number): string {
  return `$${usd.toFixed(usd < 0.1 ? 4 : 2)}`;
}

function pounds(lbPerAc: number): string {
  return lbPerAc.toLocaleString("en-US", { maximumFractionDigits: 2 });
}
