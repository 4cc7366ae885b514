import type { HostRange, WorkbookHost } from "../../../hosts/port";
import { parseAddress } from "../../../hosts/address";
import { unlessRefused } from "../unless-refused";
import { quantities, quantityFacts, type Quantity } from "./quantities";
import type { Bound } from "./state";

/** Words in front of the names that starters give to what can be tried. */
const owners = ["quick", "whatif"] as const;

/** A group of names that belong together, such as quick_yield_2, quick_price_2. */
export interface Place {
  /** "quick" or, for the second of its kind, "quick_2". */
  readonly key: string;
  readonly nameOf: (what: string) => string;
}

/** The groups of names in a workbook that hold at least a yield. */
export function placesIn(names: readonly string[]): Place[] {
  return names.flatMap((name) => {
    const [, owner, round = ""] = /^([a-z]+)_yield(_\d+)?$/i.exec(name) ?? [];
    if (!owners.some((known) => known === owner?.toLowerCase())) return [];
    return [{ key: `${owner}${round}`, nameOf: (what: string) => `${owner}_${what}${round}` }];
  });
}

interface PlaceReading {
  readonly bound: Readonly<Partial<Record<Quantity, Bound>>>;
  readonly crop: string;
}

/** Reads the cells of a place, all at the same time. */
export async function readPlace(host: WorkbookHost, place: Place, names: readonly string[]): Promise<PlaceReading> {
  const known = new Set(names.map((name) => name.toLowerCase()));
  const cellOf = async (what: string): Promise<HostRange | undefined> =>
    known.has(place.nameOf(what).toLowerCase()) ? readQuietly(host, place.nameOf(what)) : undefined;
  const [crop, ...read] = await Promise.all([
    cellOf("crop"),
    ...quantities.map(async (quantity) => {
      const { named } = quantityFacts[quantity];
      return [quantity, await cellOf(named), await cellOf(`${named}_try`)] as const;
    }),
  ]);
  const bound = read.flatMap(([quantity, cell, entry]) => (cell ? [[quantity, boundTo(cell, entry)] as const] : []));
  return { bound: Object.fromEntries(bound), crop: String(crop?.values[0]?.[0] ?? "") };
}

/** A name whose cells are gone binds nothing. */
export function readQuietly(host: WorkbookHost, reference: string): Promise<HostRange | undefined> {
  return unlessRefused(
    () => host.read(reference),
    () => undefined,
  );
}

/** @param entry a cell beside it that takes a number of one's own in place of the sheet's */
export function boundTo(cell: HostRange, entry?: HostRange): Bound {
  const own = entry ?? (isFormula(cell) ? undefined : cell);
  return {
    address: cell.address,
    value: numberAt(cell),
    ...(own && { entry: { address: own.address, value: numberAt(own) } }),
  };
}

/** The sheet of an address, without quotes. */
export function sheetOf(address: string): string {
  return parseAddress(address)?.sheet ?? "";
}

function isFormula({ formulas }: HostRange): boolean {
  const [first] = formulas[0] ?? [];
  return typeof first === "string" && first.startsWith("=");
}

function numberAt({ values }: HostRange): number | null {
  const value = values[0]?.[0];
  return typeof value === "number" ? value : null;
}
