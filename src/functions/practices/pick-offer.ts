import { countInWords } from "../../core/count-in-words";
import { refuseArgument, waitFor } from "../../core/fault";
import { foldedName } from "../../core/folded-name";
import type { Interaction, PickPractice, PickRequest, YieldFactor } from "../../core/practices/pick-request";
import { pairGains, type PairGrid } from "./pair-grid";

/** The columns of a sheet, one row a practice; null keeps the place of a blank cell. */
export interface PickRanges {
  readonly costs: readonly (number | null)[];
  readonly gains: readonly (number | null)[];
  readonly price: number;
  readonly budget: number;
  readonly excludes: readonly (string | null)[] | null;
  readonly interaction: Interaction;
  readonly names: readonly (string | null)[] | null;
  readonly requires: readonly (string | null)[] | null;
  readonly mostPractices: number | null;
  readonly currentYield: number | null;
  readonly attainableYield: number | null;
  readonly ceilings: readonly (number | null)[] | null;
  readonly factors: readonly (string | null)[] | null;
  readonly pairGains: PairGrid | null;
}

/** A row of the sheet: its practice, or why it is left out. */
export interface OfferedPractice {
  readonly name: string;
  readonly place: number | null;
}

export interface PickOffer {
  readonly request: PickRequest;
  readonly rows: readonly OfferedPractice[];
}

/** Fits the columns together; says which of them does not fit. */
export function pickOffer(ranges: PickRanges): PickOffer {
  const { costs, gains } = ranges;
  const columns = {
    gains,
    excludes: ranges.excludes,
    names: ranges.names,
    requires: ranges.requires,
    ceilings: ranges.ceilings,
    factors: ranges.factors,
  };
  for (const [argument, column] of Object.entries(columns)) refuseLength(argument, column, costs.length);
  if (costs.every((cost) => cost === null)) waitFor("costs");
  if (gains.every((gain) => gain === null)) waitFor("gains");

  const practices: PickPractice[] = [];
  const rows = costs.map((costUsdPerAc, index): OfferedPractice => {
    const gainBuPerAc = gains[index] ?? null;
    const name = ranges.names?.[index]?.trim() || `Practice ${index + 1}`;
    if (costUsdPerAc === null || gainBuPerAc === null) return { name, place: null };
    practices.push({ name, costUsdPerAc, gainBuPerAc });
    return { name, place: practices.length - 1 };
  });
  const link = (argument: string, column: readonly (string | null)[] | null) => links(argument, column, rows);
  return { request: requestOf(ranges, practices, rows, link), rows };
}

function requestOf(
  ranges: PickRanges,
  practices: readonly PickPractice[],
  rows: readonly OfferedPractice[],
  link: (argument: string, column: readonly (string | null)[] | null) => [number, number][],
): PickRequest {
  const placeOf = (row: number) => rows[row]?.place ?? null;
  const pairs = ranges.pairGains ? pairGains(ranges.pairGains, rows.length) : [];
  if (pairs.length > 0 && ranges.interaction !== "additive") {
    const because = `goes with additive gains only; interaction is ${ranges.interaction}.`;
    refuseArgument("pairGains", because);
  }
  return {
    practices,
    priceUsdPerBu: ranges.price,
    budgetUsdPerAc: ranges.budget,
    excludes: link("excludes", ranges.excludes),
    requires: link("requires", ranges.requires),
    mostPractices: ranges.mostPractices,
    interaction: ranges.interaction,
    currentYieldBuPerAc: ranges.currentYield,
    attainableYieldBuPerAc: ranges.attainableYield,
    factors: ranges.ceilings ? factorsOf(ranges.ceilings, ranges.factors, rows) : null,
    pairGains: pairs.flatMap(({ first, second, extraBuPerAc }) => {
      const [one, other] = [placeOf(first), placeOf(second)];
      return one === null || other === null ? [] : [{ first: one, second: other, extraBuPerAc }];
    }),
  };
}

/** Pairs of places from a column of names or row numbers; a cell may hold several with commas between. */
function links(
  argument: string,
  column: readonly (string | null)[] | null,
  rows: readonly OfferedPractice[],
): [number, number][] {
  return (column ?? []).flatMap((cell, index) => {
    const place = rows[index]?.place ?? null;
    if (cell === null || place === null) return [];
    return namedRows(cell, rows, argument).flatMap((row): [number, number][] => {
      if (row === index) {
        const because = `row ${index + 1} names itself: name the other practice.`;
        refuseArgument(argument, because);
      }
      const other = rows[row]?.place ?? null;
      return other === null ? [] : [[place, other]];
    });
  });
}

function namedRows(cell: string, rows: readonly OfferedPractice[], argument: string): number[] {
  const whole = rowOf(cell, rows);
  if (whole !== null) return [whole];
  return cell
    .split(/[,;\n]/)
    .filter((part) => part.trim() !== "")
    .map((part) => {
      const row = rowOf(part, rows);
      if (row !== null) return row;
      const because = `"${part.trim()}" is no practice of this list: use its name in names, or its row number from 1 to ${rows.length}.`;
      return refuseArgument(argument, because);
    });
}

function rowOf(text: string, rows: readonly OfferedPractice[]): number | null {
  const wanted = foldedName(text);
  const named = rows.findIndex(({ name }) => foldedName(name) === wanted);
  if (named >= 0) return named;
  const number = Number(wanted);
  return wanted !== "" && Number.isInteger(number) && number >= 1 && number <= rows.length ? number - 1 : null;
}

/** Practices on the same factor stack; without names each practice has a factor of its own. */
function factorsOf(
  ceilings: readonly (number | null)[],
  names: readonly (string | null)[] | null,
  rows: readonly OfferedPractice[],
): YieldFactor[] {
  const factors = new Map<string, { name: string; ceilingBuPerAc: number; practices: number[] }>();
  rows.forEach(({ name: practice, place }, row) => {
    const ceilingBuPerAc = ceilings[row] ?? null;
    if (place === null) return;
    const name = names?.[row]?.trim() || practice;
    const known = factors.get(foldedName(name));
    if (ceilingBuPerAc === null && !known) {
      waitFor("ceilings", `yield that ${name} allows today`);
    }
    if (known && ceilingBuPerAc !== null && known.ceilingBuPerAc !== ceilingBuPerAc) {
      const because = `${name} has ceilings of ${known.ceilingBuPerAc} and ${ceilingBuPerAc}: give one for each factor.`;
      refuseArgument("ceilings", because);
    }
    if (known) known.practices.push(place);
    else factors.set(foldedName(name), { name, ceilingBuPerAc: ceilingBuPerAc ?? 0, practices: [place] });
  });
  return [...factors.values()];
}

function refuseLength(argument: string, column: readonly unknown[] | null, rows: number): void {
  if (column === null || column.length === rows) return;
  const because = `it has ${countInWords(column.length, "cell")} for ${rows} in costs: give one for each practice, blank where there is none.`;
  refuseArgument(argument, because);
}
