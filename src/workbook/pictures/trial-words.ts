import { trialLimits } from "../../core/trials/trial-limits";
import type { TrialDesign } from "../../core/trials/trial-layout";
import { place } from "../formula/reference";
import type { Entry, PlacedCell } from "../model/block";
import { formats } from "../model/cell";
import { within } from "../model/columns";
import { typedEntry } from "../model/entries";

export const stripsLive =
  "The yields are its own, as written down in the pane, at market moisture: change one here and the result and the chart follow, not the pane.";

export const blockWords: Readonly<Record<TrialDesign, string>> = {
  blocks: "Block",
  pairs: "Pair",
  splitPlanter: "Pass",
};

export function trialTitle(name: string): string {
  return name === "" ? "Strip differences" : `Strip differences: ${name}`;
}

/** Key of the block of what is typed besides the strips. */
export const factsKey = "facts";
export const fact = (key: "confidence" | "price" | "cost") => place(`${factsKey}.${key}`);

export function confidenceLine(pct: number): Entry {
  const says = "90 is usual for strips on a farm: the range is wrong once in ten.";
  return typedEntry(
    { key: "confidence", label: "Confidence of the range", unit: "%", format: formats.whole, says },
    pct,
    within({ ...trialLimits.confidence, unit: "%" }, "Confidence of the range"),
  );
}

export function priceLine(usdPerBu: number): Entry {
  return typedEntry(
    {
      key: "price",
      label: "A bushel leaves",
      unit: "$/bu",
      format: formats.cents,
      says: "Price less hauling and drying.",
    },
    usdPerBu,
    within(trialLimits.price, "Price of a bushel"),
  );
}

/** A strip's yield; blank where it was lost. */
export function yieldCell(key: string, value: number | null): PlacedCell {
  return {
    key,
    ...(value !== null && { content: value }),
    style: "input",
    format: formats.one,
    allow: within(trialLimits.yield, "Yield of the strip"),
  };
}
