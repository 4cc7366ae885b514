import { refuse, waitFor } from "../fault";
import { within } from "../limit";
import { crops, type CropKey } from "../../reference/crops";
import { delayRegions, plantingDelays, type DelayRegionKey, type DelayRow } from "../../reference/seed/planting-delay";
import { alongStretches } from "./along-stretches";
import { dayInWords, seasonDay, seasonDayOf } from "./season-day";
import { seedLimits } from "./seed-limits";

export interface PlantingDelayInput {
  readonly crop: CropKey;
  /** Spreadsheet date. */
  readonly plantedOn: number;
  readonly region: DelayRegionKey;
  /** Wanted where the source prints percent. */
  readonly fullYieldBu: number | null;
}

export interface PlantingDelay {
  readonly buPerAcPerDay: number;
  /** null: no full yield was given. */
  readonly pctPerDay: number | null;
  readonly cited: readonly DelayRow[];
}

/**
 * Corn or soybean lost for one more day of planting delay on a date. Inside a printed span its figure; between two
 * printed days of a Wisconsin site a straight line; outside what is printed nothing.
 */
export function plantingDelay({ crop, plantedOn, region, fullYieldBu }: PlantingDelayInput): PlantingDelay {
  if (fullYieldBu !== null) within("yield", fullYieldBu, seedLimits.fullYield);
  const rows = rowsFor(crop, region);
  const day = seasonDayOf(plantedOn);
  const { loss, cited } = lossOn(rows, day);
  const inPercent = cited.some(({ per }) => per === "percent");
  if (inPercent && fullYieldBu === null) waitFor("yield");
  const full = fullYieldBu ?? Number.NaN;
  const buPerAcPerDay = inPercent ? (full * loss) / 100 : loss;
  return { buPerAcPerDay, pctPerDay: fullYieldBu === null ? null : (100 * buPerAcPerDay) / full, cited };
}

function rowsFor(crop: CropKey, region: DelayRegionKey): readonly DelayRow[] {
  const ofCrop = plantingDelays.rows.filter((row) => row.crop === crop);
  const rows = ofCrop.filter((row) => row.region === region);
  if (rows.length > 0) return rows;
  const known = [...new Set(ofCrop.map((row) => delayRegions[row.region].label))];
  refuse({
    kind: "notPublished",
    what: `loss by delay for ${crops[crop].label}`,
    where: delayRegions[region].label,
    instead: known.length > 0 ? `Use: ${known.join(", ")}.` : "Corn and soybean have figures.",
  });
}

function lossOn(rows: readonly DelayRow[], day: number): { loss: number; cited: readonly DelayRow[] } {
  const spans = rows.map((row) => ({ row, from: seasonDay(...row.from), to: seasonDay(...row.to) }));
  const inside = spans.find(({ from, to }) => from <= day && day <= to);
  if (inside) return { loss: inside.row.loss, cited: [inside.row] };
  // Spans lie side by side and single days apart, so only single days have days between them.
  const stretches = spans.map(({ row, from, to }) => ({ from, to, start: row.loss, end: row.loss }));
  const between = alongStretches(stretches, day);
  if (between !== undefined) return { loss: between, cited: rows };
  refuse({
    kind: "notPublished",
    what: `loss by delay for plantingDate ${dayInWords(day)}`,
    where: `"${plantingDelays.title}"`,
    instead: `It runs from ${dayInWords(spans[0]?.from ?? day)} to ${dayInWords(spans[spans.length - 1]?.to ?? day)}.`,
  });
}
