import { refuse, refuseArgument, waitFor } from "../fault";
import { within } from "../limit";
import {
  conversionFormulas,
  testBases,
  testConversions,
  testedElements,
  type ConversionFormulaKey,
  type ConversionRow,
  type TestBasisKey,
  type TestedElementKey,
} from "../../reference/guides";

export interface TestConvertInput {
  readonly value: number;
  readonly from: TestBasisKey;
  readonly to: TestBasisKey;
  /** null: not said; waited for where the pair differs by element. */
  readonly element: TestedElementKey | null;
  /** null: the usual slice; waited for where the equation has a depth in it. */
  readonly depthIn: number | null;
  /** null: the usual one of several. */
  readonly formula: ConversionFormulaKey | null;
}

export interface ConvertedTest {
  readonly value: number;
  readonly row: ConversionRow;
  /** The value lies outside what the equation was printed for. */
  readonly isOutside: boolean;
  /** What the other published formulas of the pair give. */
  readonly others: readonly { readonly row: ConversionRow; readonly value: number }[];
}

/** Mehlich-3 P at and below which the published ways to Bray disagree too much to pick one. */
const disagreementPpm = 20;

/**
 * A soil test on another extraction or basis, by a published equation and no other.
 *
 * @source osu-anr75-2019, osu-agbmp-p, unl-postponing-2016
 */
export function testConvert(input: TestConvertInput): ConvertedTest {
  const { value, depthIn } = input;
  const rows = rowsFor(input);
  const row = input.formula === null ? usualRow(rows, input) : namedRow(rows, input, input.formula);
  if (row.depth === 1 && depthIn === null) waitFor("depth");
  if (row.valid && row.formula === undefined) {
    within("value", value, { min: row.valid[0], max: row.valid[1], unit: testBases[row.from].unit, slip: 10 });
  }
  return {
    value: converted(row, value, depthIn),
    row,
    isOutside: row.valid !== undefined && !(value >= row.valid[0] && value <= row.valid[1]),
    others: rows
      .filter((other) => other !== row && other.formula !== undefined)
      .map((other) => ({ row: other, value: converted(other, value, depthIn) })),
  };
}

function converted({ times, plus = 0, depth }: ConversionRow, value: number, depthIn: number | null): number {
  const perDepth = depth === undefined || depthIn === null ? 1 : depthIn ** depth;
  return Math.max(0, times * perDepth * value + plus);
}

/** ICP is how most laboratories read Mehlich-3 today, and what the formulas from it were printed for. */
function plain(basis: TestBasisKey): TestBasisKey {
  return basis === "mehlich3Icp" ? "mehlich3" : basis;
}

function rowsFor({ from, to, element, depthIn }: TestConvertInput): readonly ConversionRow[] {
  const pair = testConversions.rows.filter((row) => row.from === plain(from) && row.to === plain(to));
  if (pair.length === 0) refusePair(from, to);
  const elements = [...new Set(pair.flatMap((row) => row.element ?? []))];
  const labels = elements.map((key) => testedElements[key].label).join(", ");
  if (elements.length > 1 && element === null) waitFor("nutrient", labels);
  if (elements.length > 0 && element !== null && !elements.includes(element)) {
    const because = `that conversion is printed for ${labels}; got ${testedElements[element].label}.`;
    refuseArgument("nutrient", because);
  }
  const ofElement = pair.filter((row) => element === null || row.element === undefined || row.element === element);
  const ofDepth = ofElement.filter((row) => (row.depth === undefined) === (depthIn === null));
  return ofDepth.length > 0 ? ofDepth : ofElement;
}

function usualRow(rows: readonly ConversionRow[], { value, from, to, depthIn }: TestConvertInput): ConversionRow {
  const [first] = rows;
  if (first === undefined) return refusePair(from, to);
  if (first.to === "bray" && value <= disagreementPpm) {
    const each = rows.map((row) => `${formulaLabel(row)} gives ${tidy(converted(row, value, depthIn))}`);
    waitFor("formula", `published formulas disagree at ${disagreementPpm} ppm or less (${each.join("; ")}); name one`);
  }
  return first;
}

function namedRow(
  rows: readonly ConversionRow[],
  { from, to }: TestConvertInput,
  formula: ConversionFormulaKey,
): ConversionRow {
  const named = rows.filter((row) => row.formula !== undefined);
  const found = named.find((row) => row.formula === formula);
  if (found) return found;
  const pair = `${testBases[from].label} to ${testBases[to].label}`;
  const known = named.length > 0 ? named.map(formulaLabel).join(", ") : "leave it out, there is one formula";
  return refuseArgument("formula", `for ${pair}: ${known}.`);
}

function formulaLabel({ formula }: ConversionRow): string {
  return formula === undefined ? "" : conversionFormulas[formula].label;
}

function refusePair(from: TestBasisKey, to: TestBasisKey): never {
  const { rows } = testConversions;
  const into = labelsOf(rows.filter((row) => row.to === plain(to)).map((row) => row.from));
  const outOf = labelsOf(rows.filter((row) => row.from === plain(from)).map((row) => row.to));
  const instead =
    `Into ${testBases[to].label}: ${into === "" ? "none" : `from ${into}`}. ` +
    `Out of ${testBases[from].label}: ${outOf === "" ? "none" : `to ${outOf}`}.`;
  refuse({
    kind: "notPublished",
    where: "what we hold",
    what: `equation from ${testBases[from].label} to ${testBases[to].label}`,
    instead,
  });
}

function labelsOf(keys: readonly TestBasisKey[]): string {
  return [...new Set(keys)].map((key) => testBases[key].label).join(", ");
}

function tidy(value: number): number {
  return Number(value.toPrecision(3));
}
