import type { HostRange, HostValue } from "../../../hosts/port";
import { asTyped, namesCalled } from "../../../workbook/findings/reading/names-called";
import { isErrorCode } from "../../../workbook/findings/reading/sheet-cells";
import { words } from "../../words";
import { argumentValue } from "../formula/argument-value";
import { unlessRefused } from "../unless-refused";
import { reportCall, type CallReport } from "./call-report";
import { isBareCall, ownCalls, parseFormula } from "../formula/parse-formula";
import type { Offset } from "../formula/rectangle";
import { askingOnce, type Reader, type ReadingHost } from "../formula/references";
import { spillParent } from "./spill-parent";
import { unusedParts } from "./unused-branch";

const say = words.working;

/** What the selected cell shows and how it came about. */
export interface CellReport {
  readonly address: string;
  readonly shows: HostValue;
  readonly isAnError: boolean;
  /** The formula behind it; with its own address where the cell belongs to an answer that fills several. */
  readonly formula?: string | undefined;
  readonly formulaAt?: string | undefined;
  /** The sentence behind an error, where the host knows it. */
  readonly message?: string | undefined;
  readonly calls: readonly CallReport[];
  /** Names of functions that the formula calls only in another case than this one. */
  readonly leftAside?: readonly string[];
  /** Said in place of the working when the cell holds none of our calls. */
  readonly because?: string;
}

/** A longer formula is looked at in its cell. */
const mostLetters = 300;

/** Whether the formula is short enough to help. */
export function isReadable(report: CellReport): report is CellReport & { readonly formula: string } {
  return report.formula !== undefined && report.formula.length <= mostLetters;
}

/** Reads the selected cell and works out again what stands in it. Fails only with what the host says. */
export async function reportSelection(host: ReadingHost): Promise<CellReport> {
  const selected = await host.readSelection();
  const shows = selected.values[0]?.[0] ?? null;
  const about = { address: selected.address, shows, isAnError: isErrorCode(shows), message: selected.message };
  const formula = formulaOf(selected);
  const once = askingOnce(host);
  if (formula !== undefined) return { ...about, ...(await reportFormula(asTyped(formula), { host: once, selected })) };
  if (shows === null || shows === "") return { ...about, calls: [], because: say.emptyCell };
  const parent = await parentOf(selected, once);
  if (!parent) return { ...about, calls: [], because: say.typedIn };
  const reader = { host: once, selected: { ...parent.at, values: selected.values } };
  const behind = await reportFormula(asTyped(parent.formula), reader, parent.offset);
  return { ...about, ...behind, formulaAt: parent.at.address };
}

/** The formula of the first cell, where there is one. */
function formulaOf({ formulas }: HostRange): string | undefined {
  const formula = formulas[0]?.[0];
  return typeof formula === "string" && formula.startsWith("=") ? formula : undefined;
}

/** Cells around may be too many to read; then the cell is taken as typed in. */
function parentOf(selected: HostRange, host: Reader["host"]): ReturnType<typeof spillParent> {
  return unlessRefused(
    () => spillParent(selected, host),
    () => undefined,
  );
}

/** A call may stand where it cannot be followed, or name a function that is none of ours. */
function whyNoCall(formula: string, parsed: ReturnType<typeof parseFormula>): string {
  if (!parsed) return say.unreadable;
  const { known, misspelled } = namesCalled(formula);
  if (known.length > 0) return say.notFollowed(known);
  return misspelled.length > 0 ? say.noSuchFunction(misspelled) : say.notOurs;
}

async function reportFormula(
  formula: string,
  reader: Reader,
  offset: Offset = { row: 0, column: 0 },
): Promise<Pick<CellReport, "formula" | "calls" | "because" | "leftAside">> {
  const parsed = parseFormula(formula);
  const calls = ownCalls(parsed);
  if (calls.length === 0) return { formula, calls: [], because: whyNoCall(formula, parsed) };
  const unused = await unusedParts(parsed, (node) => argumentValue(node, reader));
  const place = { formula, offset, isWhole: isBareCall(parsed) };
  const used = calls.filter(({ node }) => !unused.has(node));
  const leftAside = calls.filter(({ node }) => unused.has(node)).map(({ fn }) => fn.name);
  return { formula, leftAside, calls: await Promise.all(used.map((call) => reportCall(call, place, reader))) };
}
