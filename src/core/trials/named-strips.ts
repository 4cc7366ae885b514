import { refuseArgument, waitFor } from "../fault";
import { sameLength } from "../same-length";
import type { Strip } from "./block-fit";

export interface StripLists {
  readonly treatments: readonly (string | null)[];
  readonly blocks: readonly (string | null)[];
  /** null where a strip was lost. */
  readonly yields: readonly (number | null)[];
}

/** The words the sheet uses for the three lists, for messages. */
export interface ListNames {
  readonly treatments: string;
  readonly blocks: string;
}

export interface NamedStrips {
  readonly strips: readonly Strip[];
  /** Names in the order first listed. */
  readonly treatments: readonly string[];
  readonly blocks: readonly string[];
  /** Treatment and block of every strip without a yield. */
  readonly missing: readonly { readonly treatment: string; readonly block: string }[];
}

const mostTreatments = 100;
const mostBlocks = 300;

/** Three lists side by side, one row a strip, turned into numbered strips. Rows blank in all three are passed over. */
export function namedStrips({ treatments, blocks, yields }: StripLists, names: ListNames): NamedStrips {
  sameLength(names.treatments, treatments, names.blocks, blocks);
  sameLength(names.treatments, treatments, "yields", yields);
  const rows = treatments.flatMap((treatment, index) => rowOf(treatment, blocks[index], yields[index], names));
  if (rows.length === 0) waitFor(names.treatments);
  const found = rows.filter((row) => row.yieldBuPerAc !== null);
  if (found.length === 0) waitFor("yields");
  const treatmentNames = firstListed(found.map(({ treatment }) => treatment));
  const blockNames = firstListed(found.map(({ block }) => block));
  checkSizes(treatmentNames, blockNames, names);
  const numberOf = (list: readonly string[]) => new Map(list.map((name, index) => [name, index]));
  const [treatmentNumber, blockNumber] = [numberOf(treatmentNames), numberOf(blockNames)];
  refuseRepeats(found, names);
  return {
    treatments: treatmentNames,
    blocks: blockNames,
    strips: found.map(({ treatment, block, yieldBuPerAc }) => ({
      treatment: treatmentNumber.get(treatment) ?? 0,
      block: blockNumber.get(block) ?? 0,
      yieldBuPerAc: yieldBuPerAc ?? 0,
    })),
    missing: missingOf(found, treatmentNames, blockNames),
  };
}

interface Row {
  readonly treatment: string;
  readonly block: string;
  readonly yieldBuPerAc: number | null;
}

function rowOf(
  treatment: string | null | undefined,
  block: string | null | undefined,
  yieldBuPerAc: number | null | undefined,
  names: ListNames,
): Row[] {
  const value = yieldBuPerAc ?? null;
  if (treatment && block) return [{ treatment, block, yieldBuPerAc: value }];
  if (value === null) return [];
  waitFor(treatment ? names.blocks : names.treatments);
}

function missingOf(found: readonly Row[], treatments: readonly string[], blocks: readonly string[]) {
  const have = new Set(found.map(keyOf));
  return treatments.flatMap((treatment) =>
    blocks.map((block) => ({ treatment, block })).filter((pair) => !have.has(keyOf(pair))),
  );
}

function keyOf({ treatment, block }: { treatment: string; block: string }): string {
  return JSON.stringify([treatment, block]);
}

function refuseRepeats(rows: readonly Row[], names: ListNames): void {
  const seen = new Set<string>();
  for (const row of rows) {
    const key = keyOf(row);
    if (seen.has(key)) {
      refuseArgument(
        names.treatments,
        `"${row.treatment}" stands twice in "${row.block}": check the names, or average the two yields first.`,
      );
    }
    seen.add(key);
  }
}

function checkSizes(treatments: readonly string[], blocks: readonly string[], names: ListNames): void {
  const atLeastTwo = (argument: string, list: readonly string[], what: string) => {
    if (list.length < 2) refuseArgument(argument, what);
  };
  atLeastTwo(names.treatments, treatments, `only "${treatments[0]}" has yields; a comparison needs two.`);
  atLeastTwo(
    names.blocks,
    blocks,
    `only "${blocks[0]}" has yields; without a second one nothing tells ground from treatment.`,
  );
  atMost(names.treatments, treatments.length, mostTreatments);
  atMost(names.blocks, blocks.length, mostBlocks);
}

function atMost(argument: string, count: number, most: number): void {
  if (count > most) refuseArgument(argument, `at most ${most} different names; got ${count}.`);
}

function firstListed(names: readonly string[]): string[] {
  return [...new Set(names)];
}
