import { namedCompounds, simpleUnits, volumeBushel, type SimpleUnit } from "./unit-table";

/** A unit as the conversion needs it. */
export interface Unit {
  readonly label: string;
  /** What it measures, in words: "weight per area". */
  readonly quantity: string;
  /** In base units; a trade bushel counts as one of its own. */
  readonly size: number;
  readonly zero: number;
  /** Power of the trade bushel in it: bu/ac 1, $/bu -1. */
  readonly bushels: -1 | 0 | 1;
}

/** Compounds that are known under a simpler name. */
const plainName: Readonly<Record<string, string>> = {
  "weight per weight": "share",
  "energy per time": "power",
};

/** Spellings whose capitals matter: Mg is a megagram; T may be either ton and ML a million liters, so they are refused. */
const exactSpelling = new Map([
  ["Mg", "t"],
  ["T", "?"],
  ["ML", "?"],
]);

const simpleByText = indexOf(simpleUnits);
const namedByText = indexOf<Entry>(namedCompounds);
const seen = new Map<string, Unit | undefined>();

/**
 * The unit behind a text: forgiving about case, plurals, dots, "per" and powers ("lbs. per acre", "kg ha-1").
 *
 * @returns nothing when the text is no unit known here
 */
export function readUnit(text: string): Unit | undefined {
  if (seen.has(text)) return seen.get(text);
  const unit = parse(text);
  if (seen.size < 1000) seen.set(text, unit);
  return unit;
}

function parse(text: string): Unit | undefined {
  const asTyped = find(simpleByText, text) ?? find(namedByText, text);
  if (asTyped && !exactSpelling.has(text.trim())) return asUnit(asTyped);
  const spelled = text
    .normalize("NFKD")
    .replace(/\s+per\s+|\s*[÷∕⁄]\s*/gi, "/")
    .replace(/[\s·*]+([a-z]+)\s*\^?[-−]1$/i, "/$1")
    .trim();
  const whole = simpleFor(spelled) ?? find(namedByText, spelled);
  if (whole) return asUnit(whole);
  const [over, under, ...more] = spelled.split("/").map((part) => part.trim());
  if (over === undefined || under === undefined || more.length > 0) return undefined;
  const [top, bottom] = [simpleFor(over), simpleFor(under)];
  if (!top || !bottom || top.zero !== undefined || bottom.zero !== undefined) return undefined;
  const named = find(namedByText, `${top.label}/${bottom.label}`);
  return named ? asUnit(named) : compound(top, bottom);
}

function compound(top: SimpleUnit, bottom: SimpleUnit): Unit {
  // A weight per bushel is a test weight: there the bushel is the volume.
  const under = top.quantity === "weight" && !top.isBushel && bottom.isBushel ? volumeBushel : bottom;
  const quantity = `${top.quantity} per ${under.quantity}`;
  return {
    label: `${top.label}/${bottom.label}`,
    quantity: plainName[quantity] ?? quantity,
    size: top.size / under.size,
    zero: 0,
    bushels: top.isBushel === under.isBushel ? 0 : top.isBushel ? 1 : -1,
  };
}

function asUnit({ label, quantity, size, zero = 0, isBushel }: Entry): Unit {
  return { label, quantity, size, zero, bushels: isBushel ? 1 : 0 };
}

interface Entry {
  readonly label: string;
  readonly also: readonly string[];
  readonly quantity: string;
  readonly size: number;
  readonly zero?: number;
  readonly isBushel?: true;
}

function simpleFor(text: string): SimpleUnit | undefined {
  const part = text.replace(/\.$/, "");
  return find(simpleByText, exactSpelling.get(part) ?? part);
}

function find<Known>(index: ReadonlyMap<string, Known>, text: string): Known | undefined {
  const folded = fold(text);
  return index.get(folded) ?? index.get(folded.replace(/s$/, ""));
}

function indexOf<Known extends Entry>(entries: readonly Known[]): Map<string, Known> {
  const index = new Map<string, Known>();
  for (const entry of entries) {
    for (const spelling of [entry.label, ...entry.also]) index.set(fold(spelling), entry);
  }
  return index;
}

/** Lower case without spaces, dots, carets and hyphens; "us gal" is "gal". */
function fold(text: string): string {
  return text
    .normalize("NFKD")
    .toLowerCase()
    .replace(/^u\.?s\.?\s+/, "")
    .replace(/μ/g, "u")
    .replace(/[\s.^_-]+/g, "");
}
