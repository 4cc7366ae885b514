import { refuse, waitFor } from "../fault";
import type { DateStandTable, StandRow } from "../../reference/seed/corn-stand-tables";
import type { PopulationCurveKey } from "../../reference/seed/population-curves";
import type { StandGuide } from "../../reference/seed/stand-guides";
import type { DateStep } from "../../reference/seed/stand-steps";
import type { Cited } from "../../reference/table";
import { alongStretches, type Stretch } from "./along-stretches";
import { curveYieldPct, populationCurve } from "./population-curve";
import { dayInWords, seasonDay, seasonDayOf } from "./season-day";

export interface AskedStand {
  readonly plantedOn: number | null;
  /** In the guide's own count. */
  readonly stand: number;
  /** The guide, for messages. */
  readonly where: string;
  readonly names: { readonly date: string; readonly stand: string };
}

/** Share of full yield with the rows it rests on. */
export interface Share {
  readonly pct: number;
  readonly cited: readonly Cited[];
}

/** By a printed table of dates and stands. */
export function tableShare(table: DateStandTable, asked: AskedStand): Share {
  const columns = table.columns.map(({ from, to }) => ({ from: seasonDay(...from), to: seasonDay(...to) }));
  const day = dayWithin(asked, columns);
  const stretches = table.rows.map(({ standFrom, standTo, yieldPct }) => {
    const atDay = alongStretches(
      columns.map((column, index) => ({ ...column, ...level(yieldPct[index] ?? Number.NaN) })),
      day,
    );
    return { from: standFrom, to: standTo, ...level(atDay ?? Number.NaN) };
  });
  const note = table.note === undefined ? {} : { note: table.note };
  const cited = rowsAround(table.rows, asked.stand).map((row) => ({ ...row, ...note }));
  return { pct: byStand(stretches, asked), cited };
}

/** By a curve of stands, and a line of dates. */
export function curveShare(key: PopulationCurveKey, dates: readonly DateStep[], asked: AskedStand): Share {
  const curve = populationCurve(key);
  if (asked.stand < curve.fewest * 1000) refuseThin(asked, curve.fewest * 1000);
  const date = dateShare(dates, asked);
  const thousandPlants = Math.min(asked.stand / 1000, curve.most);
  return { pct: (curveYieldPct(curve, thousandPlants) * date.pct) / 100, cited: [curve, ...date.cited] };
}

/** By printed classes of stand, and a line of dates where the guide has one. */
export function stepShare(guide: Extract<StandGuide, { form: "steps" }>, asked: AskedStand): Share {
  const stretches = guide.steps.map(({ from, to, pctFrom, pctTo }) => ({ from, to, start: pctFrom, end: pctTo }));
  const date = guide.dates === null ? { pct: 100, cited: [] } : dateShare(guide.dates, asked);
  const pct = byStand(stretches, asked, guide.counted);
  const near = guide.steps.filter(({ from, to }) => from <= asked.stand && asked.stand <= to);
  return { pct: (pct * date.pct) / 100, cited: [...(near.length > 0 ? near : guide.steps), ...date.cited] };
}

function dateShare(dates: readonly DateStep[], asked: AskedStand): Share {
  const days = dates.map(({ date, pct }) => ({ from: seasonDay(...date), to: seasonDay(...date), ...level(pct) }));
  const day = dayWithin(asked, days);
  return { pct: alongStretches(days, day) ?? Number.NaN, cited: dates.slice(0, 1) };
}

/** The planting day; the first day of the table when planted before it. */
function dayWithin({ plantedOn, where, names }: AskedStand, columns: readonly { from: number; to: number }[]) {
  if (plantedOn === null) waitFor(names.date);
  const day = seasonDayOf(plantedOn);
  const first = columns[0]?.from ?? Number.NaN;
  const last = columns[columns.length - 1]?.to ?? Number.NaN;
  if (day <= last) return Math.max(day, first);
  refuse({
    kind: "notPublished",
    what: `yield for ${names.date} ${dayInWords(day)}`,
    where,
    instead: `Its last day is ${dayInWords(last)}.`,
  });
}

function byStand(stretches: readonly Stretch[], asked: AskedStand, counted = "an acre"): number {
  const thinnest = stretches[0]?.from ?? Number.NaN;
  const thickest = stretches[stretches.length - 1];
  if (asked.stand < thinnest) refuseThin(asked, thinnest, counted);
  return alongStretches(stretches, asked.stand) ?? thickest?.end ?? Number.NaN;
}

function refuseThin({ stand, where, names }: AskedStand, thinnest: number, counted = "an acre"): never {
  const plants = (count: number) => count.toLocaleString("en-US", { maximumFractionDigits: 1 });
  refuse({
    kind: "notPublished",
    what: `yield for a ${names.stand} of ${plants(stand)} plants ${counted}`,
    where,
    instead: `Its thinnest is ${plants(thinnest)}.`,
  });
}

/** The row the stand falls in, or the two it lies between. */
function rowsAround(rows: readonly StandRow[], stand: number): readonly StandRow[] {
  const below = [...rows].reverse().find(({ standFrom }) => standFrom <= stand);
  const above = rows.find(({ standTo }) => standTo >= stand);
  return [...new Set([below, above])].filter((row) => row !== undefined);
}

function level(value: number): Pick<Stretch, "start" | "end"> {
  return { start: value, end: value };
}
