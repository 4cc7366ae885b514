import { ArrivedError } from "../../../functions/frame/arguments";
import { isCellError } from "../../../functions/frame/cell";
import { runFunction } from "../../../functions/frame/run";
import { HostError, type HostRange } from "../../../hosts/port";
import type { CellPlace } from "../../../workbook/area";
import type { ErrorCells, Finding, WorkbookReading } from "../../../workbook/findings";
import { argumentValue } from "../formula/argument-value";
import { CannotShow } from "../formula/cannot-show";
import { ownCalls, parseFormula, type OwnCall } from "../formula/parse-formula";
import { Snapshot } from "./snapshot";

/** More cells than these nobody reads through; the rest stay with the code they show. */
const mostWorkedOut = 200;

/** Why a cell gives no answer: a sentence of ours, or another cell that shows the same. */
type Reason = { readonly message: string } | "carried on" | undefined;

/**
 * Cells without an answer, each with its sentence. Where the host keeps the sentences to itself they are worked out
 * again from what was read. Cells that only carry on what another one shows are left out: that one is listed.
 */
export async function withSentences(
  findings: readonly Finding[],
  reading: WorkbookReading,
): Promise<readonly Finding[]> {
  const errors = findings.filter((finding) => finding.kind === "errorCells");
  if (errors.length === 0) return findings;
  const others = findings.filter((finding) => finding.kind !== "errorCells");
  const at = findings.findIndex((finding) => finding.kind === "errorCells");
  const { roots, carriedOn } = await byReason(errors, new Snapshot(reading));
  const shown = roots.length + others.length > 0 ? roots : carriedOn;
  return [...others.slice(0, at), ...shown, ...others.slice(at)];
}

async function byReason(errors: readonly ErrorCells[], snapshot: Snapshot) {
  const roots = new Map<string, ErrorCells>();
  const carriedOn = new Map<string, ErrorCells>();
  let workedOut = 0;
  for (const error of errors) {
    for (const cell of error.cells) {
      const known = error.message === undefined ? undefined : { message: error.message };
      const reason = known ?? (workedOut++ < mostWorkedOut ? await reasonFor(cell, error.code, snapshot) : undefined);
      const message = typeof reason === "object" ? reason.message : undefined;
      addTo(reason === "carried on" ? carriedOn : roots, { ...error, message }, cell);
    }
  }
  return { roots: [...roots.values()], carriedOn: [...carriedOn.values()] };
}

/** Cells of a column with the same sentence stand together. */
function addTo(groups: Map<string, ErrorCells>, error: ErrorCells, cell: CellPlace): void {
  const key = [cell.sheet, cell.column, error.code, error.message ?? ""].join("|");
  const cells = [...(groups.get(key)?.cells ?? []), cell];
  groups.set(key, { ...error, at: cells[0] ?? cell, cells });
}

/** What the calls in a cell say to the arguments they were given. */
async function reasonFor(cell: CellPlace, code: string, snapshot: Snapshot): Promise<Reason> {
  const selected = await snapshot.select(cell).readSelection();
  for (const call of ownCalls(parseFormula(String(selected.formulas[0]?.[0] ?? "")))) {
    const reason = await reasonOf(call, code, snapshot, selected);
    if (reason !== undefined) return reason;
  }
  return undefined;
}

async function reasonOf({ fn, node }: OwnCall, code: string, host: Snapshot, selected: HostRange): Promise<Reason> {
  try {
    const raw = await Promise.all(node.arguments.map((argument) => argumentValue(argument, { host, selected })));
    const error = runFunction(fn, raw)
      .flat()
      .filter(isCellError)
      .find((one) => one.code === code);
    if (error === undefined) return undefined;
    return error.message === undefined ? "carried on" : { message: error.message };
  } catch (thrown) {
    if (thrown instanceof ArrivedError) return "carried on";
    if (thrown instanceof CannotShow || thrown instanceof HostError) return undefined;
    throw thrown;
  }
}
