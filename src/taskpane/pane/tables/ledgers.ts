import type { HostValue, WorkbookHost } from "../../../hosts/port";
import { toNumber } from "../../../hosts/chart/chart-data";
import { phosphateLedger, potashLedger } from "../../../workbook/starters/farm-plan/headers";
import type { Trade } from "../../../workbook/pictures/picture";
import { isNumbered, readTable, type ReadTable } from "./read-table";
import { unlessRefused } from "../unless-refused";

/** What a ledger of the workbook holds, row by row, and where it stands. */
export interface LedgerReading {
  /** Name of its table. */
  readonly table: string;
  readonly trade: Trade;
  readonly balances: readonly BalanceRow[];
  readonly drifts: readonly DriftRow[];
}

interface BalanceRow {
  readonly field: string;
  readonly perYear: number;
  /** Addresses of its cells. */
  readonly at: { readonly field: string; readonly perYear: string };
}

export interface DriftRow {
  readonly field: string;
  readonly now: number | undefined;
  readonly byPlan: number | undefined;
  readonly nothingOn: number | undefined;
  readonly at: { readonly field: string; readonly now: string; readonly byPlan: string; readonly nothingOn: string };
}

const ledgers = [
  { trade: "potash", headers: potashLedger },
  { trade: "phosphate", headers: phosphateLedger },
] as const;

/** Reads the ledgers that are in the workbook, those of a second plan among them. */
export async function readLedgers(host: WorkbookHost): Promise<readonly LedgerReading[]> {
  const { tables } = await host.taken();
  const found = ledgers.flatMap(({ trade, headers }) =>
    tables.filter((table) => isNumbered(headers.table, table)).map((table) => ({ table, trade, headers })),
  );
  const read = await Promise.all(
    found.map(async ({ table, trade, headers }) => ({
      table,
      trade,
      balances: balancesIn(await quietly(() => readTable(host, table, headers, ["field", "perYear"]))),
      drifts: driftsIn(
        await quietly(() => readTable(host, table, headers, ["field", "test", "withPlan", "withNothing"])),
      ),
    })),
  );
  return read.filter(({ balances }) => balances.length > 0);
}

/** A ledger that was taken apart shows less; the others stay. */
function quietly<Read>(read: () => Promise<Read>): Promise<Read | undefined> {
  return unlessRefused(read, () => undefined);
}

function balancesIn(table: ReadTable<"field" | "perYear"> | undefined): BalanceRow[] {
  return (table?.rows ?? []).flatMap(({ field, perYear }, row): BalanceRow[] => {
    const amount = toNumber(perYear);
    if (!table || !isNamed(field) || amount === undefined) return [];
    return [
      {
        field: String(field),
        perYear: amount,
        at: { field: table.at(row, "field"), perYear: table.at(row, "perYear") },
      },
    ];
  });
}

function driftsIn(table: ReadTable<"field" | "test" | "withPlan" | "withNothing"> | undefined): DriftRow[] {
  return (table?.rows ?? []).flatMap(({ field, test, withPlan, withNothing }, row): DriftRow[] => {
    const [now, byPlan, nothingOn] = [toNumber(test), toNumber(withPlan), toNumber(withNothing)];
    if (!table || !isNamed(field) || [now, byPlan, nothingOn].every((value) => value === undefined)) return [];
    const at = {
      field: table.at(row, "field"),
      now: table.at(row, "test"),
      byPlan: table.at(row, "withPlan"),
      nothingOn: table.at(row, "withNothing"),
    };
    return [{ field: String(field), now, byPlan, nothingOn, at }];
  });
}

function isNamed(field: HostValue): boolean {
  return field !== null && field !== "";
}
