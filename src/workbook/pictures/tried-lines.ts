import { moneyLimits } from "../../core/money/money-limits";
import type { Limit } from "../../core/limit";
import { orBlank } from "../formula/natives";
import { place } from "../formula/reference";
import type { Entry } from "../model/block";
import { formats } from "../model/cell";
import { within } from "../model/columns";
import { computedEntry, typedEntry } from "../model/entries";
import { triedFigures, type TriedAcre, type TriedFigure } from "./picture";
import { outside } from "./picture-sheet";

interface Facts {
  readonly label: string;
  readonly limit: Limit;
  readonly format: string;
}

export const figureFacts: Readonly<Record<TriedFigure, Facts>> = {
  yield: { label: "Yield", limit: moneyLimits.yield, format: formats.one },
  price: { label: "Price", limit: moneyLimits.price, format: formats.cents },
  cost: { label: "Costs before hauling", limit: moneyLimits.costPerAc, format: formats.cents },
  perBushel: { label: "Hauling and drying", limit: moneyLimits.costPerBushel, format: formats.cents },
  other: { label: "Other income", limit: moneyLimits.otherIncome, format: formats.cents },
};

/** Key of the block that holds these lines. */
export const triedKey = "tried";

export function tried(figure: string) {
  return place(`${triedKey}.${figure}`);
}

/** The acre as an argument list of PROFITGRID. */
export const triedAcre = {
  yields: tried("yield"),
  prices: tried("price"),
  cost: tried("cost"),
  otherIncome: tried("other"),
  costPerBushel: tried("perBushel"),
} as const;

/** The figures of the acre: tied to the person's cells, or typed. */
export function triedLines(acre: TriedAcre): Entry[] {
  return triedFigures.map((figure) => {
    const { label, limit, format } = figureFacts[figure];
    const line = { key: figure, label, unit: limit.unit, format };
    const from = acre[figure];
    return "follows" in from
      ? computedEntry({ ...line, says: "Live: follows your workbook." }, orBlank(outside(from.follows)))
      : typedEntry({ ...line, says: "A number of its own: write over it." }, from.value, within(limit, label));
  });
}

export function liveWords(acre: TriedAcre): string {
  const following = triedFigures.filter((figure) => "follows" in acre[figure]).length;
  if (following === triedFigures.length) return "Live: every figure of the acre follows your workbook.";
  if (following === 0)
    return "Its figures are its own, as tried that day: write over them and everything below follows.";
  return "Figures marked live follow your workbook; the others are as tried that day and can be written over.";
}

export function titleWith(title: string, crop: string): string {
  return crop === "" ? title : `${title}: ${crop}`;
}
